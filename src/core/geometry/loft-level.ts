/**
 * Where a loft crosses levels: a level is any function of place that is negative below it and positive above, such as
 * a horizontal plane, a tilted one or a sheered line. Axes as the loft's, metres.
 */

import { bracketedRoot } from './bracketed-root.ts'
import type { Loft, StripLine } from './loft.ts'
import { cellPointAt, edgePointAt } from './loft-row.ts'

/** Signed height of the place over the level, metres or any multiple of them. */
export type Level = (x: number, y: number, z: number) => number

/** Nearer than a nanometre is on the level: rounding must not lose a contour that runs along an edge. */
export const onLevel = (height: number): number => (Math.abs(height) < 1e-9 ? 0 : height)

/** Height of every node of a strip over a level. */
export const nodeHeights = (x: number, { y, z }: StripLine, level: Level): readonly number[] => {
  const heights: number[] = []
  for (let j = 0; j < y.length; j++) heights.push(onLevel(level(x, y[j]!, z[j]!)))
  return heights
}

/** Whether a level lies between two places. */
export const changesSide = (here: number, there: number): boolean => here < 0 !== there < 0

/** The fraction of cell `j` at which a strip crosses a level that lies between the cell's nodes. */
export const cellCrossing = (
  x: number,
  line: StripLine,
  level: Level,
  { j, atFrom, atTo }: { readonly j: number; readonly atFrom: number; readonly atTo: number },
): number => {
  const height = (s: number) => {
    const { y, z } = cellPointAt(line, j, s)
    return level(x, y, z)
  }
  return bracketedRoot(height, { from: 0, to: 1, atFrom, atTo })
}

/** Each interval cut into equal parts, ends kept. */
export const refined = (knots: readonly number[], parts: number): readonly number[] => {
  const places: number[] = []
  for (let i = 0; i < knots.length - 1; i++) {
    const step = (knots[i + 1]! - knots[i]!) / parts
    for (let k = 0; k < parts; k++) places.push(knots[i]! + k * step)
  }
  places.push(knots.at(-1)!)
  return places
}

/** A section interval is looked over in this many steps for an edge that crosses a level. */
const looks = 4

const edgeCrossings = (
  loft: Loft,
  edge: number,
  levels: readonly Level[],
  places: readonly number[],
): readonly number[] => {
  const points = places.map((u) => edgePointAt(loft, edge, u))
  return levels.flatMap((level) => {
    const heights = points.map(({ x, y, z }) => onLevel(level(x, y, z)))
    const height = (u: number) => {
      const { x, y, z } = edgePointAt(loft, edge, u)
      return onLevel(level(x, y, z))
    }
    const found: number[] = []
    for (let k = 1; k < places.length; k++) {
      const [atFrom, atTo] = [heights[k - 1]!, heights[k]!]
      if (!changesSide(atFrom, atTo)) continue
      found.push(bracketedRoot(height, { from: places[k - 1]!, to: places[k]!, atFrom, atTo }))
    }
    return found
  })
}

/** Places along u where an edge of the loft crosses a level, edge by edge. */
export const allEdgeCrossings = (loft: Loft, levels: readonly Level[]): readonly number[] => {
  const places = refined(loft.knots, looks)
  const edges = Array.from({ length: loft.strips.length + 1 }, (_, edge) => edge)
  return edges.flatMap((edge) => edgeCrossings(loft, edge, levels, places))
}

/** All places in rising order, nearly equal ones once. */
export const inOrder = (places: readonly number[]): readonly number[] => {
  const sorted = [...places].sort((a, b) => a - b)
  return sorted.filter((u, i) => i === 0 || u - sorted[i - 1]! > 1e-12)
}
