/** Turns the parts of a mesh to face one way each, outward where they are closed, and sums them up. */

import type { Point3 } from '../points.ts'
import { partSizes } from './mesh-measure.ts'
import { crowded, open } from './neighbours.ts'
import { type Orientation, orientationOf, turned } from './orientation.ts'
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

/** Faces a mesh whose neighbours are known. */
export const faced = (mesh: TriangleMesh, across: Int32Array): FacedMesh => {
  const orientation = orientationOf(mesh, across)
  const { partOf, against, parts: count } = orientation
  const edges = edgesOfParts(mesh, across, orientation)
  const agreed = turnedBy(mesh, across, against)
  const { areas, volumes } = partSizes(agreed.mesh, { partOf, count, from: firstPoint(mesh) })
  const isClosed = (part: number): boolean =>
    edges.open[part] === 0 && edges.crowded[part] === 0 && edges.twisted[part] === 0
  // A closed part that now faces inward is turned; an open one when more of it was turned than not.
  const isWrong = Array.from(areas, (_, part) =>
    isClosed(part) ? volumes[part]! < 0 : 2 * edges.turned[part]! > edges.triangles[part]!,
  )
  const turn = isWrong.includes(true)
    ? against.map((mark, t) => (isWrong[partOf[t]!] ? 1 - mark : mark))
    : against
  const parts = Array.from(areas, (area, part) => ({
    triangles: edges.triangles[part]!,
    area,
    volume: isClosed(part) ? Math.abs(volumes[part]!) : undefined,
    openEdges: edges.open[part]!,
  }))
  return {
    ...(turn === against ? agreed : turnedBy(mesh, across, turn)),
    partOf,
    parts,
    turned: turn.reduce((sum, mark) => sum + mark, 0),
    crowdedEdges: edges.crowded.reduce((sum, each) => sum + each, 0),
    twistedEdges: orientation.twistedEdges,
  }
}

const turnedBy = (mesh: TriangleMesh, across: Int32Array, turn: Uint8Array): ReturnType<typeof turned> =>
  turn.includes(1) ? turned(mesh, across, turn) : { mesh, across }

const firstPoint = ({ positions: p }: TriangleMesh): Point3 => ({ x: p[0] ?? 0, y: p[1] ?? 0, z: p[2] ?? 0 })

type EdgeCounts = Readonly<Record<'triangles' | 'turned' | 'open' | 'crowded' | 'twisted', Uint32Array>>

/** Triangles, how many of them face against the first, and edges of each kind, by part. */
const edgesOfParts = (
  { triangles }: TriangleMesh,
  across: Int32Array,
  { partOf, parts, against, twistedEdges }: Orientation,
): EdgeCounts => {
  const [whole, turnedOnes, opened, crowds, twisted] = Array.from({ length: 5 }, () => new Uint32Array(parts))
  for (let t = 0; t < partOf.length; t++) {
    const part = partOf[t]!
    whole![part]!++
    turnedOnes![part]! += against[t]!
    for (let edge = 3 * t; edge < 3 * t + 3; edge++) {
      const beyond = across[edge]!
      if (beyond === open) opened![part]!++
      else if (beyond === crowded) crowds![part]!++
      else if (twistedEdges > 0) {
        const turn = triangles[edge] === triangles[beyond] ? 1 : 0
        if ((against[t]! ^ against[Math.floor(beyond / 3)]!) !== turn) twisted![part]!++
      }
    }
  }
  return { triangles: whole!, turned: turnedOnes!, open: opened!, crowded: crowds!, twisted: twisted! }
}
