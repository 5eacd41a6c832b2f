/** Last look at what a reader made: places that are numbers, points that exist, triangles at all. */
import type { TriangleMesh } from '#core/geometry'
import { MeshFault } from './mesh-fault.ts'
import { farthest } from './mesh-limits.ts'

export function checkMesh({ positions, triangles }: TriangleMesh): void {
  const points = positions.length / 3
  if (triangles.length === 0)
    throw new MeshFault(points > 0 ? 'intake.meshPointsOnly' : 'intake.meshNothing', {})
  for (let i = 0; i < triangles.length; i++)
    if (triangles[i]! >= points) throw new MeshFault('intake.meshIndex', { found: triangles[i]!, points })
  for (let i = 0; i < positions.length; i++)
    if (!(Math.abs(positions[i]!) <= farthest)) throw oddPlace(positions[i]!)
}

/** Why a coordinate is none that a scan has. */
export function oddPlace(found: number): MeshFault {
  if (Number.isFinite(found))
    return new MeshFault('intake.meshTooFar', { found: String(found), most: farthest })
  return new MeshFault('intake.meshNotFinite', { found: String(found) })
}
