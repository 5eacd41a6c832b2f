/** Planes in space, and on which side of one the points of a mesh lie. */

import type { Point3 } from '../points.ts'

export type Plane = {
  /** Of length 1; points to the side that is above. */
  readonly normal: Point3
  /** Distance of the plane from the origin along its normal. */
  readonly offset: number
}

/** The level plane at a height. */
export const levelPlane = (z: number): Plane => ({ normal: { x: 0, y: 0, z: 1 }, offset: z })

/** The plane square to a direction of any length, through a point. */
export const planeThrough = (point: Point3, direction: Point3): Plane => {
  const length = Math.hypot(direction.x, direction.y, direction.z)
  const normal = { x: direction.x / length, y: direction.y / length, z: direction.z / length }
  return { normal, offset: normal.x * point.x + normal.y * point.y + normal.z * point.z }
}

/** The same plane seen from its other side. */
export const flippedPlane = ({ normal: { x, y, z }, offset }: Plane): Plane => ({
  normal: { x: -x, y: -y, z: -z },
  offset: -offset,
})

/** Distance of a point from a plane, positive above. */
export const heightOver = ({ normal, offset }: Plane, { x, y, z }: Point3): number =>
  normal.x * x + normal.y * y + normal.z * z - offset

/** The foot of the origin on a plane. */
export const planeFoot = ({ normal, offset }: Plane): Point3 => ({
  x: normal.x * offset,
  y: normal.y * offset,
  z: normal.z * offset,
})

/** Distance of every point of a mesh from a plane, positive above. */
export const heightsOver = (
  positions: Float64Array,
  { normal: { x, y, z }, offset }: Plane,
): Float64Array => {
  const heights = new Float64Array(positions.length / 3)
  for (let p = 0; p < heights.length; p++)
    heights[p] = x * positions[3 * p]! + y * positions[3 * p + 1]! + z * positions[3 * p + 2]! - offset
  return heights
}
