/** Whether a closed polygon crosses or touches itself, and whether places lie inside one; metres, any plane. */

import type { Point2 } from './points.ts'
import type { Polygon } from './polygon.ts'

/** Sides by number from 0, each named by the corner it starts from. */
export type PolygonCrossing = { readonly first: number; readonly second: number }

type Side = { readonly from: Point2; readonly to: Point2; readonly at: number }

/** Corners nearer than this are one corner, m. */
const same = 1e-9

const near = (a: Point2, b: Point2): boolean => Math.abs(a[0] - b[0]) < same && Math.abs(a[1] - b[1]) < same

/** Sides with a length, each under the number of the corner it starts from. */
const sidesOf = (polygon: Polygon): readonly Side[] =>
  polygon.flatMap((from, at): Side[] => {
    const to = polygon[(at + 1) % polygon.length]!
    return near(from, to) ? [] : [{ from, to, at }]
  })

/** Twice the area of the triangle, positive when `c` lies to the left of the way from `a` to `b`. */
const turn = (a: Point2, b: Point2, c: Point2): number =>
  (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0])

const within = (a: number, b: number, c: number): boolean =>
  c >= Math.min(a, b) - same && c <= Math.max(a, b) + same

const onSide = ({ from, to }: Side, c: Point2): boolean =>
  within(from[0], to[0], c[0]) &&
  within(from[1], to[1], c[1]) &&
  Math.abs(turn(from, to, c)) < same * (1 + Math.hypot(to[0] - from[0], to[1] - from[1]))

/** Most pairs of sides lie apart, which costs less to see than to work out. */
const apart = (a: Side, b: Side, axis: 0 | 1): boolean =>
  Math.max(a.from[axis], a.to[axis]) < Math.min(b.from[axis], b.to[axis]) - same ||
  Math.max(b.from[axis], b.to[axis]) < Math.min(a.from[axis], a.to[axis]) - same

const meet = (a: Side, b: Side): boolean => !apart(a, b, 0) && !apart(a, b, 1) && crossOrTouch(a, b)

const crossOrTouch = (a: Side, b: Side): boolean =>
  (turn(a.from, a.to, b.from) > 0 !== turn(a.from, a.to, b.to) > 0 &&
    turn(b.from, b.to, a.from) > 0 !== turn(b.from, b.to, a.to) > 0 &&
    turn(a.from, a.to, b.from) !== 0) ||
  [b.from, b.to].some((corner) => onSide(a, corner)) ||
  [a.from, a.to].some((corner) => onSide(b, corner))

/** Back along the way it came: two sides that share a corner lie on each other. */
const foldsBack = (a: Side, b: Side): boolean => onSide(a, b.to) || onSide(b, a.from)

/** The first two sides that cross, touch or lie on each other; undefined for a polygon that is simple. */
export const polygonCrossing = (polygon: Polygon): PolygonCrossing | undefined => {
  const sides = sidesOf(polygon)
  const last = sides.length - 1
  for (const [i, a] of sides.entries()) {
    for (let k = i + 1; k <= last; k++) {
      const b = sides[k]!
      const follows = k === i + 1
      const closes = i === 0 && k === last
      if (sides.length < 3) continue
      const crosses = follows ? foldsBack(a, b) : closes ? foldsBack(b, a) : meet(a, b)
      if (crosses) return { first: a.at, second: b.at }
    }
  }
  return undefined
}

/** Whether all places lie inside, or on the edge to within `slack` metres. Ray casting along x. */
export const holdsPlaces = (polygon: Polygon, places: readonly Point2[], slack: number): boolean => {
  const sides = sidesOf(polygon)
  return places.every(
    (place) =>
      sides.some(({ from, to }) => distanceToSide(from, to, place) <= slack) ||
      sides.filter((side) => isLeftOf(place, side)).length % 2 === 1,
  )
}

/** A level ray to the right of the place meets the side. */
const isLeftOf = ([x, y]: Point2, { from, to }: Side): boolean =>
  from[1] > y !== to[1] > y && x < from[0] + ((y - from[1]) / (to[1] - from[1])) * (to[0] - from[0])

const distanceToSide = (a: Point2, b: Point2, [x, y]: Point2): number => {
  const [dx, dy] = [b[0] - a[0], b[1] - a[1]]
  const along = ((x - a[0]) * dx + (y - a[1]) * dy) / (dx * dx + dy * dy)
  const t = Math.min(1, Math.max(0, along))
  return Math.hypot(x - a[0] - t * dx, y - a[1] - t * dy)
}
