/** Edges of zones as lines on the hull, to be masked or struck. Boat frame, metres. */

import {
  type Contour,
  clipPolyline,
  loftLineAt,
  type Point3,
  type Polyline,
  polylineLength,
  polylinesLength,
  rowTopmost,
} from '#core/geometry'
import { type Height, heightAt, levelOf } from './height.ts'
import type { Hull, Side } from './hull.ts'
import { contourWithin, edgeLine, endSection, heightContours, keelLine, onSide } from './hull-lines.ts'
import type { ZonePatch } from './zone-plan.ts'

/**
 * `lower` and `upper` run along the boat or across a flat end; `aft` and `fore` are where a side ends there; `centre`
 * is where the two sides meet, at the stem or under a counter.
 */
export type ZoneEdgeKind = 'lower' | 'upper' | 'aft' | 'fore' | 'centre'

export type ZoneEdge = {
  readonly kind: ZoneEdgeKind
  readonly lines: readonly Polyline[]
  /** Of all its lines together, m. */
  readonly length: number
}

/** A hull with the lines that its zones are bounded by, worked once for all of them. */
export type CutHull = {
  readonly hull: Hull
  readonly heights: readonly Height[]
  readonly contours: readonly Contour[]
  readonly keel: Polyline
  /** Upper edge of each strip. */
  readonly edges: readonly Polyline[]
}

export const cutHull = (hull: Hull, heights: readonly Height[]): CutHull => ({
  hull,
  heights,
  contours: heightContours(hull, heights),
  keel: keelLine(hull),
  edges: hull.edges.map((_, strip) => edgeLine(hull, strip)),
})

type Lines = Readonly<Record<ZoneEdgeKind, readonly Polyline[]>>

/** A line nearer than this to a height lies on it, m. */
const onHeight = 1e-9

/** The parts of a line inside the heights of a patch; a line that lies on one of them belongs to that edge instead. */
const within = (line: Polyline, { heights }: CutHull, { low, high }: ZonePatch): readonly Polyline[] => {
  const over = low === undefined ? [line] : clipPolyline(line, above(heights[low]!, 1))
  return high === undefined ? over : over.flatMap((part) => clipPolyline(part, above(heights[high]!, -1)))
}

/** How far a point is over a height, or under it with the sign turned. */
const above =
  (height: Height, sign: 1 | -1) =>
  ({ x, z }: Point3): number =>
    sign * (z - heightAt(height, x)) - onHeight

const sideLines = (cut: CutHull, patch: ZonePatch): Lines => {
  const { strips, low, high } = patch
  const at = (height: number | undefined) =>
    height === undefined ? [] : contourWithin(cut.contours[height]!, strips)
  const under = strips.from > 0 ? within(cut.edges[strips.from - 1]!, cut, patch) : []
  return {
    lower: [...at(low), ...under],
    upper: [...at(high), ...within(cut.edges[strips.to]!, cut, patch)],
    aft: within(endSection(cut.hull, 'aft', strips), cut, patch),
    fore: within(endSection(cut.hull, 'fore', strips), cut, patch),
    centre: strips.from === 0 ? within(cut.keel, cut, patch) : [],
  }
}

export type HullEnd = 'aft' | 'fore'

/** Line across a flat end at a height, or at its upper edge; none where it does not reach that height. */
const acrossEnd = (
  { hull, heights }: CutHull,
  end: HullEnd,
  height: number | undefined,
): readonly Polyline[] => {
  const row = loftLineAt(hull.surface, end === 'aft' ? 0 : 1)
  const sheer = row.strips.at(-1)!
  const top = { x: row.x, y: sheer.y.at(-1)!, z: sheer.z.at(-1)! }
  const point = height === undefined ? top : rowTopmost(row, levelOf(heights[height]!))
  if (!point) return []
  const { x, y, z } = point
  return [
    [
      { x, y: -y, z },
      { x, y, z },
    ],
  ]
}

const endLines = (cut: CutHull, end: HullEnd, patch: ZonePatch): Lines => {
  const section = within(endSection(cut.hull, end, patch.strips), cut, patch)
  const none = { aft: [], fore: [], centre: [] }
  return {
    ...none,
    lower: patch.low === undefined ? [] : acrossEnd(cut, end, patch.low),
    upper: acrossEnd(cut, end, patch.high),
    [end]: [...section, ...section.map((line) => onSide(line, 'starboard'))],
  }
}

const everyKind: readonly ZoneEdgeKind[] = ['lower', 'upper', 'aft', 'fore', 'centre']

/** Shorter than this is a corner, not an edge, m. */
const shortest = 1e-6

/** One edge a kind, of the kinds asked for. */
const gathered = (all: readonly Lines[], asked: readonly ZoneEdgeKind[]): readonly ZoneEdge[] =>
  asked.flatMap((kind) => {
    const lines = all.flatMap((one) => one[kind]).filter((line) => polylineLength(line) > shortest)
    return lines.length > 0 ? [{ kind, lines, length: polylinesLength(lines) }] : []
  })

const onStarboard = (lines: Lines): Lines => {
  const over = (some: readonly Polyline[]) => some.map((line) => onSide(line, 'starboard'))
  return {
    lower: over(lines.lower),
    upper: over(lines.upper),
    aft: over(lines.aft),
    fore: over(lines.fore),
    centre: over(lines.centre),
  }
}

/** Edges of one side of the hull. */
export const sideEdges = (cut: CutHull, patches: readonly ZonePatch[], side: Side): readonly ZoneEdge[] => {
  const port = patches.map((patch) => sideLines(cut, patch))
  return gathered(side === 'port' ? port : port.map(onStarboard), everyKind)
}

/** Edges of a flat end. */
export const endEdges = (cut: CutHull, patches: readonly ZonePatch[], end: HullEnd): readonly ZoneEdge[] =>
  gathered(
    patches.map((patch) => endLines(cut, end, patch)),
    everyKind,
  )

export type RoundZoneParts = {
  readonly sides: readonly ZonePatch[]
  /** Flat ends that belong to the zone as well. */
  readonly ends: readonly { readonly end: HullEnd; readonly patches: readonly ZonePatch[] }[]
  /** Ends where the two sides of the zone stop at a flat end that is not in it. */
  readonly openAt: readonly HullEnd[]
}

/** Edges of a zone that goes round both sides: what joins side to side or side to end is inside it and no edge. */
export const roundEdges = (cut: CutHull, { sides, ends, openAt }: RoundZoneParts): readonly ZoneEdge[] => {
  const port = sides.map((patch) => sideLines(cut, patch))
  const across = ends.flatMap(({ end, patches }) =>
    patches.map((patch) => ({ ...endLines(cut, end, patch), aft: [], fore: [], centre: [] })),
  )
  return gathered([...port, ...port.map(onStarboard), ...across], ['lower', 'upper', ...openAt])
}
