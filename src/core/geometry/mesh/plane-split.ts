/** Area and volume of a mesh on either side of a plane, without cutting it. Unit of the mesh, squared and cubed. */

import { loneCorner } from './cut-edges.ts'
import { heightsOver, type Plane, planeFoot } from './plane.ts'
import type { TriangleMesh } from './triangle-mesh.ts'

export type SideSizes = {
  readonly area: number
  /** What is enclosed on this side by the mesh and the plane; the mesh faces outward and is open only in the plane. */
  readonly volume: number
}

/** Both sides of a plane. A piece cut from a corner has the product of the two shares of its edges of everything. */
export const splitByPlane = (
  { positions, triangles }: TriangleMesh,
  plane: Plane,
): { readonly below: SideSizes; readonly above: SideSizes } => {
  const heights = heightsOver(positions, plane)
  const { x, y, z } = planeFoot(plane)
  let [areaBelow, areaAbove, volumeBelow, volumeAbove] = [0, 0, 0, 0]
  for (let t = 0; t < triangles.length; t += 3) {
    const p = triangles[t]!
    const q = triangles[t + 1]!
    const r = triangles[t + 2]!
    const ax = positions[3 * p]!
    const ay = positions[3 * p + 1]!
    const az = positions[3 * p + 2]!
    const ux = positions[3 * q]! - ax
    const uy = positions[3 * q + 1]! - ay
    const uz = positions[3 * q + 2]! - az
    const vx = positions[3 * r]! - ax
    const vy = positions[3 * r + 1]! - ay
    const vz = positions[3 * r + 2]! - az
    const nx = uy * vz - uz * vy
    const ny = uz * vx - ux * vz
    const nz = ux * vy - uy * vx
    const area = Math.sqrt(nx * nx + ny * ny + nz * nz) / 2
    const volume = ((ax - x) * nx + (ay - y) * ny + (az - z) * nz) / 6
    const share = shareAbove(heights[p]!, heights[q]!, heights[r]!)
    areaAbove += share * area
    areaBelow += (1 - share) * area
    volumeAbove += share * volume
    volumeBelow += (1 - share) * volume
  }
  return {
    below: { area: areaBelow, volume: volumeBelow },
    above: { area: areaAbove, volume: volumeAbove },
  }
}

/** How much of a triangle lies above, by the heights of its corners. */
const shareAbove = (a: number, b: number, c: number): number => {
  if (a >= 0 && b >= 0 && c >= 0) return 1
  if (a < 0 && b < 0 && c < 0) return 0
  const lone = loneCorner(a, b, c)
  const [alone, next, last] = lone === 0 ? [a, b, c] : lone === 1 ? [b, c, a] : [c, a, b]
  const share = (alone / (alone - next)) * (alone / (alone - last))
  return alone >= 0 ? share : 1 - share
}
