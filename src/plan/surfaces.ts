/** The hull as a surface and every zone with its area: measured on the surface, typed in, or still to be marked. */
import {
  compareHullWithRules,
  deckShare,
  type Hull,
  type HullOutline,
  type HullResult,
  type HullSizes,
  type HullZone,
  type HullZones,
  hullFromSizes,
  hullFromStations,
  hullOutline,
  type RuleComparison,
  rakeOutline,
  type Station,
} from '#core/boat'
import type { Certainty, Note } from '#core/note'
import type { Work } from '#job'
import { weakest } from './certainty.ts'
import type { Taped } from './girths.ts'
import { isPad, padsOf, withoutPads } from './pads.ts'
import type { Stage } from './remember.ts'
import type { Boat, Deck, Surfaces, ZoneArea } from './types.ts'

export type HullInput = {
  readonly boat: Work['boat']
  readonly stations: Work['stations']
  readonly points: Work['points']
}

export type MeasuredHull = {
  readonly hull?: Hull
  readonly outline?: HullOutline
  readonly rules: readonly RuleComparison[]
  readonly certainty: Certainty
  readonly notes: readonly Note[]
}

/** The hull alone: only its own sizes and stations make it anew. */
export const hull: Stage<HullInput, MeasuredHull> = { name: 'hull', run: measureHull, fresh: true }

function measureHull(input: HullInput): MeasuredHull {
  const result = hullOf(input)
  const certainty = hullCertainty(input)
  if (!result?.ok) return { rules: [], certainty, notes: result ? result.faults : [noHull] }
  const { hull: made, notes } = result
  const rules = compareHullWithRules(made)
  const rake = input.boat.transomRake?.value ?? 0
  return {
    hull: made,
    outline: rakeOutline(made, hullOutline(made, [0]), { rake }),
    rules: rules.rows,
    certainty,
    notes: [...notes, ...rules.notes],
  }
}

/** The zones of the hull as the job cuts it, and as it is cut where nobody says how, which a tape measures. */
export type ColouredHull = HullZones & { readonly usual: readonly HullZone[] }

export type SurfacesInput = {
  readonly hull: MeasuredHull
  readonly colours: ColouredHull
  readonly taped: Taped
  readonly deck: Deck
  readonly zones: Work['zones']
}

export const surfaces: Stage<SurfacesInput, Surfaces> = { name: 'surfaces', run: measureSurfaces }

function measureSurfaces(input: SurfacesInput): Surfaces {
  const { hull: measuredHull, colours, taped, zones, deck } = input
  const measured = zones.filter((zone) => !isPad(zone)).map((zone) => measureZone(zone, input))
  const pads = padsOf(zones)
  const painted = withoutPads(
    measured.flatMap((one) => one.area),
    pads,
  )
  return {
    zones: painted.zones,
    pads,
    notes: [
      ...measuredHull.notes,
      ...colours.notes,
      ...taped.notes,
      ...deck.notes,
      ...measured.flatMap((one) => one.notes),
      ...painted.notes,
    ],
  }
}

type BoatInput = { readonly surfaces: Surfaces; readonly deck: Deck; readonly hull: MeasuredHull }

/** The zones with their hull beside them; the hull is large, so no stage carries it along. */
export const withHull: Stage<BoatInput, Boat> = {
  name: 'boat',
  run: ({ surfaces: zones, deck, hull: { hull: made, outline, rules } }) => ({
    ...zones,
    shapes: deck.shapes,
    ...(made ? { hull: made } : {}),
    ...(outline ? { outline } : {}),
    rules,
  }),
  // A hull that was measured anew is never the same, and one that was not is the same object.
  fresh: true,
}

const noHull: Note = { code: 'surfaces.noHull', severity: 'missing', data: {} }

/** Stations when there are any; else the few sizes; else no hull, and only the zones that were typed in. */
function hullOf(input: HullInput): HullResult | undefined {
  if (input.stations.length > 0) return hullFromStations(stationsOf(input))
  const sizes = sizesOf(input.boat)
  return sizes && hullFromSizes(sizes)
}

