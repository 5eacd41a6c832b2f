/** The direction in which a mesh faces at each of its points, and how much of its area belongs to it. */

import type { TriangleMesh } from './triangle-mesh.ts'

export type PointNormals = {
  /** x, y and z of the mean normal of the triangles around each point, of length 1; 0 where there is none. */
  readonly normals: Float64Array
  /** A third of the area of the triangles around each point. */
  readonly areas: Float64Array
}

/** Triangles count by their area. */
export const pointNormals = ({ positions, triangles }: TriangleMesh): PointNormals => {
  const normals = new Float64Array(positions.length)
  const areas = new Float64Array(positions.length / 3)
  for (let t = 0; t < triangles.length; t += 3) {
    const a = 3 * triangles[t]!
    const b = 3 * triangles[t + 1]!
    const c = 3 * triangles[t + 2]!
    const ux = positions[b]! - positions[a]!
    const uy = positions[b + 1]! - positions[a + 1]!
    const uz = positions[b + 2]! - positions[a + 2]!
    const vx = positions[c]! - positions[a]!
    const vy = positions[c + 1]! - positions[a + 1]!
    const vz = positions[c + 2]! - positions[a + 2]!
    const x = uy * vz - uz * vy
    const y = uz * vx - ux * vz
    const z = ux * vy - uy * vx
    const third = Math.sqrt(x * x + y * y + z * z) / 6
    for (let k = t; k < t + 3; k++) {
      const p = triangles[k]!
      areas[p]! += third
      normals[3 * p]! += x
      normals[3 * p + 1]! += y
      normals[3 * p + 2]! += z
    }
  }
  for (let p = 0; p < normals.length; p += 3) {
    const length = Math.hypot(normals[p]!, normals[p + 1]!, normals[p + 2]!)
    for (let k = p; k < p + 3; k++) normals[k] = length > 0 ? normals[k]! / length : 0
  }
  return { normals, areas }
}
