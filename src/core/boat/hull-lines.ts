/** Lines of a hull: keel, knuckles and sheer along it, sections across it, and its mirror image. Boat frame, metres. */

import {
  type Contour,
  contours,
  edgeAlong,
  lineAcross,
  loftLineAt,
  loftParameterAt,
  type Point3,
  type Polyline,
  rowPointAt,
} from '#core/geometry'
import { type Height, levelOf } from './height.ts'
import type { HullSkin, Side } from './hull.ts'

/** Pieces a station interval is drawn in, and a cell of a round section. */
const parts = 4
const acrossParts = 2

export const onSide = (line: Polyline, side: Side): Polyline =>
  side === 'port' ? line : line.map(({ x, y, z }) => ({ x, y: -y, z }))

/** Port keel line and stem, from aft to forward. */
export const keelLine = ({ surface }: HullSkin): Polyline => edgeAlong(surface, 0, parts)

/** Port line of the upper edge of a strip, from aft to forward. */
export const edgeLine = ({ surface }: HullSkin, strip: number): Polyline =>
  edgeAlong(surface, strip + 1, parts)

export const sheerLine = (hull: HullSkin): Polyline => edgeLine(hull, hull.edges.length - 1)

/** Height of the sheer at `x`; at the nearer end outside the hull. */
export const sheerHeightAt = ({ surface, edges }: HullSkin, x: number): number =>
  rowPointAt(loftLineAt(surface, loftParameterAt(surface, x)), { strip: edges.length - 1, v: 1 }).z

export type StripRange = { readonly from: number; readonly to: number }

export const allStrips = ({ edges }: HullSkin): StripRange => ({ from: 0, to: edges.length - 1 })

/** Port section at the aft or the fore end, lower to upper edge. */
export const endSection = ({ surface }: HullSkin, end: 'aft' | 'fore', { from, to }: StripRange): Polyline =>
  lineAcross(loftLineAt(surface, end === 'aft' ? 0 : 1), { from, to, parts: acrossParts })

/** Port section at station number `i`, keel to sheer. */
export const stationLine = (hull: HullSkin, i: number): Polyline => {
  const { along, knots, strips } = hull.surface
  const row = { u: knots[i]!, x: along.values[i]!, strips: strips.map((strip) => strip.rows[i]!) }
  return lineAcross(row, { ...allStrips(hull), parts: acrossParts })
}

/** The pieces of a contour that lie in a range of strips or on its edges. */
export const contourWithin = (contour: Contour, range: StripRange): readonly Polyline[] => {
  const lies = (strip: number, v: number): boolean =>
    (strip >= range.from && strip <= range.to) ||
    (strip === range.from - 1 && v === 1) ||
    (strip === range.to + 1 && v === 0)
  const lines: Point3[][] = []
  for (const piece of contour) {
    let open: Point3[] = []
    for (const { strip, v, x, y, z } of piece) {
      if (lies(strip, v)) open.push({ x, y, z })
      else {
        lines.push(open)
        open = []
      }
    }
    lines.push(open)
  }
  return lines.filter((line) => line.length > 1)
}

/** Port contours of the hull at several heights, worked in one go. */
export const heightContours = ({ surface }: HullSkin, heights: readonly Height[]): readonly Contour[] =>
  heights.length > 0 ? contours(surface, heights.map(levelOf)) : []

/** Port lines where the hull has a height, from aft to forward. */
export const heightLines = (hull: HullSkin, height: Height): readonly Polyline[] =>
  heightContours(hull, [height]).flatMap((contour) => contourWithin(contour, allStrips(hull)))
