/** The line at a height along one side of the hull, and the places along it that are struck with a tape. */

import {
  contours,
  loftLineAt,
  loftParameterAt,
  type Polyline,
  polylinesLength,
  rowGirthTo,
  rowTopmost,
} from '#core/geometry'
import { type Height, levelOf } from './height.ts'
import type { Hull, Side } from './hull.ts'
import { heightLines, onSide } from './hull-lines.ts'

export type HeightLine = {
  /** Pieces from aft to forward; more than one where the hull does not reach the height all the way. */
  readonly pieces: readonly Polyline[]
  readonly length: number
}

/**
 * Where the hull has a height, on one side. Where a section has it more than once, as over a chine flat, the topmost
 * place counts. No pieces when the hull has it nowhere.
 */
export const lineAtHeight = (
  hull: Hull,
  { z, side }: { readonly z: Height; readonly side: Side },
): HeightLine => {
  const pieces = heightLines(hull, z).map((line) => onSide(line, side))
  return { pieces, length: polylinesLength(pieces) }
}

export type GirthFrom = 'sheer' | 'chine' | 'keel'

export type HeightMark = {
  readonly x: number
  readonly y: number
  readonly z: number
  /** Length along the section from the reference line, m; upward is positive. */
  readonly girth: number
}

export type MarksAsked = {
  readonly z: Height
  readonly side: Side
  /** Distance between marks along x, m. */
  readonly spacing: number
  /** Line to measure from; the lowest chine where there are several. */
  readonly from: GirthFrom
}

const referencePlace = ({ edges }: Hull, from: GirthFrom) => {
  if (from === 'keel') return { strip: 0, v: 0 }
  const strip = from === 'chine' ? edges.indexOf('chine') : edges.length - 1
  return { strip, v: 1 }
}

/** Most marks given along one line. */
const mostMarks = 10_000

const markPlaces = (first: number, last: number, spacing: number): readonly number[] => {
  const steps = Math.floor((last - first) / spacing)
  if (!(spacing > 0) || !(steps < mostMarks)) return [first, last]
  const inner = Array.from({ length: Math.max(steps, 0) }, (_, k) => first + (k + 1) * spacing)
  return [first, ...inner.filter((x) => last - x > 1e-6), last]
}

/**
 * Marks along the line at a height: one at its aft end, then one each `spacing` of x, and one at its fore end, each
 * with the girth from a reference line so that it can be found again with a tape. Empty when the hull has no such
 * line or no such reference.
 */
export const marksAtHeight = (hull: Hull, { z, side, spacing, from }: MarksAsked): readonly HeightMark[] => {
  const reference = referencePlace(hull, from)
  if (reference.strip < 0) return []
  const level = levelOf(z)
  return contours(hull.surface, [level])
    .flat()
    .flatMap((piece) =>
      markPlaces(piece[0]!.x, piece.at(-1)!.x, spacing).flatMap((x, k, all) => {
        const end = k === 0 ? piece[0] : k === all.length - 1 ? piece.at(-1) : undefined
        const row = loftLineAt(hull.surface, end ? end.u : loftParameterAt(hull.surface, x))
        const point = end ?? rowTopmost(row, level)
        if (!point) return []
        const girth = rowGirthTo(row, point) - rowGirthTo(row, reference)
        return [{ x: point.x, y: side === 'port' ? point.y : -point.y, z: point.z, girth }]
      }),
    )
}
