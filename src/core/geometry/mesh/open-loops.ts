/** The rims of a mesh: holes, and where it simply ends. */

import { nextOnRim } from './orientation.ts'
import type { TriangleMesh } from './triangle-mesh.ts'

export type OpenLoop = {
  /** Numbers of its points, round with the triangles beside it; the last is joined to the first. */
  readonly points: readonly number[]
  /** Length all the way round, in the unit of the mesh. */
  readonly perimeter: number
}

/**
 * Every rim, the longest first; one that touches itself in a point counts as several. The mesh faces one way
 * throughout, as `repairMesh` makes it; where three triangles meet at an edge no rim runs.
 */
export const openLoops = (
  { positions, triangles }: TriangleMesh,
  across: Int32Array,
): readonly OpenLoop[] => {
  const seen = new Uint8Array(across.length)
  const loops: (readonly number[])[] = []
  for (let first = 0; first < across.length; first++) {
    if (across[first] !== -1 || seen[first] === 1) continue
    const rim: number[] = []
    for (let edge = first; across[edge] === -1 && seen[edge] === 0; edge = nextOnRim(across, edge)) {
      seen[edge] = 1
      rim.push(triangles[edge]!)
    }
    loops.push(...partedAtTouches(rim))
  }
  return loops
    .map((points) => ({ points, perimeter: perimeterOf(positions, points) }))
    .sort((a, b) => b.perimeter - a.perimeter)
}

/** Loops that pass no point twice. */
const partedAtTouches = (rim: readonly number[]): readonly (readonly number[])[] => {
  const loops: (readonly number[])[] = []
  const passed: number[] = []
  const placeOf = new Map<number, number>()
  for (const point of rim) {
    const place = placeOf.get(point)
    if (place !== undefined) {
      loops.push(passed.splice(place))
      for (const gone of loops.at(-1)!) placeOf.delete(gone)
    }
    placeOf.set(point, passed.push(point) - 1)
  }
  return [...loops, passed]
}

const perimeterOf = (positions: Float64Array, points: readonly number[]): number => {
  let sum = 0
  let from = points.at(-1)!
  for (const to of points) {
    const dx = positions[3 * to]! - positions[3 * from]!
    const dy = positions[3 * to + 1]! - positions[3 * from + 1]!
    const dz = positions[3 * to + 2]! - positions[3 * from + 2]!
    sum += Math.sqrt(dx * dx + dy * dy + dz * dz)
    from = to
  }
  return sum
}
