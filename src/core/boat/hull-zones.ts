/** Zones of a hull by colour: topsides a side, bottom, boot-top and flat ends, with areas, edges and facings. */

import {
  addBands,
  type BandIntegral,
  integrateBands,
  integrateRow,
  loftLineAt,
  type RowBand,
} from '#core/geometry'
import type { Note } from '#core/note'
import { type Facing, facingOf, meanFlareOf, mirrored } from './facing.ts'
import { type Height, levelOf } from './height.ts'
import type { Hull } from './hull.ts'
import { type HullCuts, workedCuts } from './hull-cuts.ts'
import {
  type CutHull,
  cutHull,
  endEdges,
  type HullEnd,
  roundEdges,
  sideEdges,
  type ZoneEdge,
} from './zone-edges.ts'
import { type ZonePatch, zonePlan } from './zone-plan.ts'

export type HullZoneKind = 'topsides-port' | 'topsides-starboard' | 'bottom' | 'transom' | 'boot-top'

/** One face of a zone, looking one way. */
export type ZoneFace = Facing & {
  readonly of: 'port' | 'starboard' | HullEnd
  /** m². */
  readonly area: number
  /** Mean angle of the surface to the vertical, rad, positive when it leans out over the ground. */
  readonly meanFlare: number
}

export type HullZone = Facing & {
  /** The kind; `bow` for a flat bow. */
  readonly id: string
  readonly kind: HullZoneKind
  /** m². */
  readonly area: number
  /** All the way round, m: the length to mask when everything beside the zone is kept clean. */
  readonly perimeter: number
  readonly edges: readonly ZoneEdge[]
  /** m; 0 where the zone has no such edge. */
  readonly lowerLength: number
  readonly upperLength: number
  /** Mean over the zone, rad. */
  readonly meanFlare: number
  /** The zone's parts by side; azimuth and tilt of a zone of several faces are of their summed normal. */
  readonly faces: readonly ZoneFace[]
}

export type HullZones = { readonly zones: readonly HullZone[]; readonly notes: readonly Note[] }

/** Less than this is no zone, m². */
const leastArea = 1e-6

type Part = { readonly of: ZoneFace['of']; readonly band: BandIntegral }

const faceOf = ({ of, band }: Part): ZoneFace => ({
  of,
  area: band.area,
  meanFlare: meanFlareOf(band),
  ...facingOf(band.vector),
})

type ZoneInput = {
  readonly id: string
  readonly kind: HullZoneKind
  readonly parts: readonly Part[]
  readonly edges: () => readonly ZoneEdge[]
}

const lengthOf = (edges: readonly ZoneEdge[], kind: ZoneEdge['kind']): number =>
  edges.reduce((sum, edge) => (edge.kind === kind ? sum + edge.length : sum), 0)

/** A zone of its parts, or none when they cover nothing. */
const zoneOf = ({ id, kind, parts, edges: edgesOf }: ZoneInput): readonly HullZone[] => {
  const present = parts.filter(({ band }) => band.area > leastArea)
  if (present.length === 0) return []
  const whole = addBands(present.map((part) => part.band))
  const edges = edgesOf()
  return [
    {
      id,
      kind,
      area: whole.area,
      perimeter: edges.reduce((sum, edge) => sum + edge.length, 0),
      edges,
      lowerLength: lengthOf(edges, 'lower'),
      upperLength: lengthOf(edges, 'upper'),
      meanFlare: meanFlareOf(whole),
      ...facingOf(whole.vector),
      faces: present.map(faceOf),
    },
  ]
}

type Measured = {
  readonly cut: CutHull
  readonly side: (patches: readonly ZonePatch[]) => BandIntegral
  readonly end: (end: HullEnd, patches: readonly ZonePatch[]) => BandIntegral
}

/** A flat end stands upright and looks straight aft or forward. */
const flatBand = (end: HullEnd, area: number): BandIntegral => ({
  area,
  vector: { x: end === 'aft' ? -area : area, y: 0, z: 0 },
  leanArea: 0,
  volume: 0,
})

