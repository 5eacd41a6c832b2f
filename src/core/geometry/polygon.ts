/** Closed polygons in a plane, the last corner joined to the first; metres. */

import { distance2, type Point2 } from './points.ts'

export type Polygon = readonly Point2[]

const sides = (polygon: Polygon): readonly (readonly [Point2, Point2])[] =>
  polygon.map((corner, i) => [corner, polygon[(i + 1) % polygon.length]!])

/** Area in m², positive when the corners run anticlockwise; 0 for fewer than three. Shoelace formula. */
export const signedArea = (polygon: Polygon): number =>
  sides(polygon).reduce((sum, [a, b]) => sum + (a[0] * b[1] - b[0] * a[1]), 0) / 2

/** Area in m² whichever way the corners run. A polygon that crosses itself has no one area. */
export const polygonArea = (polygon: Polygon): number => Math.abs(signedArea(polygon))

/** Length in metres all the way round. */
export const polygonPerimeter = (polygon: Polygon): number =>
  sides(polygon).reduce((sum, [a, b]) => sum + distance2(a, b), 0)
