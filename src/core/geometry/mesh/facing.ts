/** Turns the parts of a mesh to face one way each, outward where they are closed, and sums them up. */

import type { Point3 } from '../points.ts'
import { partSizes } from './mesh-measure.ts'
import { orientationOf, type PartCounts, turned } from './orientation.ts'
import type { TriangleMesh } from './triangle-mesh.ts'

export type MeshPart = {
  readonly triangles: number
  readonly area: number
  /** What it encloses; undefined when it is open, crowded or twisted. */
  readonly volume: number | undefined
  readonly openEdges: number
}

export type FacedMesh = {
  readonly mesh: TriangleMesh
  readonly across: Int32Array
  readonly partOf: Uint32Array
  readonly parts: readonly MeshPart[]
  /** Triangles that were turned round. */
  readonly turned: number
  readonly crowdedEdges: number
  readonly twistedEdges: number
}

const isClosed = ({ open, crowded, twisted }: PartCounts): boolean => open + crowded + twisted === 0

/** Faces a mesh whose neighbours are known. */
export const faced = (mesh: TriangleMesh, across: Int32Array): FacedMesh => {
  const { partOf, against, parts } = orientationOf(mesh, across)
  const sum = (count: (part: PartCounts) => number): number =>
    parts.reduce((all, part) => all + count(part), 0)
  const againstFirst = sum((part) => part.against)
  const agreed = againstFirst > 0 ? turned(mesh, across, against) : { mesh, across }
  const { areas, volumes } = partSizes(agreed.mesh, { partOf, count: parts.length, from: firstPoint(mesh) })
  // A closed part that now faces inward is turned; an open one when more of it was turned than not.
  const isWrong = parts.map((part, i) =>
    isClosed(part) ? volumes[i]! < 0 : 2 * part.against > part.triangles,
  )
  const isAgreed = !isWrong.includes(true)
  const turn = isAgreed ? against : against.map((mark, t) => (isWrong[partOf[t]!] ? 1 - mark : mark))
  return {
    ...(isAgreed ? agreed : turned(mesh, across, turn)),
    partOf,
    parts: parts.map((part, i) => ({
      triangles: part.triangles,
      area: areas[i]!,
      volume: isClosed(part) ? Math.abs(volumes[i]!) : undefined,
      openEdges: part.open,
    })),
    turned: isAgreed ? againstFirst : turn.reduce((all, mark) => all + mark, 0),
    crowdedEdges: sum((part) => part.crowded),
    twistedEdges: sum((part) => part.twisted),
  }
}

const firstPoint = ({ positions: p }: TriangleMesh): Point3 => ({ x: p[0] ?? 0, y: p[1] ?? 0, z: p[2] ?? 0 })