function stationsOf({ stations, points }: HullInput): readonly Station[] {
  return stations.map((station) => ({
    id: station.name ?? station.id,
    x: station.x.value,
    points: points
      .filter((point) => point.station === station.id)
      .map((point) => ({
        y: point.halfBreadth.value,
        z: point.height.value,
        ...(point.knuckle === undefined
          ? {}
          : { knuckle: point.knuckle === 'knuckle' ? ('rail' as const) : point.knuckle }),
      })),
  }))
}

function sizesOf(boat: Work['boat']): HullSizes | undefined {
  if (!boat.lengthOverall || !boat.beam || !boat.freeboardStem) return undefined
  const round = boat.bilge === 'round bilge' || (boat.bilge === undefined && boat.kind === 'sailing yacht')
  return {
    form: round ? 'round-bilge' : 'hard-chine',
    lengthOverall: boat.lengthOverall.value,
    beam: boat.beam.value,
    freeboardStem: boat.freeboardStem.value,
    ...given('lengthWaterline', boat.lengthWaterline),
    ...given('beamTransom', boat.beamTransom),
    ...given('draft', boat.draft),
    ...given('freeboardMid', boat.freeboardMid),
    ...given('freeboardStern', boat.freeboardStern),
    ...given('deadrise', boat.deadrise),
    ...given('deadriseTransom', boat.deadriseTransom),
    ...given('stemRake', boat.stemRake),
    ...given('flare', boat.flare),
    ...given('chineBeam', boat.chineBeam),
    ...given('chineHeight', boat.chineHeight),
  }
}

const given = <K extends keyof HullSizes>(key: K, figure: { readonly value: number } | undefined) =>
  (figure ? { [key]: figure.value } : {}) as { readonly [P in K]?: number }

/** A hull drawn from a few sizes is a likely one, not this one. */
const hullCertainty = (input: HullInput): Certainty => (input.stations.length > 0 ? 'measured' : 'assumed')

type ZoneItem = Work['zones'][number]
type Measured = { readonly area: readonly ZoneArea[]; readonly notes: readonly Note[] }

type MeasuredOn = Omit<SurfacesInput, 'zones'>

/** A measured shape comes first; then what is typed in; then the surface. Stripes and panels are measured as marks. */
function measureZone(zone: ZoneItem, { hull: of, colours, taped, deck }: MeasuredOn): Measured {
  if (isMarked(zone, deck)) return { area: [], notes: [] }
  const found =
    shapedArea(zone, deck) ??
    typedArea(zone) ??
    surfaceArea(zone, { of, colours, taped }) ??
    sharedArea(zone, of)
  if (!found)
    return {
      area: [],
      notes: [
        {
          code: 'surfaces.zoneWithoutArea',
          severity: 'missing',
          data: { zone: zone.id, name: nameOf(zone) },
        },
      ],
    }
  return {
    area: [{ ...describe(zone), ...found }],
    notes:
      found.how === 'share'
        ? [fromShare(zone, found)]
        : found.certainty === 'assumed' && found.how === 'given'
          ? [assumedArea(zone)]
          : [],
  }
}

/** Its area is that of the stripe or the panels on it. */
export const isMarked = (zone: ZoneItem, { shapes }: Deck): boolean =>
  zone.kind === 'boot stripe' ||
  (zone.kind === 'non-skid' &&
    !zone.area &&
    !shapes.some((one) => one.zone === zone.id && one.how === 'shape'))

const assumedArea = (zone: ZoneItem): Note => ({
  code: 'surfaces.areaAssumed',
  severity: 'assumed',
  data: { zone: zone.id, name: nameOf(zone), areaM2: zone.area?.value ?? 0 },
})

/** The note on an area that only the size of the boat says anything of. */
export const fromShare = (zone: ZoneItem, { areaM2 }: Size): Note => ({
  code: 'surfaces.areaFromShare',
  severity: 'assumed',
  data: { zone: zone.id, name: nameOf(zone), areaM2 },
})

export const nameOf = (zone: ZoneItem): string => zone.name ?? zone.kind

