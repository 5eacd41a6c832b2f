/** A repaired scan made ready to be worked on: noise and its area taken out, the plane of symmetry found. Unit of the file. */

import {
  meshArea,
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

/**
 * Triangles longer than this share of the boat are left as they are: smoothing would round off the ends of the boat, and
 * noise adds hardly anything to the area of large ones; chosen on the parabolic hull.
 */
const coarseShare = 0.006

/** Undefined when it was not to go on. */
export const prepareScan = (
  repaired: RepairedMesh,
  goesOn: (rounds: number) => boolean,
): PreparedScan | undefined => {
  const smoothed = smoothedUnlessCoarse(repaired, goesOn)
  if (smoothed === undefined) return undefined
  const { mesh, crumbs } = withoutCrumbs(smoothed.mesh, repaired)
  return {
    ...smoothed,
    mesh,
    triangles: triangleCount(mesh),
    crumbs,
    symmetry: symmetryPlane(smoothed.mesh),
    size: sizeOf(mesh),
  }
}

type Smoothed = Pick<PreparedScan, 'mesh' | 'takenOffShare' | 'settled' | 'lastChangeShare'>

const smoothedUnlessCoarse = (
  { mesh, across }: RepairedMesh,
  goesOn: (rounds: number) => boolean,
): Smoothed | undefined => {
  if (grainOf(mesh, meshArea(mesh)) > coarseShare * sizeOf(mesh))
    return { mesh, takenOffShare: 0, settled: true, lastChangeShare: 0 }
  const smoothed = smoothMesh(mesh, { across, goesOn })
  if (smoothed === undefined) return undefined
  const { areaBefore, areaAfter, settled, lastChangeShare } = smoothed
  const takenOffShare = areaBefore > 0 ? 1 - areaAfter / areaBefore : 0
  return { mesh: smoothed.mesh, takenOffShare, settled, lastChangeShare }
}

const sizeOf = (mesh: TriangleMesh): number => {
  const box = meshBox(mesh)
  return box ? Math.max(...(['x', 'y', 'z'] as const).map((axis) => box.most[axis] - box.least[axis])) : 0
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
