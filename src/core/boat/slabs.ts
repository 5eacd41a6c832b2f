/** Polygons of a plan cut across at given places into pieces with two straight sides. Boat frame from above, metres. */

import type { Point2, Polyline } from '#core/geometry'

/** Between two places: port and starboard side at each of them. */
export type Slab = {
  readonly from: number
  readonly to: number
  readonly inner: readonly [atFrom: number, atTo: number]
  readonly outer: readonly [atFrom: number, atTo: number]
}

type Side = readonly [from: Point2, to: Point2]

const sidesOf = (polygon: readonly Point2[]): readonly Side[] =>
  polygon.map((corner, k) => [corner, polygon[(k + 1) % polygon.length]!])

/** Half breadth of a side at a place along it. */
const breadthAt = ([[x0, y0], [x1, y1]]: Side, x: number): number => y0 + ((y1 - y0) * (x - x0)) / (x1 - x0)

/** Rising, each once. */
const inOrder = (places: readonly number[]): readonly number[] => [...new Set(places)].sort((a, b) => a - b)

/** Where polygons are cut: at every corner, and at the places asked for that lie within them. */
export const slabPlaces = (
  polygons: readonly (readonly Point2[])[],
  places: readonly number[],
): readonly number[] => {
  const corners = polygons.flat().map(([x]) => x)
  const [least, most] = [Math.min(...corners), Math.max(...corners)]
  return inOrder([...corners, ...places.filter((x) => x > least && x < most)])
}

/**
 * What lies inside an odd number of the polygons, between neighbouring places; holes are polygons inside others. The
 * places must have every corner among them; polygons that cross are cut wrong between two of them.
 */
export const slabsOf = (
  polygons: readonly (readonly Point2[])[],
  places: readonly number[],
): readonly Slab[] => {
  const sides = polygons.flatMap(sidesOf).filter(([[from], [to]]) => from !== to)
  return places.slice(1).flatMap((to, k) => {
    const from = places[k]!
    const middle = (from + to) / 2
    const across = sides
      .filter(([[a], [b]]) => (a < middle && b > middle) || (b < middle && a > middle))
      .sort((a, b) => breadthAt(a, middle) - breadthAt(b, middle))
    return across.flatMap((inner, n): readonly Slab[] => {
      const outer = across[n + 1]
      if (n % 2 === 1 || !outer) return []
      const ends = (side: Side) => [breadthAt(side, from), breadthAt(side, to)] as const
      return [{ from, to, inner: ends(inner), outer: ends(outer) }]
    })
  })
}

/** The closed line of a polygon with a corner at each of the places that it passes. */
export const closedAt = (polygon: readonly Point2[], places: readonly number[]): readonly Point2[] => {
  const [first] = polygon
  if (!first) return []
  const pieces = sidesOf(polygon).flatMap((side): readonly Point2[] => {
    const [[from, y], [to]] = side
    const between = places.filter((x) => (x > from && x < to) || (x < from && x > to))
    const inTurn = to > from ? between : [...between].reverse()
    return [[from, y], ...inTurn.map((x) => [x, breadthAt(side, x)] as const)]
  })
  return [...pieces, first]
}

/** Height of a line that runs forward, straight between its points; at the nearer end outside it. */
export const heightAlong = (line: Polyline, x: number): number => {
  const next = line.findIndex((point) => point.x >= x)
  const [from, to] = [line[next - 1], line[next]]
  if (!to) return line.at(-1)?.z ?? 0
  if (!from) return to.z
  return to.x === from.x ? to.z : from.z + ((to.z - from.z) * (x - from.x)) / (to.x - from.x)
}
