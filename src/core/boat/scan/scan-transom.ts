/** The transom of a scan: found by how it faces, taken off before sections are cut, its rake told. Boat frame, metres. */

import { type TriangleMesh, withoutUnused } from '#core/geometry'

export type ScanTransom = {
  /** The scan without it. */
  readonly mesh: TriangleMesh
  /** How far forward its foremost parts reach, m; 0 without one. */
  readonly reach: number
  /** Angle to the vertical, rad, positive when its top is the aftmost; 0 without one. */
  readonly rake: number
}

/** It lies in this share of the length, faces aft more than this (cosine), and has this share of the whole area; assumed. */
const [aftShare, leastCosine, leastShare] = [0.15, 0.72, 0.012]

export const scanTransom = (mesh: TriangleMesh, length: number): ScanTransom => {
  const none = { mesh, reach: 0, rake: 0 }
  const { aft, whole } = aftFaces(mesh, aftShare * length)
  const area = aft.reduce((sum, face) => sum + face.area, 0)
  if (!(area > leastShare * whole)) return none
  const sum = (key: 'x' | 'z'): number => aft.reduce((all, face) => all + face.area * face[key], 0)
  // The top lies aftmost when the face looks down a little.
  const rake = Math.atan2(-sum('z'), -sum('x'))
  const gone = new Set(aft.map(({ triangle }) => triangle))
  const kept = mesh.triangles.filter((_, corner) => !gone.has(Math.floor(corner / 3)))
  const reaches = aft.map(({ reach }) => reach).sort((a, b) => a - b)
  return {
    mesh: withoutUnused({ positions: mesh.positions, triangles: kept }),
    reach: reaches[Math.floor(0.98 * (reaches.length - 1))]!,
    rake,
  }
}

type Face = {
  readonly triangle: number
  readonly area: number
  readonly x: number
  readonly z: number
  readonly reach: number
}

/** Faces that look aft, their normals turned to point aft however the scan faces. */
const aftFaces = ({ positions: p, triangles }: TriangleMesh, within: number) => {
  const aft: Face[] = []
  let whole = 0
  for (let t = 0; t < triangles.length; t += 3) {
    const [a, b, c] = [3 * triangles[t]!, 3 * triangles[t + 1]!, 3 * triangles[t + 2]!]
    const [ux, uy, uz] = [p[b]! - p[a]!, p[b + 1]! - p[a + 1]!, p[b + 2]! - p[a + 2]!]
    const [vx, vy, vz] = [p[c]! - p[a]!, p[c + 1]! - p[a + 1]!, p[c + 2]! - p[a + 2]!]
    const [nx, ny, nz] = [uy * vz - uz * vy, uz * vx - ux * vz, ux * vy - uy * vx]
    const doubled = Math.hypot(nx, ny, nz)
    whole += doubled / 2
    const reach = Math.max(p[a]!, p[b]!, p[c]!)
    if (reach > within || Math.abs(nx) < leastCosine * doubled) continue
    const sign = nx > 0 ? -1 : 1
    aft.push({
      triangle: t / 3,
      area: doubled / 2,
      x: (sign * nx) / doubled,
      z: (sign * nz) / doubled,
      reach,
    })
  }
  return { aft, whole }
}
