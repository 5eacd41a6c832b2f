/** Scans of hulls for tests: a lofted hull as triangles, and what a person would answer about a scan. */
import { type Hull, type PreparedScan, prepareScan, type ScanMark } from '#core/boat'
import {
  inOrder,
  loftRowAt,
  movedPoint,
  type Point3,
  repairMesh,
  rowPointAt,
  type Similarity,
  type TriangleMesh,
} from '#core/geometry'
import { gridMesh, insideOut, together } from './hull-meshes.mjs'

/** A hull with both sides, and its transom where it has one, in the boat frame. */
export function meshOfHull({ surface }: Hull, { along, up }: { along: number; up: number }): TriangleMesh {
  const strips = surface.strips.length
  const at = (u: number, v: number): Point3 => {
    const row = loftRowAt(surface, u)
    const strip = Math.min(Math.floor(v * strips), strips - 1)
    return rowPointAt(row, { strip, v: v * strips - strip })
  }
  const side = (sign: 1 | -1) =>
    gridMesh({ along, up: up * strips }, (u, v) => {
      const { x, y, z } = at(u, v)
      return [x, sign * y, z]
    })
  const transom = gridMesh({ along: up, up: up * strips }, (u, v) => {
    const { y, z } = at(0, v)
    return [0, y * (2 * u - 1), z]
  })
  return together(insideOut(side(1)), side(-1), transom)
}

/** Repaired and smoothed, as the worker does it. */
export function prepared(mesh: TriangleMesh): PreparedScan {
  const scan = prepareScan(repairMesh(mesh, { tolerance: 1e-6, distinct: false }), () => true)
  if (scan === undefined) throw new Error('the scan was not to go on')
  return scan
}

/** Marks at places of the boat frame as they lie in a scan that was moved. */
export const marksIn = (
  places: readonly (ScanMark & { readonly at: Point3 })[],
  moved: Similarity,
  laid: Similarity,
): readonly ScanMark[] => places.map((mark) => ({ ...mark, at: movedPoint(inOrder(moved, laid), mark.at) }))
