/** A repaired scan made ready to be worked on: noise and its area taken out, the plane of symmetry found. Unit of the file. */

import {
  meshBox,
  pointCount,
  type RepairedMesh,
  type SymmetryPlane,
  smoothMesh,
  symmetryPlane,
  type TriangleMesh,
  triangleCount,
  withoutUnused,
} from '#core/geometry'

export type PreparedScan = {
  readonly mesh: TriangleMesh
  readonly triangles: number
  /** Share of the area that smoothing took off. */
  readonly takenOffShare: number
  /** Whether the area settled, and by how much of it it moved last. */
  readonly settled: boolean
  readonly lastChangeShare: number
  /** Parts too small to be of the hull that were left out. */
  readonly crumbs: number
  readonly symmetry: SymmetryPlane | undefined
  /** The longest side of its box. */
  readonly size: number
}

/** A part with less than this share of the area of the largest one is a crumb; assumed. */
const crumbShare = 0.005

/** Undefined when it was not to go on. */
export const prepareScan = (
  repaired: RepairedMesh,
  goesOn: (rounds: number) => boolean,
): PreparedScan | undefined => {
  const smoothed = smoothMesh(repaired.mesh, { across: repaired.across, goesOn })
  if (smoothed === undefined) return undefined
  const { mesh, crumbs } = withoutCrumbs(smoothed.mesh, repaired)
  const { areaBefore, areaAfter, settled, lastChangeShare } = smoothed
  const symmetry = symmetryPlane(smoothed.mesh, repaired.across)
  const box = meshBox(mesh)
  const sides = box ? (['x', 'y', 'z'] as const).map((axis) => box.most[axis] - box.least[axis]) : [0]
  return {
    mesh,
    triangles: triangleCount(mesh),
    takenOffShare: areaBefore > 0 ? 1 - areaAfter / areaBefore : 0,
    settled,
    lastChangeShare,
    crumbs,
    symmetry,
    size: Math.max(...sides),
  }
}

/** The parts that may be of the hull. */
export const withoutCrumbs = (
  mesh: TriangleMesh,
  { parts, partOf }: Pick<RepairedMesh, 'parts' | 'partOf'>,
): { readonly mesh: TriangleMesh; readonly crumbs: number } => {
  const most = Math.max(0, ...parts.map(({ area }) => area))
  const keeps = parts.map(({ area }) => area >= crumbShare * most)
  const crumbs = keeps.filter((kept) => !kept).length
  if (crumbs === 0) return { mesh, crumbs }
  const triangles = mesh.triangles.filter((_, corner) => keeps[partOf[Math.floor(corner / 3)]!])
  return { mesh: withoutUnused({ positions: mesh.positions, triangles }), crumbs }
}

/** About how long the side of a triangle is. */
export const grainOf = (mesh: TriangleMesh, area: number): number =>
  Math.sqrt((2 * area) / Math.max(triangleCount(mesh), pointCount(mesh), 1))
