/**
 * Where places on the deck stand on the screen and back: seen from above, the bow right and port up; where it is narrow
 * the bow up and port left. Boat metres: x forward from the aftmost point, y to port; screen px.
 */
import type { Outline } from '../boat-layout.ts'

export type Place = readonly [x: number, y: number]

/** What of the boat is shown, m. */
export type Bounds = {
  readonly aft: number
  readonly fore: number
  readonly starboard: number
  readonly port: number
}

export type DeckView = {
  readonly width: number
  readonly height: number
  /** Px a metre. */
  readonly perM: number
  readonly upright: boolean
  readonly bounds: Bounds
  readonly at: (place: Place) => Place
  readonly back: (screen: Place) => Place
}

/** Narrower than this the boat stands upright, px. */
const narrow = 560
const margin = { lying: { x: 24, top: 16, below: 36 }, upright: { x: 36, top: 16, below: 16 } } as const
/** A part of the deck is drawn no taller than this share of the width. */
const tallest = 1.1

export function deckView(bounds: Bounds, width: number): DeckView {
  const upright = width < narrow
  const gap = upright ? margin.upright : margin.lying
  const long = bounds.fore - bounds.aft
  const wide = bounds.port - bounds.starboard
  const [across, down] = upright ? [wide, long] : [long, wide]
  const room = width - 2 * gap.x
  const perM = Math.min(room / across, upright ? Number.POSITIVE_INFINITY : (tallest * width) / down)
  const left = (width - across * perM) / 2
  const at = ([x, y]: Place): Place =>
    upright
      ? [left + (bounds.port - y) * perM, gap.top + (bounds.fore - x) * perM]
      : [left + (x - bounds.aft) * perM, gap.top + (bounds.port - y) * perM]
  const back = ([px, py]: Place): Place =>
    upright
      ? [bounds.fore - (py - gap.top) / perM, bounds.port - (px - left) / perM]
      : [bounds.aft + (px - left) / perM, bounds.port - (py - gap.top) / perM]
  return { width, height: gap.top + down * perM + gap.below, perM, upright, bounds, at, back }
}

/** Stands for the sheer where there is no hull, so that a deck can be drawn before the boat is measured. */
const noHull: readonly Place[] = [
  [0, 1.2],
  [7, 1.2],
]

export const sheerOf = (outline: Outline | undefined): readonly Place[] =>
  outline ? [...outline.halfBreadthPlan.sheer].sort((a, b) => a[0] - b[0]) : noHull

/** Half breadth of the deck at a place along the boat; that of its ends beyond them. */
export function breadthAt(sheer: readonly Place[], x: number): number {
  const next = sheer.findIndex(([at]) => at >= x)
  const after = sheer[next < 0 ? sheer.length - 1 : next]
  const before = sheer[Math.max(0, next < 0 ? sheer.length - 1 : next - 1)]
  if (!before || !after) return 0
  const long = after[0] - before[0]
  if (long === 0 || x <= before[0]) return before[1]
  return before[1] + ((after[1] - before[1]) * (x - before[0])) / long
}

const roomAround = 0.1

/** The whole deck, and what is drawn outside it. */
export function wholeBounds(sheer: readonly Place[], shapes: readonly (readonly Place[])[]): Bounds {
  const mirrored = sheer.flatMap(([x, y]): readonly Place[] => [
    [x, y],
    [x, -y],
  ])
  return around([...mirrored, ...shapes.flat()], roomAround)
}

/** One zone with some of the deck around it. */
export const zoneBounds = (edge: readonly Place[]): Bounds | undefined =>
  edge.length === 0 ? undefined : around(edge, 0.25)

function around(places: readonly Place[], room: number): Bounds {
  const xs = places.map(([x]) => x)
  const ys = places.map(([, y]) => y)
  return {
    aft: Math.min(...xs) - room,
    fore: Math.max(...xs) + room,
    starboard: Math.min(...ys) - room,
    port: Math.max(...ys) + room,
  }
}

/** Middle of a shape, where its name stands. */
export function middleOf(edge: readonly Place[]): Place {
  let [area, mx, my] = [0, 0, 0]
  for (const [i, [x, y]] of edge.entries()) {
    const [x1, y1] = edge[(i + 1) % edge.length]!
    const cross = x * y1 - x1 * y
    area += cross
    mx += (x + x1) * cross
    my += (y + y1) * cross
  }
  if (Math.abs(area) > 1e-9) return [mx / (3 * area), my / (3 * area)]
  const count = Math.max(1, edge.length)
  return [edge.reduce((sum, [x]) => sum + x, 0) / count, edge.reduce((sum, [, y]) => sum + y, 0) / count]
}
