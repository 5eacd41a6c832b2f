/** Temperature of a painted skin hour by hour, from sun, sky, wind and what it is made of. */
import type { HourlyColumn, HourlySeries } from '../series.ts'
import { valueAt } from '../series.ts'
import type { Film } from './film.ts'
import { filmAt } from './film.ts'
import { balanceK } from './heat-balance.ts'
import { kelvin, stefanBoltzmann } from './radiation.ts'
import type { SkinBuild } from './skin-build.ts'

export type SkinQuestion = {
  /** Air and wind at the skin: for a shelter, what `airUnder` gives. */
  readonly series: HourlySeries
  /** Light on the skin, mean over each hour, W/m²: what `lightOn` gives. */
  readonly lightWm2: HourlyColumn
  /** Heat from the sky on level ground at the start of each hour, W/m²: what `skyHeats` gives. */
  readonly skyHeatWm2: HourlyColumn
  /** Share of the skin's view that is open sky, 0..1; the rest is ground, roof and neighbours at the air's temperature. */
  readonly skyShare: number
  /** Share of light taken in, 0..1. */
  readonly absorptance: number
  /** Share of heat taken in and sent out, 0..1. */
  readonly emittance: number
  readonly film: Film
  readonly build: SkinBuild
  /** Temperature behind the skin at the start of each hour, °C. */
  readonly backC: HourlyColumn
}

const hourSeconds = 3600

/**
 * Temperature of the skin at the start of each hour, °C.
 *
 * Between two hours the steady temperature of `skinSteady` is taken to run straight from the one to the other; the
 * skin follows it with the lag of the heat it stores. So one balance is solved an hour, no step is too long, and a
 * skin that stores nothing has its steady temperature. Light at the start of an hour is the mean of the hours before
 * and after it.
 * @returns NaN where air, light, sky or back are unknown; the first known hour starts at its steady temperature.
 * Equation: T1 = S1 - (S1 - S0) (1 - e⁻ˣ) / x + (T0 - S0) e⁻ˣ, x = 3600 (h + u + 4 e σ T³) / C, the answer of
 * C dT/dt = k (S - T) to a ramp S0 to S1; k at the mean of T0 and S1.
 */
export function skinTemperature(question: SkinQuestion): Float64Array {
  const { series, lightWm2, skyHeatWm2, skyShare, absorptance, emittance, film, build, backC } = question
  const skinC = new Float64Array(series.hours)
  const radiating = emittance * stefanBoltzmann
  let steadyK = Number.NaN
  let skinK = Number.NaN
  let lightBefore = Number.NaN
  for (let hour = 0; hour < series.hours; hour++) {
    const airK = series.airC[hour]! + kelvin
    const lightHour = lightWm2[hour]!
    const light = Number.isNaN(lightBefore) ? lightHour : (lightBefore + lightHour) / 2
    lightBefore = lightHour
    const filmWm2K = filmAt(film, valueAt(series.windMps, hour))
    const linear = filmWm2K + build.backWm2K
    const square = airK * airK
    const around = stefanBoltzmann * square * square
    const gain =
      absorptance * light +
      emittance * (skyShare * skyHeatWm2[hour]! + (1 - skyShare) * around) +
      filmWm2K * airK +
      build.backWm2K * (backC[hour]! + kelvin)
    const before = steadyK
    steadyK = balanceK(radiating, linear, gain, Number.isNaN(before) ? airK : before)
    skinK = Number.isNaN(skinK)
      ? steadyK
      : followed(skinK, before, steadyK, { radiating, linear, storesJm2K: build.storesJm2K })
    skinC[hour] = skinK - kelvin
  }
  return skinC
}

/** The skin after an hour in which its steady temperature ran from `before` to `after`, K. */
function followed(
  skinK: number,
  before: number,
  after: number,
  heat: { readonly radiating: number; readonly linear: number; readonly storesJm2K: number },
): number {
  const mean = (skinK + after) / 2
  const x = (hourSeconds * (heat.linear + 4 * heat.radiating * mean ** 3)) / heat.storesJm2K
  // So light a skin has its steady temperature, and so has one that stores nothing.
  if (x > 700) return after
  const left = Math.exp(-x)
  return after - ((after - before) * (1 - left)) / x + (skinK - before) * left
}
