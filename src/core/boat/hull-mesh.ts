/**
 * A hull as triangles, zone by zone, closed by its flat ends and by a flat deck inside the sheer; and its lines. Boat
 * frame: x forward from the aftmost point, y to port, z up from the floating waterline; metres. All zones and lines
 * share one list of points, so that zones meet without a gap; the arrays belong to the mesh.
 */

import type { Polyline } from '#core/geometry'
import type { Hull } from './hull.ts'
import { addHull, type CutAsked, type MeshLineKind, stationsOf, stripeName } from './hull-cells.ts'
import { sheerLine } from './hull-lines.ts'
import type { HullZoneKind } from './hull-zones.ts'
import { type MeshBuilder, meshBuilder } from './mesh-builder.ts'
import type { Line2 } from './outline.ts'
import { closedAt, heightAlong, slabPlaces, slabsOf } from './slabs.ts'

export type { MeshLineKind } from './hull-cells.ts'

export type MeshAsked = CutAsked & {
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

export type MeshLine = { readonly kind: MeshLineKind; readonly pairs: Uint32Array }

export type HullMesh = {
  /** x, y, z of each point. */
  readonly positions: Float32Array
  readonly zones: readonly MeshZone[]
  readonly lines: readonly MeshLine[]
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

/** A face on the deck lies this far over it, and over the one before, so that it is seen, m. */
const lift = 0.002

const addDeck = (
  builder: MeshBuilder,
  { sheer, over }: { readonly sheer: Polyline; readonly over: number },
  { id, outlines }: MeshAsked['decks'][number],
): void => {
  const places = slabPlaces(
    outlines,
    sheer.map(({ x }) => x),
  )
  const at = (x: number, y: number): number => builder.point({ x, y, z: heightAlong(sheer, x) + over })
  for (const { from, to, inner, outer } of slabsOf(outlines, places))
    builder.face(deckName(id), [at(from, inner[0]), at(to, inner[1]), at(to, outer[1]), at(from, outer[0])])
  for (const [a, b] of rimOf(outlines.map((outline) => closedAt(outline, places))))
    builder.line(`border ${deckName(id)}`, at(...a), at(...b))
}

type Piece = readonly [Line2[number], Line2[number]]

/** The pieces of closed lines; where two halves meet there is no rim. */
const rimOf = (lines: readonly Line2[]): readonly Piece[] => {
  const found = new Map<string, Piece | undefined>()
  for (const line of lines)
    for (let k = 1; k < line.length; k++) {
      const piece = [line[k - 1]!, line[k]!] as const
      const key = piece
        .map(([x, y]) => `${Math.round(x * 1e6)} ${Math.round(y * 1e6)}`)
        .sort()
        .join(' ')
      found.set(key, found.has(key) ? undefined : piece)
    }
  return [...found.values()].flatMap((piece) => (piece ? [piece] : []))
}

const deckName = (id: string): string => `on deck ${id}`

const lineKinds: readonly MeshLineKind[] = ['sheer', 'keel', 'chine', 'rail', 'end', 'waterline']

/**
 * Triangles of the zones that `hullZones` finds at the same cuts, both sides, with the stripes laid over them, cut at
 * the leaning transom; flat ends and deck close the hull. Zones that cover nothing are left out.
 */
export const hullMesh = (hull: Hull, asked: MeshAsked): HullMesh => {
  const builder = meshBuilder()
  addHull(builder, hull, asked)
  const sheer = sheerLine(hull)
  asked.decks.forEach((deck, n) => {
    addDeck(builder, { sheer, over: (n + 1) * lift }, deck)
  })
  const zones = named(asked).map(({ id, kind, name }) => ({
    id,
    kind,
    triangles: builder.triangles(name),
    areaM2: builder.area(name),
    stations: builder.pairs(stationsOf(name)),
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
