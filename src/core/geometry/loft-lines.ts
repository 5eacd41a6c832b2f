/** Lines on a loft as chains of points: its edges along and its sections across. Axes as the loft's, metres. */

import { gauss4, integrate } from './gauss-legendre.ts'
import type { Loft, StripLine } from './loft.ts'
import { refined } from './loft-level.ts'
import { cellPointAt, edgePointAt, type LoftLine, type LoftPlace, rowPointAt } from './loft-row.ts'
import type { Polyline } from './polyline.ts'

/** The edge under strip `edge` (or over the last one) from u = 0 to 1, `parts` pieces a section interval. */
export const edgeAlong = (loft: Loft, edge: number, parts: number): Polyline =>
  refined(loft.knots, parts).map((u) => edgePointAt(loft, edge, u))

/**
 * The line across strips `from` to `to` (both counted) of one row, shared edges once: a straight strip in one piece, a
 * curved one in `parts` pieces a cell.
 */
export const lineAcross = (
  line: LoftLine,
  { from, to, parts }: { readonly from: number; readonly to: number; readonly parts: number },
): Polyline =>
  line.strips.slice(from, to + 1).flatMap((nodes, k) => {
    const cells = nodes.y.length - 1
    const steps = cells === 1 ? 1 : cells * parts
    const points = Array.from({ length: steps + 1 }, (_, i) =>
      rowPointAt(line, { strip: from + k, v: i / steps }),
    )
    return k === 0 ? points : points.slice(1)
  })

/** Length along one strip of a row from its first edge to `v`, m. */
const stripGirth = (nodes: StripLine, v: number): number => {
  const cells = nodes.y.length - 1
  const pieces = Array.from({ length: cells }, (_, j) => {
    const to = Math.min(Math.max(v * cells - j, 0), 1)
    const speed = (s: number) => {
      const { yV, zV } = cellPointAt(nodes, j, s)
      return Math.sqrt(yV * yV + zV * zV)
    }
    return to > 0 ? integrate(gauss4, { of: speed, from: 0, to }) / cells : 0
  })
  return pieces.reduce((sum, piece) => sum + piece, 0)
}

/** Length along a row from the first edge of all to a place, m. */
export const rowGirthTo = (line: LoftLine, { strip, v }: LoftPlace): number =>
  line.strips.slice(0, strip + 1).reduce((sum, nodes, k) => sum + stripGirth(nodes, k < strip ? 1 : v), 0)
