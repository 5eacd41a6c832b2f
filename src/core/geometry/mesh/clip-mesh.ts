/** The part of a mesh on one side of a plane, or inside a box. Axes and unit of the mesh; the results own new arrays. */

import { cutEdges, loneCorner } from './cut-edges.ts'
import type { Box } from './mesh-measure.ts'
import { heightsOver, type Plane } from './plane.ts'
import type { TriangleMesh } from './triangle-mesh.ts'

/**
 * What lies above a plane, triangles across it cut along it; points in the plane belong to it. Use the flipped plane
 * for what lies below. Points keep their order, new ones stand behind; those left over are gone.
 */
export const clipMesh = (mesh: TriangleMesh, plane: Plane): TriangleMesh => {
  const heights = heightsOver(mesh.positions, plane)
  if (heights.every((height) => height >= 0)) return mesh
  const { triangles } = mesh
  const crossings = cutEdges(mesh.positions, heights)
  const kept = new Uint32Array(2 * triangles.length)
  let count = 0
  const keep = (a: number, b: number, c: number): void => {
    if (a === b || b === c || c === a) return
    kept[count++] = a
    kept[count++] = b
    kept[count++] = c
  }
  // A point in the plane is its own crossing.
  const crossing = (a: number, b: number): number =>
    heights[a] === 0 ? a : heights[b] === 0 ? b : heights.length + crossings.at(a, b)
  for (let t = 0; t < triangles.length; t += 3) {
    const lone = loneCorner(heights[triangles[t]!]!, heights[triangles[t + 1]!]!, heights[triangles[t + 2]!]!)
    const a = triangles[t + Math.max(lone, 0)]!
    const b = triangles[t + ((Math.max(lone, 0) + 1) % 3)]!
    const c = triangles[t + ((Math.max(lone, 0) + 2) % 3)]!
    if (lone === -1) {
      if (heights[a]! >= 0) keep(a, b, c)
    } else if (heights[a]! >= 0) keep(a, crossing(a, b), crossing(c, a))
    else {
      keep(crossing(a, b), b, c)
      keep(crossing(a, b), c, crossing(c, a))
    }
  }
  const positions = new Float64Array(mesh.positions.length + crossings.places.length)
  positions.set(mesh.positions)
  positions.set(crossings.places, mesh.positions.length)
  return withoutUnused({ positions, triangles: kept.slice(0, count) })
}

/** What lies inside a box along the axes, cut along its sides. */
export const cropMesh = (mesh: TriangleMesh, { least, most }: Box): TriangleMesh => {
  const sides: readonly Plane[] = (['x', 'y', 'z'] as const).flatMap((axis) => {
    const along = { x: 0, y: 0, z: 0, [axis]: 1 }
    const against = { x: 0, y: 0, z: 0, [axis]: -1 }
    return [
      { normal: along, offset: least[axis] },
      { normal: against, offset: -most[axis] },
    ]
  })
  return sides.reduce(clipMesh, mesh)
}

/** The same mesh without the points that no triangle uses. */
export const withoutUnused = ({ positions, triangles }: TriangleMesh): TriangleMesh => {
  const newIds = new Uint32Array(positions.length / 3)
  for (let i = 0; i < triangles.length; i++) newIds[triangles[i]!] = 1
  let count = 0
  for (let p = 0; p < newIds.length; p++) if (newIds[p] === 1) newIds[p] = ++count
  const kept = new Float64Array(3 * count)
  for (let p = 0; p < newIds.length; p++)
    if (newIds[p] !== 0) kept.set(positions.subarray(3 * p, 3 * p + 3), 3 * (newIds[p]! - 1))
  return { positions: kept, triangles: triangles.map((p) => newIds[p]! - 1) }
}
