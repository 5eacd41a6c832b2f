/** The pieces of a cut hull, put into zones and lines of a mesh, both sides at once. Boat frame, metres. */

import { type Level, type LoftCell, type LoftCells, loftCells } from '#core/geometry'
import type { BandLimits } from './band-area.ts'
import { levelOf } from './height.ts'
import type { Hull } from './hull.ts'
import { type HullCuts, workedCuts } from './hull-cuts.ts'
import type { MeshBuilder } from './mesh-builder.ts'
import { rakeLevel } from './transom-rake.ts'
import { type CellSide, zoneAt } from './zone-cells.ts'
import { type ZonePlan, zonePlan } from './zone-plan.ts'

export type MeshLineKind = 'sheer' | 'keel' | 'chine' | 'rail' | 'end' | 'waterline'

export type MeshStripe = { readonly id: string } & BandLimits

export type CutAsked = {
  readonly cuts: HullCuts
  /** Angle of the transom to the vertical, rad; positive when its top is the aftmost. */
  readonly rake: number
  /** Stripes round both sides, over whatever zone lies there. */
  readonly stripes: readonly MeshStripe[]
}

/** As fine as the lines of the drawings. */
const steps = { along: 4, across: 2 }

/** The levels that cut a hull, in this order: the plan's heights, two a stripe, the water, and the leaning transom. */
type Cut = {
  readonly hull: Hull
  readonly plan: ZonePlan
  readonly found: LoftCells
  readonly stripes: readonly MeshStripe[]
  readonly water: number
  readonly rake: number | undefined
}

const cutUp = (hull: Hull, { cuts, rake, stripes }: CutAsked): Cut => {
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
export const stripeName = (id: string): string => `stripe ${id}`

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

const addCell = (builder: MeshBuilder, cut: Cut, cell: LoftCell, numbers: Numbers): void => {
  const { corners } = cell
  const { port, starboard } = numbers
  builder.face(
    nameOf(cut, cell, 'port'),
    corners.map((id) => port[id]!),
  )
  builder.face(nameOf(cut, cell, 'starboard'), corners.map((id) => starboard[id]!).reverse())
  corners.forEach((a, k) => {
    addEdge(builder, cut, numbers, { cell, a, b: corners[(k + 1) % corners.length]! })
  })
}

type CellEdge = { readonly cell: LoftCell; readonly a: number; readonly b: number }

/** What closes the hull at an edge of a cell, and the line that runs along it, on both sides. */
const addEdge = (
  builder: MeshBuilder,
  cut: Cut,
  { port, starboard }: Numbers,
  { cell, a, b }: CellEdge,
): void => {
  const draw = (portName: string, starboardName: string): void => {
    builder.line(portName, port[a]!, port[b]!)
    builder.line(starboardName, starboard[a]!, starboard[b]!)
  }
  const closing = closingAt(cut, a, b)
  if (closing) {
    const zone = closing === 'sheer' ? 'deck' : nameOf(cut, cell, closing)
    builder.face(zone, [port[b]!, port[a]!, starboard[a]!, starboard[b]!])
  }
  const line = closing ? (closing === 'sheer' ? 'sheer' : 'end') : lineAt(cut, cell, a, b)
  if (line === 'station')
    draw(stationsOf(nameOf(cut, cell, 'port')), stationsOf(nameOf(cut, cell, 'starboard')))
  else if (line) draw(line, line)
}

export const stationsOf = (zone: string): string => `station ${zone}`

/** Adds the whole hull: its zones and stripes, the flat ends, the deck, and the lines. */
export const addHull = (builder: MeshBuilder, hull: Hull, asked: CutAsked): void => {
  const cut = cutUp(hull, asked)
  const numbers = pointsOf(builder, cut.found)
  const kept = cut.found.cells.filter(({ over }) => cut.rake === undefined || over[cut.rake])
  for (const cell of kept) addCell(builder, cut, cell, numbers)
}
