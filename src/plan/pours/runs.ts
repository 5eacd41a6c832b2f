/** Where a film may end unseen: each zone cut into runs at stem, transom corner, keel and the edges of its pieces. */
import type { HullZone } from '#core/boat'
import type { Work } from '#job'
import { isPad } from '../pads.ts'
import type { Stage } from '../remember.ts'
import type { ColouredHull } from '../surfaces.ts'
import type { Deck, Marks, Outline2, RunPlace, Surfaces, ZoneArea } from '../types.ts'

export type RunsInput = {
  readonly zones: Work['zones']
  readonly surfaces: Surfaces
  readonly marks: Marks
  readonly colours: ColouredHull
  readonly deck: Deck
}

/** A run and, inside it, places where a lap would hide if it had to be broken. */
export type ZoneRun = {
  readonly where: RunPlace
  /** Of the zone. */
  readonly share: number
  /** m along it, where the surface tells. */
  readonly lengthM?: number
  readonly lapPlaces: number
}

export type Runs = Readonly<Record<string, readonly ZoneRun[]>>

/** Shares of the zone's area, which is what a tape or pads made of it. */
export const runs: Stage<RunsInput, Runs> = {
  name: 'runs',
  run: (input) => {
    const areas = new Map([...input.surfaces.zones, ...input.marks.zones].map((zone) => [zone.id, zone]))
    return Object.fromEntries(
      input.zones.flatMap((zone) => {
        const area = areas.get(zone.id)
        return area && !isPad(zone) ? [[zone.id, runsOf(zone, area, input)]] : []
      }),
    )
  },
}

type Zone = Work['zones'][number]
type Piece = { readonly where: RunPlace; readonly areaM2: number; readonly lengthM?: number }

function runsOf(zone: Zone, area: ZoneArea, input: RunsInput): readonly ZoneRun[] {
  const pieces = piecesOf(zone, area, input).filter(({ areaM2 }) => areaM2 > 0)
  const all = pieces.reduce((sum, { areaM2 }) => sum + areaM2, 0)
  const lapPlaces = zone.lapPlaces ?? 0
  if (all <= 0) return [{ where: 'whole', share: 1, lapPlaces }]
  return pieces.map(({ where, areaM2, lengthM }) => ({
    where: pieces.length === 1 && where === 'piece' ? 'whole' : where,
    share: areaM2 / all,
    ...(lengthM === undefined ? {} : { lengthM }),
    lapPlaces,
  }))
}

/** A measured surface first, then what lies on the deck, then what the zone itself says. */
function piecesOf(zone: Zone, area: ZoneArea, { marks, colours, deck }: RunsInput): readonly Piece[] {
  if (area.how === 'surface' || area.how === 'girths')
    return colours.zones.filter((part) => isOf(part, zone)).flatMap(hullPieces)
  const panels = marks.panels.filter((panel) => panel.zone === zone.id)
  if (area.how === 'marks' && panels.length > 0)
    return panels.flatMap(({ count, panelAreaM2 }) => alike(count, count * panelAreaM2))
  const edges = deck.shapes.find((shape) => shape.zone === zone.id)?.edges ?? []
  if (edges.length > 1) return edges.map((edge) => ({ where: 'piece', areaM2: enclosed(edge) }))
  if (twoSided.has(zone.kind) && area.side === 'both')
    return [
      { where: 'port', areaM2: area.areaM2 / 2 },
      { where: 'starboard', areaM2: area.areaM2 / 2 },
    ]
  return alike(zone.count ?? 1, area.areaM2)
}

/** They go along both sides and meet at the stem, whoever measured them. */
const twoSided: ReadonlySet<string> = new Set(['topsides', 'bottom', 'boot-top', 'boot stripe'])

const isOf = ({ kind }: HullZone, zone: Zone): boolean =>
  zone.kind === 'topsides'
    ? (zone.side ?? 'both') === 'both'
      ? kind.startsWith('topsides')
      : kind === `topsides-${zone.side}`
    : kind === zone.kind

/** Each face by itself: port and starboard meet at stem and keel, a flat end at the transom corners. */
const hullPieces = (part: HullZone): readonly Piece[] =>
  part.faces.map((face) => ({
    where: face.of === 'aft' ? 'stern' : face.of === 'fore' ? 'bow' : face.of,
    areaM2: face.area,
    ...(part.faces.length === 1 ? { lengthM: Math.max(part.upperLength, part.lowerLength) } : {}),
  }))

const alike = (count: number, areaM2: number): readonly Piece[] =>
  Array.from({ length: count }, () => ({ where: 'piece', areaM2: areaM2 / count }))

/** m², by the trapezoids under its sides. */
const enclosed = (edge: Outline2): number =>
  Math.abs(
    edge.reduce((sum, [x, y], at) => {
      const [nextX, nextY] = edge[(at + 1) % edge.length]!
      return sum + ((nextX - x) * (nextY + y)) / 2
    }, 0),
  )
