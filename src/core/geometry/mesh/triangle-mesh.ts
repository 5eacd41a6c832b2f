/**
 * A surface as triangles between numbered points. Axes and unit are the caller's and the same throughout; results
 * come in that unit, its square and its cube. Who made a mesh owns its arrays; nobody changes them afterwards.
 */

export type TriangleMesh = {
  /** x, y and z of each point, one after the other. */
  readonly positions: Float64Array
  /** Three numbers of points a triangle, counter-clockwise seen from outside where the mesh has an outside. */
  readonly triangles: Uint32Array
}

/** How many points a mesh has, used or not. */
export const pointCount = ({ positions }: TriangleMesh): number => positions.length / 3

/** How many triangles a mesh has. */
export const triangleCount = ({ triangles }: TriangleMesh): number => triangles.length / 3
