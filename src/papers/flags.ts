/** Flags of notes: a number in a circle; missing, in a dashed square. Also the box to tick. */
import { box, type Drawing, type Point, textAt } from './shapes.ts'

const size = 5.6

export const noteFlag = (number: number | string, [x, y]: Point): Drawing => [
  { kind: 'circle', at: [x + size / 2, y + size / 2], radius: size / 2, pen: 'medium', ink: 'ink' },
  label(number, [x, y]),
]

export const missingFlag = (number: number | string, [x, y]: Point): Drawing => [
  { ...box({ x, y, width: size, height: size }, 'dotted') },
  label(number, [x, y]),
]

const label = (number: number | string, [x, y]: Point) =>
  textAt([x + size / 2, y + size / 2 + 1.05], String(number), 'smallStrong', { align: 'centre' })

export const tickBox = ([x, y]: Point, side: number) =>
  box({ x, y, width: side, height: side }, 'medium', 'paper')
