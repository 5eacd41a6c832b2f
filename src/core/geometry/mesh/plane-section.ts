/** The lines along which a plane cuts a mesh. Axes and unit of the mesh. */

import type { Point3 } from '../points.ts'
import { polylineLength } from '../polyline.ts'
import { type Chain, chainsOf } from './chains.ts'
import { cutEdges, loneCorner } from './cut-edges.ts'
import { heightsOver, type Plane } from './plane.ts'
import type { TriangleMesh } from './triangle-mesh.ts'

export type SectionLine = {
  /** The last point of a closed line is its first again. */
  readonly points: readonly Point3[]
  readonly closed: boolean
  readonly length: number
}

/**
 * Every line of the cut, the longest first; with the plane's normal toward the eye, what is inside a mesh that faces
 * outward lies to the left of its lines. Triangles that lie in the plane give their rim;
 * where the mesh only touches it from below, a line runs there and back.
 */
export const planeSection = (mesh: TriangleMesh, plane: Plane): readonly SectionLine[] => {
  const heights = heightsOver(mesh.positions, plane)
  const { pieces, places } = piecesOf(mesh, heights)
  return chainsOf(pieces, places.length / 3)
    .map((chain) => lineOf(chain, places))
    .filter(({ length }) => length > 0)
    .sort((a, b) => b.length - a.length)
}

/** The straight piece in each triangle that is crossed, as two numbers of crossings: from, to. */
const piecesOf = ({ positions, triangles }: TriangleMesh, heights: Float64Array) => {
  const { at, places } = cutEdges(positions, heights)
  const pieces: number[] = []
  for (let t = 0; t < triangles.length; t += 3) {
    const a = triangles[t]!
    const b = triangles[t + 1]!
    const c = triangles[t + 2]!
    const lone = loneCorner(heights[a]!, heights[b]!, heights[c]!)
    if (lone === -1) continue
    const alone = lone === 0 ? a : lone === 1 ? b : c
    const next = lone === 0 ? b : lone === 1 ? c : a
    const last = lone === 0 ? c : lone === 1 ? a : b
    if (heights[alone]! >= 0) pieces.push(at(alone, next), at(last, alone))
    else pieces.push(at(last, alone), at(alone, next))
  }
  return { pieces, places }
}

const lineOf = ({ ends, closed }: Chain, places: readonly number[]): SectionLine => {
  const points: Point3[] = []
  for (const end of ends) {
    const [x, y, z] = [places[3 * end]!, places[3 * end + 1]!, places[3 * end + 2]!]
    const before = points.at(-1)
    // Edges that meet in a point of the plane cross it there, every one.
    if (before === undefined || before.x !== x || before.y !== y || before.z !== z) points.push({ x, y, z })
  }
  return { points, closed, length: polylineLength(points) }
}