/** All that is known of a zone but its area. */
export function describe(zone: ZoneItem) {
  return {
    id: zone.id,
    name: nameOf(zone),
    kind: zone.kind,
    side: zone.side ?? ('both' as const),
    existing: zone.existing ?? 'unknown',
    texture: zone.texture ?? 'smooth',
    indoors: zone.shelter === 'indoors',
  }
}

type Size = Pick<ZoneArea, 'areaM2' | 'perimeterM' | 'certainty' | 'how' | 'lowestM'>

function shapedArea(zone: ZoneItem, { shapes }: Deck): Size | undefined {
  const shape = shapes.find((one) => one.zone === zone.id)
  if (!shape) return undefined
  const { areaM2, perimeterM, certainty, how } = shape
  return { areaM2, perimeterM, certainty, how }
}

function typedArea(zone: ZoneItem): Size | undefined {
  const { area, length, width, perimeter } = zone
  const count = zone.count ?? 1
  if (area) {
    const squareEdge = 4 * Math.sqrt(area.value)
    return {
      areaM2: count * area.value,
      perimeterM: count * (perimeter?.value ?? squareEdge),
      certainty: weakest(area.certainty),
      how: 'given',
    }
  }
  if (!length || !width) return undefined
  return {
    areaM2: count * length.value * width.value,
    perimeterM: count * (perimeter?.value ?? 2 * (length.value + width.value)),
    certainty: weakest(length.certainty, width.certainty),
    how: 'length and width',
  }
}

type CutSurface = {
  readonly of: MeasuredHull
  readonly colours: ColouredHull
  readonly taped: Taped
}

/** A tape on the skin goes before the drawn surface, but not before measured stations. */
function surfaceArea(zone: ZoneItem, { of, colours, taped: { areas } }: CutSurface): Size | undefined {
  const parts = colours.zones.filter((part) => belongs(part, zone))
  if (parts.length === 0) return undefined
  const sizes = parts.map((part) => {
    const drawn = { areaM2: part.area, certainty: of.certainty }
    const taped = areas[part.kind]
    const usual = colours.usual.find(({ kind }) => kind === part.kind)
    if (of.certainty === 'measured' || !taped || !usual) return drawn
    return { areaM2: (taped.areaM2 * part.area) / usual.area, certainty: taped.certainty }
  })
  const byTape = of.certainty !== 'measured' && parts.some((part) => areas[part.kind])
  return {
    areaM2: sizes.reduce((sum, size) => sum + size.areaM2, 0),
    perimeterM: zone.perimeter?.value ?? parts.reduce((sum, part) => sum + part.perimeter, 0),
    certainty: weakest(...sizes.map(({ certainty }) => certainty)),
    how: byTape ? 'girths' : 'surface',
    ...(zone.kind === 'boot-top' ? { lowestM: lowestOf(parts) } : {}),
  }
}

const lowestOf = (parts: readonly HullZone[]): number =>
  parts
    .flatMap(({ edges }) => edges.filter(({ kind }) => kind === 'lower').flatMap(({ lines }) => lines.flat()))
    .reduce((lowest, { z }) => Math.min(lowest, z), Number.POSITIVE_INFINITY)

/** What the size of the boat says of a deck zone that nobody has measured. */
export function sharedArea(zone: ZoneItem, of: MeasuredHull): Size | undefined {
  const insideSheerM2 = of.rules.find((rule) => rule.zone === 'deck')?.workedArea
  const areaM2 = insideSheerM2 === undefined ? undefined : deckShare(zone.kind, insideSheerM2)
  if (areaM2 === undefined) return undefined
  return {
    areaM2,
    perimeterM: zone.perimeter?.value ?? 4 * Math.sqrt(areaM2),
    certainty: 'assumed',
    how: 'share',
  }
}

function belongs(part: HullZone, zone: ZoneItem): boolean {
  if (zone.kind !== 'topsides') return part.kind === zone.kind
  const side = zone.side ?? 'both'
  return side === 'both' ? part.kind.startsWith('topsides') : part.kind === `topsides-${side}`
}
