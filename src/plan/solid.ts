/** The boat as triangles, for pictures in space: which zone of the job each face belongs to, and what was measured. */
import { type HullMesh, hullMesh, type MeshAsked, type MeshZone } from '#core/boat'
import type { Work } from '#job'
import { colourCuts } from './colours.ts'
import { heightAlong } from './struck-heights.ts'
import type { Plan, StripeMark, ZoneArea } from './types.ts'

export type SolidFace = MeshZone & {
  /** Zone of the job; a face that nobody paints has none. */
  readonly zone?: string
  /** Only a guess says where it lies. */
  readonly rough: boolean
}

export type Solid = Pick<HullMesh, 'positions' | 'lines'> & {
  readonly faces: readonly SolidFace[]
  /** x, y, z of each measured point of the stations, on both sides. */
  readonly points: Float32Array
}

/** Undefined while there is no hull. Too large to be a part of the plan: it is made when somebody looks. */
export function solidOf(
  { surfaces, marks }: Pick<Plan, 'surfaces' | 'marks'>,
  { boat, stations, zones: asked }: Pick<Work, 'boat' | 'stations' | 'zones'>,
): Solid | undefined {
  const { hull } = surfaces
  if (!hull) return undefined
  const decks = decksOf(surfaces)
  const mesh = hullMesh(hull, {
    cuts: colourCuts(hull, asked, marks).cuts,
    rake: boat.transomRake?.value ?? 0,
    stripes: marks.stripes.map(stripeOf),
    decks,
  })
  const zones = [...surfaces.zones, ...marks.zones]
  return {
    positions: mesh.positions,
    lines: mesh.lines,
    faces: mesh.zones.map((face) => {
      const zone = zoneOf(face, { zones, stripes: marks.stripes, decks })
      return {
        ...face,
        ...(zone === undefined ? {} : { zone }),
        rough: decks.some(({ id, rough }) => rough && face.kind === 'deck zone' && id === face.id),
      }
    }),
    points: Float32Array.from(
      stations.length === 0
        ? []
        : hull.stations.flatMap(({ x, points }) => points.flatMap(({ y, z }) => [x, y, z, x, -y, z])),
    ),
  }
}

type Known = {
  readonly zones: readonly ZoneArea[]
  readonly stripes: readonly StripeMark[]
  readonly decks: readonly Deck[]
}

function zoneOf({ id, kind }: MeshZone, { zones, stripes, decks }: Known): string | undefined {
  const of = (test: (zone: ZoneArea) => boolean) => zones.find(test)?.id
  if (kind === 'deck zone') return id
  // What of the deck has no face of its own.
  const rest = (of: string) =>
    zones.find((zone) => zone.kind === of && !decks.some((deck) => deck.id === zone.id))?.id
  if (kind === 'deck') return rest('deck') ?? rest('side deck')
  if (kind === 'stripe') return stripes.find((stripe) => stripe.id === id)?.zone
  if (kind === 'topsides-port' || kind === 'topsides-starboard')
    return of((zone) => zone.kind === 'topsides' && (zone.side === 'both' || kind.endsWith(zone.side)))
  return of((zone) => zone.kind === kind)
}

const stripeOf = ({ id, table: { rows } }: StripeMark): MeshAsked['stripes'][number] => ({
  id,
  zLow: heightAlong(rows, (row) => row.lowerM),
  zHigh: heightAlong(rows, (row) => row.upperM),
})

/** Shares of the length and of the half breadth that such a zone usually has; assumed. */
const usual: Readonly<Record<string, { readonly from: number; readonly to: number; readonly out: number }>> =
  {
    foredeck: { from: 0.62, to: 1, out: 1 },
    'cockpit sole': { from: 0.08, to: 0.5, out: 0.6 },
  }

type Deck = MeshAsked['decks'][number] & { readonly rough: boolean }

/** As measured, else a likely place; the smaller lies on the larger. */
function decksOf({ zones, shapes, outline }: Plan['surfaces']): readonly Deck[] {
  const sheer = outline?.halfBreadthPlan.sheer ?? []
  return [...zones]
    .sort((a, b) => b.areaM2 - a.areaM2)
    .flatMap(({ id, kind }): readonly Deck[] => {
      const shape = shapes.find(({ zone, edges }) => zone === id && edges.length > 0)
      if (shape)
        return [{ id, outlines: [...shape.edges, ...shape.openings], rough: shape.certainty === 'assumed' }]
      const usually = usualOutline(sheer, kind)
      return usually ? [{ id, outlines: [usually], rough: true }] : []
    })
}

type Line2 = readonly (readonly [number, number])[]

function usualOutline(sheer: Line2, kind: string): Line2 | undefined {
  const span = usual[kind]
  const length = sheer.at(-1)?.[0] ?? 0
  if (!span) return undefined
  const port = sheer
    .filter(([x]) => x >= span.from * length && x <= span.to * length)
    .map(([x, y]) => [x, y * span.out] as const)
  const starboard = [...port].reverse().map(([x, y]) => [x, -y] as const)
  return port.length < 2 ? undefined : [...port, ...starboard]
}
