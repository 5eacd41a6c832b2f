/** The air under a shelter, hour by hour, from the weather outside and two or three figures of the shelter. */
import { saturationVapourPressure, vapourGasConstant } from './dew-point.ts'
import { lagged } from './lagged.ts'
import type { HourlyColumn, HourlySeries } from './series.ts'
import { kelvin } from './skin/radiation.ts'

/** What tells one shelter's air from another's: assumed, or fitted from a logger that hung in it. */
export type ShelterAir = {
  /** Time constant with which the air inside follows, h, 0 or more. */
  readonly airLagHours: number
  /** How much warmer the sun makes the air inside in the end, K for each W/m² of sun and sky on level ground. */
  readonly sunKPerWm2: number
  /** Water in a cubic metre of the air inside above what the air outside brings, kg/m³; under 0 where it is dried. */
  readonly waterKgM3: number
}

/**
 * What the air inside runs after: the air outside, raised by the sun on roof and walls.
 * @param from.sunWm2 sun and sky on level ground, mean over each hour; left out where nobody knows the sun.
 * @returns °C at the start of each hour; light there is the mean of the hours before and after.
 * Equation: air + s G, a sol-air temperature for the shelter as a whole.
 */
export function drivenC(
  { airC }: Pick<HourlySeries, 'airC'>,
  from: { readonly sunWm2: HourlyColumn | undefined; readonly sunKPerWm2: number },
): HourlyColumn {
  const { sunWm2, sunKPerWm2 } = from
  if (sunWm2 === undefined || sunKPerWm2 === 0) return airC
  return Float64Array.from(airC, (value, hour) => value + sunKPerWm2 * lightAtStart(sunWm2, hour))
}

/** Light at the start of an hour, W/m². */
export const lightAtStart = (sunWm2: HourlyColumn, hour: number): number =>
  ((sunWm2[hour - 1] ?? sunWm2[hour]!) + sunWm2[hour]!) / 2

/**
 * Temperature and humidity inside.
 * @param under.series weather outside. @param under.sunWm2 as in `drivenC`.
 * @returns °C, and a share of at most 1; NaN where air or humidity outside are unknown.
 * Equation: first-order lag after `drivenC`; vapour pressure outside + w 461.5 T, w the water added, never under 0.
 */
export function airInside(under: {
  readonly series: HourlySeries
  readonly sunWm2: HourlyColumn | undefined
  readonly air: ShelterAir
}): { readonly airC: Float64Array; readonly humidityShare: Float64Array } {
  const { series, sunWm2, air } = under
  const { airLagHours, sunKPerWm2, waterKgM3 } = air
  const airC = lagged({ column: drivenC(series, { sunWm2, sunKPerWm2 }), lagHours: airLagHours })
  // Math.min and Math.max keep NaN, so unknown stays unknown.
  const humidityShare = airC.map((insideC, hour) => {
    const pressurePa = vapourPa(series.airC[hour]!, series.humidityShare[hour]!) + addedPa(waterKgM3, insideC)
    return Math.min(1, Math.max(0, pressurePa) / saturationVapourPressure(insideC))
  })
  return { airC, humidityShare }
}

/** Pressure of the vapour in moist air, Pa. */
export const vapourPa = (airC: number, humidityShare: number): number =>
  humidityShare * saturationVapourPressure(airC)

/** Pressure, Pa, that water in a cubic metre of air adds; kg/m³ at °C. Ideal gas. */
export const addedPa = (waterKgM3: number, airC: number): number =>
  waterKgM3 * vapourGasConstant * (airC + kelvin)

/** Water, kg/m³, of a vapour pressure, Pa, at °C. */
export const waterOf = (pressurePa: number, airC: number): number =>
  pressurePa / (vapourGasConstant * (airC + kelvin))
