/** Between layers the line itself is the verdict: zigzag is keyed by sanding, plain the same coat again, dotted not tested. */
import { inked, line, type Point, type Shape } from '../shapes.ts'
import type { Bond } from './bands.ts'

export type Reach = { readonly from: number; readonly to: number; readonly y: number }

/** The line between two layers, by what holds them together. */
export function bondLine(bond: Bond, { from, to, y }: Reach): Shape {
  if (bond === 'same coat') return line('thin', [from, y], [to, y])
  if (bond === 'not tested') return line('dotted', [from, y], [to, y])
  return line('medium', ...zigzag({ from, to, y }))
}

/** Half a tooth and its height. */
const step = 1.3
const rise = 1.1

function zigzag({ from, to, y }: Reach): readonly Point[] {
  const count = Math.max(2, Math.round((to - from) / step))
  return Array.from(
    { length: count + 1 },
    (_, k): Point => [from + ((to - from) * k) / count, y + (k % 2 === 0 ? rise / 2 : -rise / 2)],
  )
}

/** Drawn short, not to scale: a zigzag in a thin line. */
export const breakLine = ({ from, to, y }: Reach) => {
  const middle = (from + to) / 2
  return inked(
    line(
      'thin',
      [from, y],
      [middle - 3, y],
      [middle - 1.2, y - 1.8],
      [middle + 1.2, y + 1.8],
      [middle + 3, y],
      [to, y],
    ),
    'ink',
  )
}
