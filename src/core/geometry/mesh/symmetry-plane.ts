/**
 * The plane in which a surface is most nearly its own mirror image. Axes and unit of the mesh.
 */

import type { Point3 } from '../points.ts'
import { type MirrorSurface, mirrorFit, mirrorSurface } from './mirror-fit.ts'
import { heightOver, type Plane, planeThrough } from './plane.ts'
import { type PrincipalAxes, principalAxes } from './principal-axes.ts'
import type { TriangleMesh } from './triangle-mesh.ts'

export type SymmetryPlane = {
  /** Its normal points to the side of the axis, x, y or z, that it is nearest to. */
  readonly plane: Plane
  /** Root mean square of the distances between the surface and its mirror image, where they match. */
  readonly rmsDeviation: number
  /** How much of the surface, by area, has a match on the other side. */
  readonly matchedShare: number
}

/** Planes tried about the longest axis, evenly turned, and how many of the best are looked at closely. */
const [turns, best] = [12, 3]

/**
 * Finds the plane of a smoothed mesh that is longer than it is wide: among planes through its longest axis the best
 * ones are fitted, and the one with the least deviation for what it matches is taken. Undefined without any area.
 */
export const symmetryPlane = (mesh: TriangleMesh): SymmetryPlane | undefined => {
  const surface = mirrorSurface(mesh)
  const spread = principalAxes(mesh.positions, surface.areas)
  if (spread === undefined) return undefined
  const fits = candidates(spread)
    .map((plane) => mirrorFit(surface, plane, { steps: 0, samples: 400 }))
    .sort((a, b) => costOf(a, surface) - costOf(b, surface))
    .slice(0, best)
    .map(({ plane }) => mirrorFit(surface, plane, { steps: 30, samples: 1000 }))
    .sort((a, b) => costOf(a, surface) - costOf(b, surface))
  const { plane, rms, matchedShare } = mirrorFit(surface, fits[0]!.plane, { steps: 30, samples: 8000 })
  return { plane: toPositive(plane), rmsDeviation: rms, matchedShare }
}

/** What little matches well is no symmetry: deviation counts with what is matched, and with the mesh's own grain. */
const costOf = (
  fit: { readonly rms: number; readonly matchedShare: number },
  { grain }: MirrorSurface,
): number => (fit.rms + 1e-3 * grain) / Math.max(fit.matchedShare, 1e-6) ** 2

const candidates = ({ centre, axes: [, second, third] }: PrincipalAxes): readonly Plane[] =>
  Array.from({ length: turns }, (_, i) => {
    const angle = (i * Math.PI) / turns
    const [cos, sin] = [Math.cos(angle), Math.sin(angle)]
    const along = (key: keyof Point3): number => cos * second[key] + sin * third[key]
    return planeThrough(centre, { x: along('x'), y: along('y'), z: along('z') })
  })

const toPositive = (plane: Plane): Plane => {
  const { x, y, z } = plane.normal
  const most = [x, y, z].reduce((a, b) => (Math.abs(b) > Math.abs(a) ? b : a))
  if (most >= 0) return plane
  return { normal: { x: -x, y: -y, z: -z }, offset: heightOver(plane, { x: 0, y: 0, z: 0 }) }
}
