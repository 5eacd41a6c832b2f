/**
 * Takes the noise of a scan out of a mesh, and with it the area that noise adds. Axes and unit of the mesh; the
 * results own new arrays.
 */

import { meshArea } from './mesh-measure.ts'
import { type PointNeighbours, pointNeighbours } from './point-neighbours.ts'
import type { TriangleMesh } from './triangle-mesh.ts'

/**
 * A step toward the mean of the neighbours, and a larger one back: what is longer than the pass band keeps its size
 * (G. Taubin, A signal processing approach to fair surface design, 1995). The first factor is his, from memory; the
 * pass band was chosen for the least error of the parabolic hull under noise of 1 to 10 mm, see the tests.
 */
const [inward, passBand] = [0.6307, 0.06]
const outward = 1 / (passBand - 1 / inward)

/** Smoothing ends when twice as many rounds change the area by no more than this; chosen with the pass band. */
const settledShare = 0.004
/** Beyond it the pass band itself grows. */
const mostRounds = 256

export type SmoothedMesh = {
  readonly mesh: TriangleMesh
  readonly areaBefore: number
  readonly areaAfter: number
  /** Steps there and back. */
  readonly rounds: number
  /** By how much of the area the last half of the rounds changed it: about what is not known of it. */
  readonly lastChangeShare: number
  /** Whether that was little enough; if not, the noise is coarser than smoothing can tell from the surface. */
  readonly settled: boolean
}

export type Smoothing = {
  /** What lies across each edge, see `neighbours.ts`. */
  readonly across: Int32Array
  /** Told the rounds that are done now and then; answers whether to go on. */
  readonly goesOn: (rounds: number) => boolean
}

/**
 * Smooths a mesh until its area has settled: after 1, 2, 4, 8 … rounds the area is compared. Rims are smoothed along
 * themselves. A mesh without noise loses a little at sharp edges, which become round over a few triangles. Undefined
 * when it was not to go on.
 */
export const smoothMesh = (mesh: TriangleMesh, { across, goesOn }: Smoothing): SmoothedMesh | undefined => {
  const neighbours = pointNeighbours(mesh, across)
  const areaBefore = meshArea(mesh)
  const positions = mesh.positions.slice()
  const spare = positions.slice()
  let [rounds, area, lastChangeShare] = [0, areaBefore, 0]
  for (let goal = 1; goal <= mostRounds; goal *= 2) {
    for (; rounds < goal; rounds++) {
      if (!goesOn(rounds)) return undefined
      step(positions, spare, neighbours, inward)
      step(spare, positions, neighbours, outward)
    }
    const before = area
    area = meshArea({ positions, triangles: mesh.triangles })
    lastChangeShare = area > 0 ? Math.abs(before - area) / area : 0
    if (lastChangeShare <= settledShare) break
  }
  return {
    mesh: { positions, triangles: mesh.triangles },
    areaBefore,
    areaAfter: area,
    rounds,
    lastChangeShare,
    settled: lastChangeShare <= settledShare,
  }
}

/** Moves every point by a factor of the way to the mean of its neighbours, from one array into another. */
const step = (
  from: Float64Array,
  to: Float64Array,
  { starts, points }: PointNeighbours,
  factor: number,
): void => {
  for (let p = 0; 3 * p < from.length; p++) {
    const first = starts[p]!
    const end = starts[p + 1]!
    let x = 0
    let y = 0
    let z = 0
    for (let k = first; k < end; k++) {
      const q = 3 * points[k]!
      x += from[q]!
      y += from[q + 1]!
      z += from[q + 2]!
    }
    const share = end > first ? factor / (end - first) : 0
    const kept = end > first ? 1 - factor : 1
    to[3 * p] = kept * from[3 * p]! + share * x
    to[3 * p + 1] = kept * from[3 * p + 1]! + share * y
    to[3 * p + 2] = kept * from[3 * p + 2]! + share * z
  }
}
