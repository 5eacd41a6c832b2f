/**
 * A hull as triangles, zone by zone, closed by its flat ends and by a flat deck inside the sheer; and its lines. Boat
 * frame: x forward from the aftmost point, y to port, z up from the floating waterline; metres. All zones and lines
 * share one list of points, so that zones meet without a gap; the arrays belong to the mesh.
 */

import { type Level, type LoftCell, type LoftCells, loftCells, type Polyline } from '#core/geometry'
import type { BandLimits } from './band-area.ts'
import { levelOf } from './height.ts'
import type { Hull } from './hull.ts'
import { type HullCuts, workedCuts } from './hull-cuts.ts'
import { sheerLine } from './hull-lines.ts'
import type { HullZoneKind } from './hull-zones.ts'
import { type MeshBuilder, meshBuilder } from './mesh-builder.ts'
import type { Line2 } from './outline.ts'
import { closedAt, heightAlong, slabPlaces, slabsOf } from './slabs.ts'
import { rakeLevel } from './transom-rake.ts'
import { type CellSide, zoneAt } from './zone-cells.ts'
import { type ZonePlan, zonePlan } from './zone-plan.ts'

export type MeshAsked = {
  readonly cuts: HullCuts
  /** Angle of the transom to the vertical, rad; positive when its top is the aftmost. */
  readonly rake: number
  /** Stripes round both sides, over whatever zone lies there. */
  readonly stripes: readonly ({ readonly id: string } & BandLimits)[]
  /** Faces that lie on the deck, as seen from above; a polygon inside another is a hole. */
  readonly decks: readonly { readonly id: string; readonly outlines: readonly Line2[] }[]
}

export type MeshZone = {
  /** As `hullZones` names it; `deck` for the whole of it; or that of a stripe or of a zone of the deck. */
  readonly id: string
  readonly kind: HullZoneKind | 'stripe' | 'deck' | 'deck zone'
  /** Three corners a triangle, anticlockwise from outside. */
  readonly triangles: Uint32Array
  /** Of its triangles together, m². */
  readonly areaM2: number
  /** Pieces of the stations that lie on it, two points each. */
  readonly stations: Uint32Array
  /** Pieces of its edge, two points each. */
  readonly border: Uint32Array
}

export type MeshLineKind = 'sheer' | 'keel' | 'chine' | 'rail' | 'end' | 'waterline'
export type MeshLine = { readonly kind: MeshLineKind; readonly pairs: Uint32Array }

export type HullMesh = {
  /** x, y, z of each point. */
  readonly positions: Float32Array
  readonly zones: readonly MeshZone[]
  readonly lines: readonly MeshLine[]
}

/** As fine as the lines of the drawings. */
const steps = { along: 4, across: 2 }

/** The levels that cut a hull, in this order: the plan's heights, two a stripe, the water, and the leaning transom. */
type Cut = {
  readonly hull: Hull
  readonly plan: ZonePlan
  readonly found: LoftCells
  readonly stripes: MeshAsked['stripes']
  readonly water: number
  readonly rake: number | undefined
}

const cutUp = (hull: Hull, { cuts, rake, stripes }: Omit<MeshAsked, 'decks'>): Cut => {
  const plan = zonePlan(hull, workedCuts(hull, cuts).cuts)
  const heights = [...plan.heights, ...stripes.flatMap(({ zLow, zHigh }) => [zLow, zHigh]), 0]
  const leaning: readonly Level[] = rake === 0 ? [] : [rakeLevel(hull, { rake })]
  const levels = [...heights.map(levelOf), ...leaning]
  return {
    hull,
    plan,
    found: loftCells(hull.surface, levels, steps),
    stripes,
    water: heights.length - 1,
    rake: rake === 0 ? undefined : heights.length,
  }
}

/** What stands before a stripe's own id, lest it be taken for a zone of the hull. */
const stripeName = (id: string): string => `stripe ${id}`

const nameOf = (cut: Cut, { strip, over }: LoftCell, side: CellSide): string => {
  const { plan, stripes } = cut
  const first = plan.heights.length
  const striped = stripes.findIndex((_, n) => over[first + 2 * n]! && !over[first + 2 * n + 1]!)
  if (striped >= 0 && (side === 'port' || side === 'starboard')) return stripeName(stripes[striped]!.id)
  return zoneAt(plan, { strip, band: over.slice(0, first).filter(Boolean).length }, side).id
}

type Numbers = { readonly port: readonly number[]; readonly starboard: readonly number[] }

/** Both sides of each corner; on the centreline they are one. */
const pointsOf = (builder: MeshBuilder, { corners }: LoftCells): Numbers => ({
  port: corners.map((at) => builder.point(at)),
  starboard: corners.map((at) => builder.point({ ...at, y: -at.y })),
})

/** The edge from one corner to the next lies on a flat end, or on the sheer: what closes the hull there begins at it. */
const closingAt = (cut: Cut, a: number, b: number): 'aft' | 'fore' | 'sheer' | undefined => {
  const { hull, found, rake } = cut
  const both = (test: (id: number) => boolean): boolean => test(a) && test(b)
  const at = (id: number) => found.corners[id]!
  const top = hull.edges.length - 1
  if (both((id) => at(id).strip === top && at(id).v === 1)) return 'sheer'
  if (both((id) => (rake === undefined ? at(id).u === 0 : found.on[rake]!.has(id)))) return 'aft'
  return both((id) => at(id).u === 1) ? 'fore' : undefined
}

