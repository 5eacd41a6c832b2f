/** Deck zones that were measured as shapes: corners or offsets, camber, slope, upstand and openings to an area. */
import { beyondSheer, type DeckShapeInput, deckZone, edgeOfOffsets } from '#core/boat'
import type { Note } from '#core/note'
import type { Figure, Work } from '#job'
import { weakest } from './certainty.ts'
import type { Stage } from './remember.ts'
import type { MeasuredHull } from './surfaces.ts'
import type { Deck, DeckShape } from './types.ts'

export type DeckInput = {
  readonly zones: Work['zones']
  readonly corners: Work['corners']
  readonly offsets: Work['offsets']
  readonly hull: MeasuredHull
}

export const deck: Stage<DeckInput, Deck> = { name: 'deck', run: measureDeck }

type ZoneItem = Work['zones'][number]
type Corner = Work['corners'][number]
type Offset = Work['offsets'][number]
type Made = { readonly shape?: DeckShape; readonly notes: readonly Note[] }

function measureDeck(input: DeckInput): Deck {
  const corners = byZone(input.corners)
  const offsets = byZone(input.offsets)
  const made = input.zones.map((zone) => {
    const own = { zone, corners: corners.get(zone.id) ?? [], offsets: offsets.get(zone.id) ?? [] }
    const { shape, notes } = measureShape(own, input.hull)
    return { shape, notes: notes.map((note) => about(zone, note)) }
  })
  return {
    shapes: made.flatMap(({ shape }) => shape ?? []),
    notes: made.flatMap(({ notes }) => notes),
  }
}

function byZone<T extends { readonly zone: string }>(items: readonly T[]): ReadonlyMap<string, readonly T[]> {
  const found = new Map<string, T[]>()
  for (const item of items) {
    const own = found.get(item.zone)
    if (own) own.push(item)
    else found.set(item.zone, [item])
  }
  return found
}

const about = (zone: ZoneItem, note: Note): Note => ({
  ...note,
  data: { zone: zone.id, name: zone.name ?? zone.kind, ...note.data },
})

type Own = {
  readonly zone: ZoneItem
  readonly corners: readonly Corner[]
  readonly offsets: readonly Offset[]
}

/** Measured on the hull, struck as a stripe, or no painted surface at all. */
const otherwise: ReadonlySet<string> = new Set([
  'topsides',
  'transom',
  'bottom',
  'boot-top',
  'boot stripe',
  'pad',
])

/** Whether a zone of this kind can be drawn by its corners. */
export const hasDeckShape = (kind: string): boolean => !otherwise.has(kind)

function measureShape(own: Own, hull: MeasuredHull): Made {
  const { zone, corners, offsets } = own
  const drawn = corners.length + offsets.length > 0
  if (!hasDeckShape(zone.kind)) return { notes: drawn ? [shapeNotRead] : [] }
  const edge = drawn ? edgeOf(own) : sidesOf(zone)
  if (!edge) return { notes: [...upstandNotes(zone), ...notCounted(zone)] }
  if (edge.notes.some(({ code }) => code !== beside.code)) return { notes: edge.notes }
  const { zone: made, notes } = deckZone(inputOf(own, edge))
  const all = [...edge.notes, ...notes, ...upstandNotes(zone)]
  if (!made) return { notes: all }
  const count = zone.count ?? 1
  const shape: DeckShape = {
    zone: zone.id,
    how: drawn || edge.corners.length === 0 ? 'shape' : 'length and width',
    areaM2: made.area,
    perimeterM: zone.perimeter ? count * zone.perimeter.value : made.perimeter,
    certainty: weakest(...figuresOf(own, edge).map(({ certainty }) => certainty)),
    terms: made.terms,
    edges: drawn ? made.edges : [],
    openings: drawn ? made.openings : [],
  }
  return {
    shape,
    notes: [...all, ...byEye(shape), ...givenBeside(zone, shape), ...sheerNotes(zone, shape, hull)],
  }
}

type Edge = {
  readonly corners: DeckShapeInput['edge']
  readonly figures: readonly (Figure | undefined)[]
  readonly mirrored: boolean
  readonly notes: readonly Note[]
}

/** Corners go before offsets. A zone by offsets that reach the centreline lies on both sides of it. */
function edgeOf({ zone, corners, offsets }: Own): Edge {
  if (corners.length > 0) {
    const own = corners.filter(({ opening }) => opening === undefined)
    return {
      corners: own.map(pointOf),
      figures: corners.flatMap(({ fromStern, offCentre }) => [fromStern, offCentre]),
      mirrored: zone.mirror === true,
      notes: offsets.length > 0 ? [beside] : [],
    }
  }
  const rows = offsets.map(({ fromStern, outer, inner }) => ({
    x: fromStern.value,
    outer: outer.value,
    inner: inner?.value ?? 0,
  }))
  const { edge, notes } = edgeOfOffsets(rows, zone.curve === 'fair')
  const spans = offsets.every(({ inner }) => inner === undefined)
  const mirrored = zone.mirror ?? (spans || (zone.side ?? 'both') === 'both')
  const toStarboard = zone.side === 'starboard' && !mirrored
  return {
    corners: toStarboard ? edge.map(([x, y]) => [x, -y] as const) : edge,
    figures: offsets.flatMap(({ fromStern, outer, inner }) => [fromStern, outer, inner]),
    mirrored,
    notes,
  }
}