const measured = (hull: Hull, heights: readonly Height[]): Measured => {
  const levels = heights.map(levelOf)
  const sides = integrateBands(hull.surface, levels)
  const ends = {
    aft: integrateRow(loftLineAt(hull.surface, 0), levels),
    fore: integrateRow(loftLineAt(hull.surface, 1), levels),
  }
  const cells = <T>(table: readonly (readonly T[])[], patches: readonly ZonePatch[]): readonly T[] =>
    patches.flatMap(({ strips, bands }) =>
      table.slice(strips.from, strips.to + 1).flatMap((row) => bands.map((band) => row[band]!)),
    )
  const flat = (rows: readonly RowBand[]) => rows.reduce((sum, row) => sum + 2 * row.flatArea, 0)
  return {
    cut: cutHull(hull, heights),
    side: (patches) => addBands(cells(sides, patches)),
    end: (end, patches) => flatBand(end, flat(cells(ends[end], patches))),
  }
}

const topsides = ({ cut, side }: Measured, patches: readonly ZonePatch[]): readonly HullZone[] => {
  const band = side(patches)
  const solid = openPatches({ side }, patches)
  return (['port', 'starboard'] as const).flatMap((of) =>
    zoneOf({
      id: `topsides-${of}`,
      kind: `topsides-${of}`,
      parts: [{ of, band: of === 'port' ? band : mirrored(band) }],
      edges: () => sideEdges(cut, solid, of),
    }),
  )
}

/** Patches that cover something: the gap under a boot-top that touches the bottom has edges but no area. */
const openPatches = ({ side }: Pick<Measured, 'side'>, patches: readonly ZonePatch[]): readonly ZonePatch[] =>
  patches.filter((patch) => side([patch]).area > leastArea)

const bothEnds: readonly HullEnd[] = ['aft', 'fore']

type RoundZone = {
  readonly kind: 'bottom' | 'boot-top'
  readonly sides: readonly ZonePatch[]
  readonly ends: readonly ZonePatch[]
}

/** A zone that goes round both sides, and across a flat end where it has a part of that. */
const roundZone = (m: Measured, isFlat: (end: HullEnd) => boolean, zone: RoundZone): readonly HullZone[] => {
  const band = m.side(zone.sides)
  const across = bothEnds.filter((end) => m.end(end, zone.ends).area > leastArea)
  const openAt = bothEnds.filter((end) => isFlat(end) && !across.includes(end))
  return zoneOf({
    id: zone.kind,
    kind: zone.kind,
    parts: [
      { of: 'port', band },
      { of: 'starboard', band: mirrored(band) },
      ...across.map((end) => ({ of: end, band: m.end(end, zone.ends) })),
    ],
    edges: () =>
      roundEdges(m.cut, {
        sides: openPatches(m, zone.sides),
        ends: across.map((end) => ({ end, patches: zone.ends })),
        openAt,
      }),
  })
}

const endZones = (m: Measured, patches: readonly ZonePatch[]): readonly HullZone[] =>
  bothEnds.flatMap((end) => {
    const solid = patches.filter((patch) => m.end(end, [patch]).area > leastArea)
    return zoneOf({
      id: end === 'aft' ? 'transom' : 'bow',
      kind: 'transom',
      parts: [{ of: end, band: m.end(end, solid) }],
      edges: () => endEdges(m.cut, solid, end),
    })
  })

/**
 * The zones of a hull cut at the given heights: bottom below `bottomTo`, the boot-top band, and topsides and flat ends
 * for the rest (with a gap under the boot-top where there is one). Together they are the whole hull, each place once.
 * A zone that covers nothing is left out; cuts that cannot be worked give notes and the nearest thing that can.
 */
export const hullZones = (hull: Hull, asked: HullCuts): HullZones => {
  const { cuts, notes } = workedCuts(hull, asked)
  const plan = zonePlan(hull, cuts)
  const m = measured(hull, plan.heights)
  const { bottom, bootTop, transom } = plan.ends
  const everyEnd = [...bottom, ...bootTop, ...transom]
  const isFlat = (end: HullEnd) => m.end(end, everyEnd).area > leastArea
  return {
    zones: [
      ...topsides(m, plan.topsides),
      ...roundZone(m, isFlat, { kind: 'bottom', sides: plan.bottom, ends: bottom }),
      ...roundZone(m, isFlat, { kind: 'boot-top', sides: plan.bootTop, ends: bootTop }),
      ...endZones(m, transom),
    ],
    notes,
  }
}
