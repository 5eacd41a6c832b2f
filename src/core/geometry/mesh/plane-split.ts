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
  // Area and volume above, then below: an array of doubles is added to without a new number each time.
  const sums = new Float64Array(4)
  for (let t = 0; t < triangles.length; t += 3) {
    const a = triangles[t]!
    const b = triangles[t + 1]!
    const c = triangles[t + 2]!
    const ax = positions[3 * a]!
    const ay = positions[3 * a + 1]!
    const az = positions[3 * a + 2]!
    const ux = positions[3 * b]! - ax
    const uy = positions[3 * b + 1]! - ay
    const uz = positions[3 * b + 2]! - az
    const vx = positions[3 * c]! - ax
    const vy = positions[3 * c + 1]! - ay
    const vz = positions[3 * c + 2]! - az
    const nx = uy * vz - uz * vy
    const ny = uz * vx - ux * vz
    const nz = ux * vy - uy * vx
    const area = Math.sqrt(nx * nx + ny * ny + nz * nz) / 2
    const volume = ((ax - x) * nx + (ay - y) * ny + (az - z) * nz) / 6
    const share = shareAbove(heights[a]!, heights[b]!, heights[c]!)
    sums[0]! += share * area
    sums[1]! += share * volume
    sums[2]! += (1 - share) * area
    sums[3]! += (1 - share) * volume
  }
  return {
    above: { area: sums[0]!, volume: sums[1]! },
    below: { area: sums[2]!, volume: sums[3]! },
  }
}

/** How much of a triangle lies above, by the heights of its corners. */
const shareAbove = (a: number, b: number, c: number): number => {
  const lone = loneCorner(a, b, c)
  if (lone === -1) return a >= 0 ? 1 : 0
  const alone = lone === 0 ? a : lone === 1 ? b : c
  const next = lone === 0 ? b : lone === 1 ? c : a
  const last = lone === 0 ? c : lone === 1 ? a : b
  const share = (alone / (alone - next)) * (alone / (alone - last))
  return alone >= 0 ? share : 1 - share
}
