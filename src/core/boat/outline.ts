/**
 * Lines of a hull for drawings, as plain pairs of metres: sheer plan (x, z), half-breadth plan (x, y) and body plan
 * (y, z). Boat frame; half breadths are to port and positive. Arrays belong to the result.
 */

import type { Contour, Polyline } from '#core/geometry'
import type { Height } from './height.ts'
import type { Hull } from './hull.ts'
import {
  allStrips,
  contourWithin,
  edgeLine,
  heightContours,
  keelLine,
  sheerLine,
  stationLine,
} from './hull-lines.ts'
import type { StripEdge } from './station-strips.ts'

export type Line2 = readonly (readonly [number, number])[]

/** The named lines of one view. */
export type LinesView = {
  readonly keel: Line2
  readonly knuckles: readonly { readonly kind: StripEdge; readonly line: Line2 }[]
  readonly sheer: Line2
  /** Pieces of the line at each asked height. */
  readonly waterlines: readonly { readonly height: Height; readonly lines: readonly Line2[] }[]
}

export type BodySection = {
  readonly id: string
  readonly x: number
  /** Keel to sheer. */
  readonly line: Line2
}

export type HullOutline = {
  readonly sheerPlan: LinesView
  readonly halfBreadthPlan: LinesView
  readonly bodyPlan: readonly BodySection[]
}

/** The waterline was found with the hull. */
const contourAt = (hull: Hull, height: Height): Contour =>
  height === 0 ? hull.water.contour : heightContours(hull, [height])[0]!

type View = (line: Polyline) => Line2

const fromSide: View = (line) => line.map(({ x, z }) => [x, z])
const fromAbove: View = (line) => line.map(({ x, y }) => [x, y])
const fromAhead: View = (line) => line.map(({ y, z }) => [y, z])

type Drawn = {
  readonly keel: Polyline
  readonly knuckles: readonly { readonly kind: StripEdge; readonly line: Polyline }[]
  readonly sheer: Polyline
  readonly waterlines: readonly { readonly height: Height; readonly lines: readonly Polyline[] }[]
}

const drawn = (hull: Hull, heights: readonly Height[]): Drawn => ({
  keel: keelLine(hull),
  knuckles: hull.edges.slice(0, -1).map((kind, strip) => ({ kind, line: edgeLine(hull, strip) })),
  sheer: sheerLine(hull),
  waterlines: heights.map((height) => ({
    height,
    lines: contourWithin(contourAt(hull, height), allStrips(hull)),
  })),
})

const viewOf = ({ keel, knuckles, sheer, waterlines }: Drawn, view: View): LinesView => ({
  keel: view(keel),
  knuckles: knuckles.map(({ kind, line }) => ({ kind, line: view(line) })),
  sheer: view(sheer),
  waterlines: waterlines.map(({ height, lines }) => ({ height, lines: lines.map(view) })),
})

const bodySections = (hull: Hull): readonly BodySection[] =>
  hull.stations.map(({ id, x }, i) => ({ id, x, line: fromAhead(stationLine(hull, i)) }))

/** The three views, with the lines at the asked heights (z = 0 is the floating waterline). */
export const hullOutline = (hull: Hull, heights: readonly Height[]): HullOutline => {
  const lines = drawn(hull, heights)
  return {
    sheerPlan: viewOf(lines, fromSide),
    halfBreadthPlan: viewOf(lines, fromAbove),
    bodyPlan: bodySections(hull),
  }
}
