/**
 * Sun and sky on a surface of any slope, from what falls on level ground. Both skies take the same figures; Hay and
 * Davies' adds the bright ring about the sun.
 */

export type LevelLight = {
  /** The sun alone on a surface that faces it, W/m². */
  readonly beamWm2: number
  /** The sky alone on a level surface, W/m². */
  readonly diffuseWm2: number
  /** Sun and sky on a level surface, W/m². */
  readonly globalWm2: number
  /** Sine of the sun's altitude, the cosine of its zenith angle. */
  readonly sunUp: number
}

export type Tilted = {
  /** Cosine of the angle between the surface's normal and the sun; under 0 in its own shade. */
  readonly cosIncidence: number
  /** Cosine of the surface's tilt: 1 faces the sky, -1 the ground. */
  readonly cosTilt: number
}

/** Share of the sky that a slope sees when nothing stands about it. Equation: (1 + cos β) / 2. */
export const skyView = (cosTilt: number): number => (1 + cosTilt) / 2

/** Share of the ground that a slope sees. Equation: (1 - cos β) / 2. */
export const groundView = (cosTilt: number): number => (1 - cosTilt) / 2

/** The sine under which the sun's height is not divided by: 1° up. */
export const leastSunUp = Math.sin(Math.PI / 180)

/** The sun itself on a slope, W/m². */
export function beamOn({ beamWm2 }: Pick<LevelLight, 'beamWm2'>, { cosIncidence }: Tilted): number {
  return beamWm2 * Math.max(0, cosIncidence)
}

/**
 * Light of an evenly bright sky on a slope, W/m².
 * Equation: D (1 + cos β) / 2. Source: B. Y. H. Liu and R. C. Jordan, Solar Energy 4 (1960) 1.
 */
export function isotropicSky({ diffuseWm2 }: Pick<LevelLight, 'diffuseWm2'>, { cosTilt }: Tilted): number {
  return diffuseWm2 * skyView(cosTilt)
}

/**
 * Light of a clear or cloudy sky on a slope: a share of it comes from about the sun and is treated like the beam, W/m².
 * @param light.extraterrestrialWm2 sunlight above the air, facing it.
 * Equation: D (A R + (1 - A) (1 + cos β) / 2), A = beam / extraterrestrial, R = max(0, cos θ) / max(cos z, sin 1°).
 * Source: J. E. Hay and J. A. Davies, Calculation of the solar radiation incident on an inclined surface, Proc. First
 * Canadian Solar Radiation Data Workshop, 1980, p. 59.
 */
export function hayDaviesSky(
  light: Omit<LevelLight, 'globalWm2'> & { readonly extraterrestrialWm2: number },
  slope: Tilted,
): number {
  const aboutSun = light.beamWm2 / light.extraterrestrialWm2
  const ring = Math.max(0, slope.cosIncidence) / Math.max(light.sunUp, leastSunUp)
  return light.diffuseWm2 * (aboutSun * ring + (1 - aboutSun) * skyView(slope.cosTilt))
}

/**
 * Light thrown back by the ground on a slope, W/m²: even, from open ground all about.
 * @param albedo share of the light that the ground throws back, 0..1. Equation: G ρ (1 - cos β) / 2.
 */
export function groundLight(
  { globalWm2, albedo }: { readonly globalWm2: number; readonly albedo: number },
  { cosTilt }: Pick<Tilted, 'cosTilt'>,
): number {
  return globalWm2 * albedo * groundView(cosTilt)
}
