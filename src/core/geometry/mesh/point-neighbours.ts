/** The points that each point of a mesh is joined to by an edge; those on a rim only along it. */

import { nextEdge, rimMarks } from './neighbours.ts'
import { pointCount, type TriangleMesh } from './triangle-mesh.ts'

export type PointNeighbours = {
  /** Those of point `p` are `points` from `starts[p]` to `starts[p + 1]`. */
  readonly starts: Uint32Array
  readonly points: Uint32Array
}

/**
 * Neighbours of every point. A point on a rim, or where three triangles meet at an edge, has only the neighbours along
 * that rim or edge: what is smoothed then keeps its rim where it is. `across` as `neighbours.ts` has it.
 */
export const pointNeighbours = (mesh: TriangleMesh, across: Int32Array): PointNeighbours => {
  const { triangles } = mesh
  const count = pointCount(mesh)
  const isOnRim = rimMarks(mesh, across)
  const eachPair = (take: (from: number, to: number) => void): void => {
    for (let edge = 0; edge < across.length; edge++) {
      const isRim = across[edge]! < 0
      // An edge that two triangles share is taken once.
      if (!isRim && across[edge]! < edge) continue
      const a = triangles[edge]!
      const b = triangles[nextEdge(edge)]!
      if (isRim || isOnRim[a] === 0) take(a, b)
      if (isRim || isOnRim[b] === 0) take(b, a)
    }
  }
  const starts = new Uint32Array(count + 2)
  eachPair((from) => {
    starts[from + 2]!++
  })
  for (let p = 2; p < starts.length; p++) starts[p]! += starts[p - 1]!
  const points = new Uint32Array(starts[count + 1]!)
  eachPair((from, to) => {
    points[starts[from + 1]!++] = to
  })
  return { starts, points }
}
