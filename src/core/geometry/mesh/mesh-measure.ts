/** Area, volume and extent of meshes, in the unit of the mesh, its square and its cube. */

import type { Point3 } from '../points.ts'
import type { TriangleMesh } from './triangle-mesh.ts'

/** Area and signed volume of each part of a mesh: of the cones from one point to all of its triangles. */
export type PartSizes = { readonly areas: Float64Array; readonly volumes: Float64Array }

/**
 * Area and volume by part. The volume is that inside where the part is closed and faces outward, its negative where it
 * faces inward; of an open part it is that of the cone to `from`.
 */
export const partSizes = (
  { positions, triangles }: TriangleMesh,
  parts: { readonly partOf: Uint32Array; readonly count: number; readonly from: Point3 },
): PartSizes => {
  const { partOf, count, from } = parts
  const areas = new Float64Array(count)
  const volumes = new Float64Array(count)
  for (let t = 0; t < partOf.length; t++) {
    const a = 3 * triangles[3 * t]!
    const b = 3 * triangles[3 * t + 1]!
    const c = 3 * triangles[3 * t + 2]!
    const ax = positions[a]!
    const ay = positions[a + 1]!
    const az = positions[a + 2]!
    const ux = positions[b]! - ax
    const uy = positions[b + 1]! - ay
    const uz = positions[b + 2]! - az
    const vx = positions[c]! - ax
    const vy = positions[c + 1]! - ay
    const vz = positions[c + 2]! - az
    const nx = uy * vz - uz * vy
    const ny = uz * vx - ux * vz
    const nz = ux * vy - uy * vx
    const part = partOf[t]!
    areas[part]! += Math.sqrt(nx * nx + ny * ny + nz * nz) / 2
    volumes[part]! += ((ax - from.x) * nx + (ay - from.y) * ny + (az - from.z) * nz) / 6
  }
  return { areas, volumes }
}

/** Area of all triangles; 0 for none. */
export const meshArea = ({ positions, triangles }: TriangleMesh): number => {
  let doubled = 0
  for (let i = 0; i < triangles.length; i += 3) {
    const a = 3 * triangles[i]!
    const b = 3 * triangles[i + 1]!
    const c = 3 * triangles[i + 2]!
    const ux = positions[b]! - positions[a]!
    const uy = positions[b + 1]! - positions[a + 1]!
    const uz = positions[b + 2]! - positions[a + 2]!
    const vx = positions[c]! - positions[a]!
    const vy = positions[c + 1]! - positions[a + 1]!
    const vz = positions[c + 2]! - positions[a + 2]!
    const nx = uy * vz - uz * vy
    const ny = uz * vx - ux * vz
    const nz = ux * vy - uy * vx
    doubled += Math.sqrt(nx * nx + ny * ny + nz * nz)
  }
  return doubled / 2
}

/**
 * Volume that a mesh encloses, by the divergence theorem: positive when it is closed and faces outward. A mesh that is
 * open only along a plane encloses what it does together with that plane when `from` lies in it.
 */
export const meshVolume = (mesh: TriangleMesh, from: Point3): number => {
  const partOf = new Uint32Array(mesh.triangles.length / 3)
  return partSizes(mesh, { partOf, count: 1, from }).volumes[0]!
}

export type Box = { readonly least: Point3; readonly most: Point3 }

/** The smallest box along the axes that holds every point; undefined when there is none. */
export const meshBox = ({ positions }: TriangleMesh): Box | undefined => {
  if (positions.length === 0) return undefined
  const least = [Infinity, Infinity, Infinity]
  const most = [-Infinity, -Infinity, -Infinity]
  for (let k = 0; k < 3; k++)
    for (let i = k; i < positions.length; i += 3) {
      const value = positions[i]!
      if (value < least[k]!) least[k] = value
      if (value > most[k]!) most[k] = value
    }
  const point = ([x, y, z]: readonly number[]): Point3 => ({ x: x!, y: y!, z: z! })
  return { least: point(least), most: point(most) }
}