/** The line that an edge of a cell belongs to, other than one that closes the hull. */
const lineAt = (cut: Cut, cell: LoftCell, a: number, b: number): MeshLineKind | 'station' | undefined => {
  const { hull, found, water } = cut
  const [from, to] = [found.corners[a]!, found.corners[b]!]
  const onLower = (one: typeof from): boolean => one.strip === 0 && one.v === 0
  if (cell.strip === 0 && onLower(from) && onLower(to)) return 'keel'
  const onUpper = (one: typeof from): boolean =>
    one.strip === cell.strip ? one.v === 1 : one.strip > cell.strip
  const kind = hull.edges[cell.strip]
  if (onUpper(from) && onUpper(to) && (kind === 'chine' || kind === 'rail')) return kind
  if (found.on[water]!.has(a) && found.on[water]!.has(b)) return 'waterline'
  const isStation = from.u === to.u && from.u > 0 && from.u < 1 && hull.surface.knots.includes(from.u)
  return isStation ? 'station' : undefined
}

const addCell = (builder: MeshBuilder, cut: Cut, cell: LoftCell, { port, starboard }: Numbers): void => {
  const names = { port: nameOf(cut, cell, 'port'), starboard: nameOf(cut, cell, 'starboard') }
  const { corners } = cell
  builder.face(
    names.port,
    corners.map((id) => port[id]!),
  )
  builder.face(names.starboard, corners.map((id) => starboard[id]!).reverse())
  corners.forEach((a, k) => {
    const b = corners[(k + 1) % corners.length]!
    const drawn = (port: string, starboardName: string): void => {
      builder.line(port, ports[0], ports[1])
      builder.line(starboardName, mirrored[0], mirrored[1])
    }
    const ports = [port[a]!, port[b]!] as const
    const mirrored = [starboard[a]!, starboard[b]!] as const
    const closing = closingAt(cut, a, b)
    if (closing) {
      const zone = closing === 'sheer' ? 'deck' : nameOf(cut, cell, closing)
      builder.face(zone, [ports[1], ports[0], mirrored[0], mirrored[1]])
      return drawn(closing === 'sheer' ? 'sheer' : 'end', closing === 'sheer' ? 'sheer' : 'end')
    }
    const line = lineAt(cut, cell, a, b)
    if (line === 'station') drawn(`station ${names.port}`, `station ${names.starboard}`)
    else if (line) drawn(line, line)
  })
}

type Named = { readonly id: string; readonly kind: MeshZone['kind']; readonly name: string }

/** In the order of `hullZones`, then stripes, the deck, and what lies on it. */
const named = ({ stripes, decks }: MeshAsked): readonly Named[] => [
  ...(['topsides-port', 'topsides-starboard', 'bottom', 'boot-top', 'transom'] as const).map((id) => ({
    id,
    kind: id,
    name: id,
  })),
  { id: 'bow', kind: 'transom', name: 'bow' },
  ...stripes.map(({ id }) => ({ id, kind: 'stripe' as const, name: stripeName(id) })),
  { id: 'deck', kind: 'deck', name: 'deck' },
  ...decks.map(({ id }) => ({ id, kind: 'deck zone' as const, name: deckName(id) })),
]

/** A face on the deck lies this far over it, so that it is seen, m. */
const lift = 0.002

const addDeck = (
  builder: MeshBuilder,
  sheer: Polyline,
  { id, outlines }: MeshAsked['decks'][number],
): void => {
  const places = slabPlaces(
    outlines,
    sheer.map(({ x }) => x),
  )
  const at = (x: number, y: number): number => builder.point({ x, y, z: heightAlong(sheer, x) + lift })
  for (const { from, to, inner, outer } of slabsOf(outlines, places))
    builder.face(deckName(id), [at(from, inner[0]), at(to, inner[1]), at(to, outer[1]), at(from, outer[0])])
  for (const line of outlines.map((outline) => closedAt(outline, places)))
    for (let k = 1; k < line.length; k++)
      builder.line(`border ${deckName(id)}`, at(...line[k - 1]!), at(...line[k]!))
}

const deckName = (id: string): string => `on deck ${id}`

const lineKinds: readonly MeshLineKind[] = ['sheer', 'keel', 'chine', 'rail', 'end', 'waterline']

/**
 * Triangles of the zones that `hullZones` finds at the same cuts, both sides, with the stripes laid over them, cut at
 * the leaning transom; flat ends and deck close the hull. Zones that cover nothing are left out.
 */
export const hullMesh = (hull: Hull, asked: MeshAsked): HullMesh => {
  const builder = meshBuilder()
  const cut = cutUp(hull, asked)
  const numbers = pointsOf(builder, cut.found)
  const kept = cut.found.cells.filter(({ over }) => cut.rake === undefined || over[cut.rake])
  for (const cell of kept) addCell(builder, cut, cell, numbers)
  const sheer = sheerLine(hull)
  for (const deck of asked.decks) addDeck(builder, sheer, deck)
  const zones = named(asked).map(({ id, kind, name }) => ({
    id,
    kind,
    triangles: builder.triangles(name),
    areaM2: builder.area(name),
    stations: builder.pairs(`station ${name}`),
    border: kind === 'deck zone' ? builder.pairs(`border ${name}`) : builder.border(name),
  }))
  return {
    positions: builder.positions(),
    zones: zones.filter(({ triangles }) => triangles.length > 0),
    lines: lineKinds
      .map((kind) => ({ kind, pairs: builder.pairs(kind) }))
      .filter(({ pairs }) => pairs.length > 0),
  }
}
