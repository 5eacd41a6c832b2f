/** Points in a plane and in space; metres, axes as the caller's frame has them. */

export type Point2 = readonly [number, number]

export type Point3 = { readonly x: number; readonly y: number; readonly z: number }

/** Distance between two points of a plane, in metres. */
export const distance2 = (a: Point2, b: Point2): number => Math.hypot(b[0] - a[0], b[1] - a[1])

/** Distance between two points in space, in metres. */
export const distance3 = (a: Point3, b: Point3): number => Math.hypot(b.x - a.x, b.y - a.y, b.z - a.z)

/** The point at the share `t` of the way from `a` to `b`. */
export const between3 = (a: Point3, b: Point3, t: number): Point3 => ({
  x: a.x + t * (b.x - a.x),
  y: a.y + t * (b.y - a.y),
  z: a.z + t * (b.z - a.z),
})
