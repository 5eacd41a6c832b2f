/** A round hole ground to a taper and filled with plies that grow: discs, areas, volume, bond. */
import { type Ply, resinPerArea } from './ply-thickness.ts'

export type PatchDisc = {
  /** m. */
  readonly diameter: number
  /** m². */
  readonly area: number
}

export type TaperedPatch = {
  /** Width of the ground taper on each side of the hole, m. */
  readonly bevelWidth: number
  /** Where the taper runs out, m across. */
  readonly outerDiameter: number
  /** By how much each disc is wider than the one under it, m. */
  readonly step: number
  /** Slope of the taper, rad from the surface. */
  readonly angle: number
  /** Discs to cut, smallest first, each as wide as the top of its ply; one a ply. */
  readonly discs: readonly PatchDisc[]
  /** Cloth in the discs, m². */
  readonly clothArea: number
  /** Discs as wide as the middle of their ply: what fits without trimming, m². */
  readonly middleArea: number
  /** Room between the bottom of the hole and the surface, m³. */
  readonly volume: number
  /** The ground cone the patch bonds to, m²; the bottom of the hole is not in it. */
  readonly bondArea: number
}

/**
 * Tapered patch for a round hole.
 * @param patch.hole diameter after trimming, m; 0 for a crack ground out to a point. @param patch.thickness depth
 * of the taper, m. @param patch.ratio run to rise of the taper, 12 for 12:1. @param patch.plies equal plies.
 * @returns sizes in m, m² and m³, rad.
 * Equations: bevel k t; D = d + 2 k t; step 2 k t / n; volume π t (d² + d D + D²) / 12; bond
 * π/4 (D² - d²) √(1 + 1/k²); angle atan(1/k).
 * Source: scarf ratio (Ro - Ri)/t of composite repair texts; tests of 1:6, 1:12 and 1:20 (2019) found 1:12 best.
 */
export function taperedPatch(patch: {
  readonly hole: number
  readonly thickness: number
  readonly ratio: number
  readonly plies: number
}): TaperedPatch {
  const { hole, thickness, ratio, plies } = patch
  const bevelWidth = ratio * thickness
  const outerDiameter = hole + 2 * bevelWidth
  const step = (2 * bevelWidth) / plies
  const tops = Array.from({ length: plies }, (_, index) => disc(hole + (index + 1) * step))
  const middles = tops.map((top) => disc(top.diameter - step / 2))
  const squares = hole ** 2 + hole * outerDiameter + outerDiameter ** 2
  return {
    bevelWidth,
    outerDiameter,
    step,
    angle: Math.atan(1 / ratio),
    discs: tops,
    clothArea: areaOf(tops),
    middleArea: areaOf(middles),
    volume: (Math.PI * thickness * squares) / 12,
    bondArea: (disc(outerDiameter).area - disc(hole).area) * Math.hypot(1, 1 / ratio),
  }
}

function disc(diameter: number): PatchDisc {
  return { diameter, area: (Math.PI / 4) * diameter ** 2 }
}

function areaOf(discs: readonly PatchDisc[]): number {
  return discs.reduce((sum, { area }) => sum + area, 0)
}

export type PatchMasses = {
  /** kg of dry glass in the discs as cut. */
  readonly glassMass: number
  /** kg of resin that wets them out, without what stays in the pot. */
  readonly resinMass: number
}

/** Glass and resin of a patch laid from one cloth; kg, no waste. */
export function patchMasses(patch: TaperedPatch, ply: Ply): PatchMasses {
  return { glassMass: patch.clothArea * ply.areicMass, resinMass: patch.clothArea * resinPerArea(ply) }
}
