/** Parts the light on level ground into sun and sky when only their sum is known. */

/** Under this sine of the sun's altitude (3.7°) what falls on level ground says nothing about the beam. */
const leastSunUp = 0.065

export type Parted = {
  /** The sun alone on a surface that faces it, W/m². */
  readonly beamWm2: number
  /** The sky alone on a level surface, W/m². */
  readonly diffuseWm2: number
}

/**
 * Share of the light on level ground that comes from the sky.
 * @param clearness light on level ground over light above the air on a level surface, 0..1; more counts as clear.
 * @returns 1 under a black sky, 0.165 from a clearness of 0.8 up.
 * Equation: 1 - 0.09 k to 0.22; 0.9511 - 0.1604 k + 4.388 k² - 16.638 k³ + 12.336 k⁴ to 0.80; 0.165 above.
 * Source: D. G. Erbs, S. A. Klein and J. A. Duffie, Estimation of the diffuse radiation fraction for hourly, daily and
 * monthly-average global radiation, Solar Energy 28 (1982) 293, from memory.
 */
export function erbsDiffuseShare(clearness: number): number {
  const k = clearness
  if (k <= 0.22) return 1 - 0.09 * k
  if (k <= 0.8) return 0.9511 - 0.1604 * k + 4.388 * k ** 2 - 16.638 * k ** 3 + 12.336 * k ** 4
  return 0.165
}

/**
 * Sun and sky from their sum on level ground.
 * @param of.globalWm2 W/m². @param of.sunUp sine of the sun's altitude. @param of.extraterrestrialWm2 sunlight above the
 * air, facing it, W/m².
 * @returns with the sun under 3.7° all of it counts as sky: a beam worked from so little would be noise. The beam is never
 * over that above the air; the rest is sky.
 */
export function partLight(of: {
  readonly globalWm2: number
  readonly sunUp: number
  readonly extraterrestrialWm2: number
}): Parted {
  const { globalWm2, sunUp, extraterrestrialWm2 } = of
  if (sunUp < leastSunUp) return { beamWm2: 0, diffuseWm2: globalWm2 }
  const share = erbsDiffuseShare(globalWm2 / (extraterrestrialWm2 * sunUp))
  const beamWm2 = Math.min(extraterrestrialWm2, (globalWm2 * (1 - share)) / sunUp)
  return { beamWm2, diffuseWm2: globalWm2 - beamWm2 * sunUp }
}

/** The beam when both the light on level ground and the sky's share of it are known, W/m²; never over that above the air. */
export function beamFrom(of: {
  readonly globalWm2: number
  readonly diffuseWm2: number
  readonly sunUp: number
  readonly extraterrestrialWm2: number
}): number {
  if (of.sunUp < leastSunUp) return 0
  return Math.min(of.extraterrestrialWm2, Math.max(0, (of.globalWm2 - of.diffuseWm2) / of.sunUp))
}
