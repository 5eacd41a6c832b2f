/** Lines where a loft crosses levels. Axes as the loft's, metres. */

import { intervalAt } from './cubic-spline.ts'
import type { Loft } from './loft.ts'
import {
  allEdgeCrossings,
  cellCrossing,
  changesSide,
  inOrder,
  type Level,
  nodeHeights,
  onLevel,
  refined,
} from './loft-level.ts'
import { type LoftLine, loftLineAt, rowPointAt } from './loft-row.ts'
import type { Point3 } from './points.ts'

export type ContourPoint = Point3 & { readonly u: number; readonly strip: number; readonly v: number }

/** A contour in unbroken pieces, each from u = 0 towards u = 1. */
export type Contour = readonly (readonly ContourPoint[])[]

const pointOf = (line: LoftLine, strip: number, v: number): ContourPoint => ({
  u: line.u,
  strip,
  v,
  ...rowPointAt(line, { strip, v }),
})

/** Topmost crossing of a section; its first edge itself when that lies on the level; nothing when it has none. */
export const rowTopmost = (line: LoftLine, level: Level): ContourPoint | undefined => {
  for (let strip = line.strips.length - 1; strip >= 0; strip--) {
    const nodes = line.strips[strip]!
    const cells = nodes.y.length - 1
    const heights = nodeHeights(line.x, nodes, level)
    for (let j = cells - 1; j >= 0; j--) {
      const [atFrom, atTo] = [heights[j]!, heights[j + 1]!]
      if (!changesSide(atFrom, atTo)) continue
      const s = cellCrossing(line.x, nodes, level, { j, atFrom, atTo })
      return pointOf(line, strip, (j + s) / cells)
    }
  }
  const first = line.strips[0]!
  return onLevel(level(line.x, first.y[0]!, first.z[0]!)) === 0 ? pointOf(line, 0, 0) : undefined
}

/** Points of a contour a section interval. */
const parts = 4
/** Squared steps on either side of a place where an edge crosses the level, for there a contour may turn sharply. */
const closer = [1, 4, 9].map((square) => square / 16)

/** Where along u the contours are looked for. */
const contourPlaces = (loft: Loft, levels: readonly Level[]): readonly number[] => {
  const crossings = allEdgeCrossings(loft, levels)
  const beside = crossings.flatMap((u) => {
    const i = intervalAt(loft.knots, u)
    const [from, to] = [loft.knots[i]!, loft.knots[i + 1]!]
    return closer.flatMap((share) => [u + share * (to - u), u - share * (u - from)])
  })
  return inOrder([...refined(loft.knots, parts), ...crossings, ...beside])
}

const pieces = (points: readonly (ContourPoint | undefined)[]): Contour => {
  const found: ContourPoint[][] = []
  let open: ContourPoint[] = []
  const close = () => {
    if (open.length > 1) found.push(open)
    open = []
  }
  for (const point of points) {
    if (point) open.push(point)
    else close()
  }
  close()
  return found
}

/**
 * The line where the loft crosses each level. Where a section crosses a level more than once, the topmost crossing
 * counts.
 */
export const contours = (loft: Loft, levels: readonly Level[]): readonly Contour[] => {
  const lines = contourPlaces(loft, levels).map((u) => loftLineAt(loft, u))
  return levels.map((level) => pieces(lines.map((line) => rowTopmost(line, level))))
}
