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
  const crossings = cutEdges(positions, heights)
  const pieces: number[] = []
  for (let t = 0; t < triangles.length; t += 3) {
    const lone = loneCorner(heights[triangles[t]!]!, heights[triangles[t + 1]!]!, heights[triangles[t + 2]!]!)
    if (lone === -1) continue
    const corner = (k: number): number => triangles[t + ((lone + k) % 3)]!
    const first = crossings.at(corner(0), corner(1))
    const second = crossings.at(corner(2), corner(0))
    if (heights[corner(0)]! >= 0) pieces.push(first, second)
    else pieces.push(second, first)
  }
  return { pieces, places: crossings.places }
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
