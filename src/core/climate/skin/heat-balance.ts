/** Temperature at which a painted skin takes in as much heat as it gives off. */
import { kelvin, stefanBoltzmann } from './radiation.ts'

export type SkinHeat = {
  /** Sun, sky and ground light on the skin, W/m². */
  readonly lightWm2: number
  /** Heat that sky, ground and roofs send onto it, W/m². */
  readonly heatWm2: number
  readonly airC: number
  /** W/(m² K) to the air before it; more than 0. */
  readonly filmWm2K: number
  /** W/(m² K) through the laminate to what is behind it; 0 when no heat passes. */
  readonly backWm2K: number
  /** Temperature behind, °C. */
  readonly backC: number
  /** Share of the light that the colour takes in, 0..1. */
  readonly absorptance: number
  /** Share of heat taken in and sent out, 0..1. */
  readonly emittance: number
}

/**
 * Skin temperature in steady weather, °C.
 * @returns NaN when any figure is.
 * Equation: a G + e L = e σ T⁴ + h (T - air) + u (T - back). Source: the balance of ASTM E1980-11 (2019), with the heat
 * through the laminate added. Latent heat of dew is left out, which errs to the cold and so to the wet side.
 */
export function skinSteady(of: SkinHeat): number {
  const air = of.airC + kelvin
  const gain =
    of.absorptance * of.lightWm2 +
    of.emittance * of.heatWm2 +
    of.filmWm2K * air +
    of.backWm2K * (of.backC + kelvin)
  return balanceK(of.emittance * stefanBoltzmann, of.filmWm2K + of.backWm2K, gain, air) - kelvin
}

/** Far more than are needed: from any start in the yard's range it is four or five. */
const mostSteps = 60

/**
 * Root of `radiating T⁴ + linear T = gain`, kelvin, by Newton's steps; numbers only, as a year of zones passes here.
 * The left side rises and bends upwards, so after one step every step comes from above and none goes past the root: it
 * converges from any positive start. Starts under 100 K begin there, or the first step might leave the numbers.
 */
export function balanceK(radiating: number, linear: number, gain: number, startK: number): number {
  let t = Math.max(100, startK)
  for (let step = 0; step < mostSteps; step++) {
    const cube = radiating * t * t * t
    const change = (cube * t + linear * t - gain) / (4 * cube + linear)
    t -= change
    if (change < 1e-9 && change > -1e-9) return t
  }
  return Number.isNaN(gain + linear) ? Number.NaN : t
}
