/** Puts a mesh from a file in order: points shared, no triangle twice or of no use, all of a part facing one way. */

import { faced, type MeshPart } from './facing.ts'
import { rimMarks } from './neighbours.ts'
import { soundTriangles } from './sound-triangles.ts'
import type { TriangleMesh } from './triangle-mesh.ts'
import { weldEqual } from './weld.ts'
import { weldNear } from './weld-near.ts'

/** What was found in a mesh and put right, or stays. */
export type MeshFindings = {
  /** Points that took the place of another: equal ones, and those on rims within the tolerance. */
  readonly merged: number
  /** Points that no triangle used; left out. */
  readonly unused: number
  /** Triangles with two corners in one point; left out. */
  readonly collapsed: number
  /** Triangles there a second time; left out. */
  readonly repeated: number
  /** Triangles that faced the wrong way; turned round. */
  readonly turned: number
  /** Edges of triangles at which three or more meet; they stay. */
  readonly crowdedEdges: number
  /** Edges over which a part faces both ways; they stay. */
  readonly twistedEdges: number
}

export type RepairedMesh = {
  readonly mesh: TriangleMesh
  /** What lies across each edge, see `neighbours.ts`. */
  readonly across: Int32Array
  /** The part that each triangle belongs to. */
  readonly partOf: Uint32Array
  readonly parts: readonly MeshPart[]
  readonly found: MeshFindings
}

export type MeshRepair = {
  /** Points on rims closer than this become one; 0 for none. */
  readonly tolerance: number
  /** Whether it is known that every point is used, and no two are equal: then that is not looked for. */
  readonly distinct: boolean
}

/**
 * Repairs a mesh. Equal points become one, and near ones on rims. A closed part is turned to face outward, an open one
 * as most of it did. Nothing is filled in, and no point is moved but onto another.
 */
export const repairMesh = (mesh: TriangleMesh, { tolerance, distinct }: MeshRepair): RepairedMesh => {
  const { mesh: welded, ...counts } = distinct ? { mesh, merged: 0, unused: 0 } : weldEqual(mesh)
  const { mesh: joined, across: beyond, merged, ...gone } = closedSeams(welded, tolerance)
  const { turned, crowdedEdges, twistedEdges, ...result } = faced(joined, beyond)
  const found = { ...counts, ...gone, merged: counts.merged + merged, turned, crowdedEdges, twistedEdges }
  return { ...result, found }
}

/** Without faulty triangles, and with points on rims joined. */
const closedSeams = (mesh: TriangleMesh, tolerance: number) => {
  const sound = soundTriangles(mesh)
  const among = tolerance > 0 ? pointsOnRims(sound.mesh, sound.across) : new Uint32Array(0)
  const near = weldNear(sound.mesh, { tolerance, among })
  if (near.merged === 0) return { ...sound, merged: 0 }
  const again = soundTriangles(weldEqual(near.mesh).mesh)
  return {
    ...again,
    merged: near.merged,
    collapsed: sound.collapsed + again.collapsed,
    repeated: sound.repeated + again.repeated,
  }
}

const pointsOnRims = (mesh: TriangleMesh, across: Int32Array): Uint32Array => {
  const isOnRim = rimMarks(mesh, across)
  const points = new Uint32Array(isOnRim.reduce((sum, mark) => sum + mark, 0))
  let at = 0
  for (let p = 0; p < isOnRim.length; p++) if (isOnRim[p] === 1) points[at++] = p
  return points
}
