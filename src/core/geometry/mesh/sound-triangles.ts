/** Leaves out triangles that are of no use: collapsed to a line, or there a second time. */

import { neighboursOf } from './neighbours.ts'
import { type TriangleMesh, triangleCount } from './triangle-mesh.ts'

export type SoundMesh = {
  readonly mesh: TriangleMesh
  /** What lies across each edge, see `neighbours.ts`. */
  readonly across: Int32Array
  readonly collapsed: number
  readonly repeated: number
}

/** The mesh without them, and how many there were of each. */
export const soundTriangles = (mesh: TriangleMesh): SoundMesh => {
  const { triangles } = mesh
  const isCollapsed = (t: number): boolean =>
    triangles[3 * t] === triangles[3 * t + 1] ||
    triangles[3 * t + 1] === triangles[3 * t + 2] ||
    triangles[3 * t + 2] === triangles[3 * t]
  let sound = withoutTriangles(mesh, isCollapsed)
  const collapsed = triangleCount(mesh) - triangleCount(sound)
  let found = neighboursOf(sound)
  const before = triangleCount(sound)
  while (found.repeated !== undefined) {
    const marks = found.repeated
    sound = withoutTriangles(sound, (t) => marks[t] === 1)
    found = neighboursOf(sound)
  }
  return { mesh: sound, across: found.across, collapsed, repeated: before - triangleCount(sound) }
}

const withoutTriangles = (mesh: TriangleMesh, isGone: (triangle: number) => boolean): TriangleMesh => {
  const count = triangleCount(mesh)
  let first = 0
  while (first < count && !isGone(first)) first++
  if (first === count) return mesh
  const kept = mesh.triangles.slice()
  let to = 3 * first
  for (let t = first; t < count; t++) {
    if (isGone(t)) continue
    kept[to] = mesh.triangles[3 * t]!
    kept[to + 1] = mesh.triangles[3 * t + 1]!
    kept[to + 2] = mesh.triangles[3 * t + 2]!
    to += 3
  }
  return { positions: mesh.positions, triangles: kept.slice(0, to) }
}