const pointOf = ({ fromStern, offCentre }: Corner) => [fromStern.value, offCentre.value] as const

/** All of it stands up: measured so, it is not what stands along a flat zone. */
const upright: ReadonlySet<string> = new Set(['cabin side', 'cockpit side'])

/** A flat zone with more to it than length and width; without that it is worked as it always was. */
function sidesOf(zone: ZoneItem): Edge | undefined {
  const { length, width } = zone
  const alone = zone.upstandHeight !== undefined && zone.upstandLength !== undefined
  const more = [zone.camber, zone.slope, zone.upstandHeight, zone.openingLength].some(Boolean)
  if (length && width && (more || zone.faces === 'both') && !zone.area) {
    const [long, half] = [length.value, width.value / 2]
    const corners = [
      [0, -half],
      [long, -half],
      [long, half],
      [0, half],
    ] as const
    return { corners, figures: [length, width], mirrored: false, notes: [] }
  }
  const instead = !(zone.area || (length && width)) || upright.has(zone.kind)
  return alone && instead ? { corners: [], figures: [], mirrored: false, notes: [] } : undefined
}

function inputOf({ zone, corners }: Own, edge: Edge): DeckShapeInput {
  const { openingLength, openingWidth, upstandHeight, upstandLength } = zone
  return {
    edge: edge.corners,
    ordered: corners.length === 0,
    openings: openingsOf(corners),
    mirrored: edge.mirrored,
    camberRise: zone.camber?.value ?? 0,
    slope: zone.slope?.value ?? 0,
    cutOuts:
      openingLength && openingWidth
        ? [{ count: zone.openingCount ?? 1, length: openingLength.value, width: openingWidth.value }]
        : [],
    ...(upstandHeight
      ? {
          upstand: {
            height: upstandHeight.value,
            ...(upstandLength ? { length: upstandLength.value } : {}),
          },
        }
      : {}),
    count: zone.count ?? 1,
    faces: zone.faces === 'both' ? 2 : 1,
  }
}

/** By their numbers, each in the order of its corners. */
function openingsOf(corners: readonly Corner[]): DeckShapeInput['openings'] {
  const numbers = [...new Set(corners.flatMap(({ opening }) => opening ?? []))].sort((a, b) => a - b)
  return numbers.map((number) => corners.filter(({ opening }) => opening === number).map(pointOf))
}

function figuresOf({ zone }: Own, edge: Edge): readonly Figure[] {
  const { camber, slope, upstandHeight, upstandLength, openingLength, openingWidth } = zone
  return [
    ...edge.figures,
    camber,
    slope,
    upstandHeight,
    upstandHeight && upstandLength,
    openingLength,
    openingWidth,
  ].flatMap((figure) => figure ?? [])
}

const shapeNotRead: Note = { code: 'surfaces.shapeNotRead', severity: 'fault', data: {} }
const beside: Note = { code: 'surfaces.cornersBesideOffsets', severity: 'info', data: {} }

const upstandNotes = ({ upstandLength, upstandHeight }: ZoneItem): readonly Note[] =>
  upstandLength && !upstandHeight
    ? [{ code: 'surfaces.upstandWithoutHeight', severity: 'missing', data: {} }]
    : []

/** An area that is typed in is taken as it stands. */
function notCounted({ area, camber, slope, upstandHeight, openingLength }: ZoneItem): readonly Note[] {
  const more = [camber, slope, upstandHeight, openingLength].some(Boolean)
  return area && more
    ? [{ code: 'surfaces.areaTakenAsIs', severity: 'info', data: { areaM2: area.value } }]
    : []
}

const byEye = ({ how, certainty, areaM2 }: DeckShape): readonly Note[] =>
  how === 'shape' && certainty === 'assumed'
    ? [{ code: 'surfaces.shapeByEye', severity: 'assumed', data: { areaM2 } }]
    : []

const givenBeside = ({ area }: ZoneItem, { areaM2 }: DeckShape): readonly Note[] =>
  area ? [{ code: 'surfaces.areaBesideShape', severity: 'info', data: { areaM2, givenM2: area.value } }] : []

/** These stand on the deck, hang over it, or behind the transom. */
const overhanging = new Set<ZoneItem['kind']>(['swim platform', 'outboard well', 'hardtop', 'loose part'])

/** How far out a corner may be before it is worth a word, m: a sheer drawn from three sizes is no nearer than this. */
const slackM = { measured: 0.05, assumed: 0.15 } as const

function sheerNotes({ kind }: ZoneItem, { edges: [edge] }: DeckShape, hull: MeasuredHull): readonly Note[] {
  const sheer = hull.outline?.halfBreadthPlan.sheer
  if (!sheer || !edge || overhanging.has(kind)) return []
  return beyondSheer(edge, { sheer, slack: hull.certainty === 'measured' ? slackM.measured : slackM.assumed })
}
