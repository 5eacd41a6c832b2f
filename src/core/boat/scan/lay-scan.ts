/** How a scan lies in its file, and how it is laid so that a person can set marks on it: bow forward, keel down. */

import {
  inOrder,
  meshBox,
  movedMesh,
  moving,
  type Point3,
  pointNormals,
  principalAxes,
  type Similarity,
  type SymmetryPlane,
  scaling,
  type TriangleMesh,
} from '#core/geometry'
import type { PreparedScan } from './prepare-scan.ts'
import type { ScanSides } from './scan-section.ts'

export type Laying = {
  /** Metres in a unit of the file. */
  readonly unitM: number
  /** Which axis of the file points up, where nothing else tells. */
  readonly up: 'y' | 'z'
  /** Turned by a person: bow and stern changed over; upside down; quarter turns about the long axis. */
  readonly endForEnd: boolean
  readonly quarters: number
  readonly sides: ScanSides
}

/**
 * Symmetric enough to tell which way the boat lies across: share of the surface with a match, and how far the sides
 * may differ as a share of the length; assumed. One side of a hull is nearly its own mirror image about its bilge.
 */
const [leastMatched, mostDeviation] = [0.5, 0.004]

/** Whether a scan has two sides that are mirror images. */
export const isTwin = (symmetry: SymmetryPlane | undefined, size: number): symmetry is SymmetryPlane =>
  symmetry !== undefined &&
  symmetry.matchedShare >= leastMatched &&
  symmetry.rmsDeviation <= mostDeviation * size

/**
 * From the file's axes to a scan that lies along x with z up, in metres, its aftmost point at x = 0 and its keel at
 * z = 0. The long axis and the plane of symmetry tell how it lies; the narrower end is taken for the bow, and the
 * wider side for the top; a person turns it where that is wrong. Undefined without any area.
 */
export const layScan = ({ mesh, symmetry, size }: PreparedScan, laying: Laying): Similarity | undefined => {
  const { areas } = pointNormals(mesh)
  const spread = principalAxes(mesh.positions, areas)
  if (spread === undefined) return undefined
  const twin = laying.sides === 'both' && isTwin(symmetry, size)
  const across = twin
    ? symmetry.plane.normal
    : cross(laying.up === 'y' ? { x: 0, y: 1, z: 0 } : { x: 0, y: 0, z: 1 }, spread.axes[0])
  const y = unit(across)
  const x = unit(minus(spread.axes[0], y))
  const first = placed(mesh, turnTo(x, y))
  const [bowAft, topDown] = likely(movedMesh(mesh, first))
  const roll = (twin && topDown ? 2 : 0) + laying.quarters
  const turned = inOrder(first, inOrder(ends(bowAft !== laying.endForEnd), rolls(((roll % 4) + 4) % 4)))
  return placed(mesh, inOrder(turned, scaling(laying.unitM)))
}

type Nine = Similarity['turn']

const still = { scale: 1, move: { x: 0, y: 0, z: 0 } }
const turnOf = (turn: Nine): Similarity => ({ ...still, turn })

const turnTo = (x: Point3, y: Point3): Similarity => {
  const z = cross(x, y)
  return turnOf([x.x, x.y, x.z, y.x, y.y, y.z, z.x, z.y, z.z])
}

const ends = (turn: boolean): Similarity =>
  turnOf(turn ? [-1, 0, 0, 0, -1, 0, 0, 0, 1] : [1, 0, 0, 0, 1, 0, 0, 0, 1])

/** Quarter turns about x. */
const rolls = (count: number): Similarity => {
  const [cos, sin] = [[1, 0, -1, 0][count]!, [0, 1, 0, -1][count]!]
  return turnOf([1, 0, 0, 0, cos, -sin, 0, sin, cos])
}

/** Moved so that the box begins at x = 0 and z = 0, and has y = 0 in its middle. */
const placed = (mesh: TriangleMesh, turn: Similarity): Similarity => {
  const { least, most } = meshBox(movedMesh(mesh, turn))!
  return inOrder(turn, moving({ x: -least.x, y: -(least.y + most.y) / 2, z: -least.z }))
}

/** Whether the bow lies aft, and the top down: how far the scan spreads across at its ends, low and high. */
const likely = ({ positions }: TriangleMesh): readonly [bowAft: boolean, topDown: boolean] => {
  const { most } = meshBox({ positions, triangles: new Uint32Array(0) })!
  const sums = { aft: [0, 0, 0], fore: [0, 0, 0], low: [0, 0, 0], high: [0, 0, 0] }
  const count = (list: number[], y: number): void => {
    list[0]! += 1
    list[1]! += y
    list[2]! += y * y
  }
  for (let p = 0; p < positions.length; p += 3) {
    const [x, y, z] = [positions[p]! / most.x, positions[p + 1]!, positions[p + 2]! / most.z]
    if (x < 0.1) count(sums.aft, y)
    if (x > 0.9) count(sums.fore, y)
    if (z < 0.3) count(sums.low, y)
    if (z > 0.7) count(sums.high, y)
  }
  const spread = ([all, sum, squares]: readonly number[]): number =>
    all! > 0 ? squares! / all! - (sum! / all!) ** 2 : 0
  return [spread(sums.aft) < spread(sums.fore), spread(sums.low) > spread(sums.high)]
}

const cross = (a: Point3, b: Point3): Point3 => ({
  x: a.y * b.z - a.z * b.y,
  y: a.z * b.x - a.x * b.z,
  z: a.x * b.y - a.y * b.x,
})

const unit = ({ x, y, z }: Point3): Point3 => {
  const length = Math.hypot(x, y, z)
  return { x: x / length, y: y / length, z: z / length }
}

const minus = (a: Point3, along: Point3): Point3 => {
  const share = a.x * along.x + a.y * along.y + a.z * along.z
  return { x: a.x - share * along.x, y: a.y - share * along.y, z: a.z - share * along.z }
}
