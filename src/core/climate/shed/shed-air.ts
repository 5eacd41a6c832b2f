/** Air in a shed, hour by hour, with a heater, doors that stand open and water that dries off its floor. */
import { saturationVapourPressure } from '../dew-point.ts'
import type { HourlyColumn, HourlySeries } from '../series.ts'
import { addedPa, drivenC, type ShelterAir, vapourPa } from '../shelter-air.ts'
import { lossOf, type Room, volumeOf } from './room.ts'

export type Heater = {
  /** Temperature that it holds at the start of each hour, °C; NaN where it is off. */
  readonly holdsC: HourlyColumn
  /** The most it gives, W; infinite where nobody knows. */
  readonly mostW: number
  /** Water from a flame without a flue, kg/J; 0 for dry heat. */
  readonly waterKgJ: number
}

export type Shed = {
  /** With its doors shut. */
  readonly room: Room
  /** Times an hour that its air is changed, by the hour. */
  readonly airChanges: HourlyColumn
  /** Water that dries off the floor, kg in each hour. */
  readonly floorKg: HourlyColumn
  readonly heater?: Heater
}

export type ShedAir = {
  /** °C at the start of each hour. */
  readonly airC: Float64Array
  /** At the start of each hour, at most 1. */
  readonly humidityShare: Float64Array
  /** What the heater gives, W. */
  readonly heatW: Float64Array
}

/**
 * Two balances, worked hour by hour with backward steps so that they are stable for every lag.
 *
 * Heat: what shed and boat store is the lag with doors shut times the loss with doors shut, so an open door shortens the
 * lag. A heater gives what holds its temperature, at most what it can; the sun alone may warm the air past it.
 * Water: vapour is blown out and in with the air; flame and floor add theirs. What is over saturation runs off.
 * @param of.series weather outside. @param of.sunWm2 and @param of.air as in `airInside`.
 * @returns NaN where air or humidity outside are unknown; the first known hour (also after unknown ones) has the heat of its
 * steady state and, but for what is added in it, the vapour outside.
 * Equations: S (T1 - T0) = H (D - T1) + P, S = lag H0, H the loss of the hour, D of `drivenC`;
 * e1 - e0 = n (e outside - e1) + 461.5 T1 g / V, g the water of the hour, n at least 0.
 */
export function shedAir(of: {
  readonly series: Pick<HourlySeries, 'hours' | 'airC' | 'humidityShare'>
  readonly sunWm2: HourlyColumn | undefined
  readonly air: ShelterAir
  readonly shed: Shed
}): ShedAir {
  const { series, air, shed } = of
  const { room, airChanges, floorKg, heater } = shed
  const driven = drivenC(series, { sunWm2: of.sunWm2, sunKPerWm2: air.sunKPerWm2 })
  const volumeM3 = volumeOf(room)
  const storesWhK = air.airLagHours * lossOf(room)
  const inside: ShedAir = {
    airC: new Float64Array(series.hours),
    humidityShare: new Float64Array(series.hours),
    heatW: new Float64Array(series.hours),
  }
  let lastC = Number.NaN
  let lastPa = Number.NaN
  for (let hour = 0; hour < series.hours; hour++) {
    const changes = airChanges[hour]!
    // Before the first hour nothing is stored.
    const stores = Number.isNaN(lastC) ? 0 : storesWhK
    const follows = lossOf({ ...room, airChanges: changes })
    const freeC = (stores * (stores === 0 ? 0 : lastC) + follows * driven[hour]!) / (stores + follows)
    const heatW = heater ? heatGiven(heater, { hour, freeC, forKelvinW: stores + follows }) : 0
    lastC = freeC + heatW / (stores + follows)
    const addedKgM3 = (floorKg[hour]! + heatW * 3600 * (heater?.waterKgJ ?? 0)) / volumeM3
    const outsidePa =
      vapourPa(series.airC[hour]!, series.humidityShare[hour]!) + addedPa(air.waterKgM3, lastC)
    const mostPa = saturationVapourPressure(lastC)
    const freshPa = Number.isNaN(lastPa) ? outsidePa : (lastPa + changes * outsidePa) / (1 + changes)
    lastPa = Math.min(mostPa, Math.max(0, freshPa + addedPa(addedKgM3, lastC) / (1 + changes)))
    inside.airC[hour] = lastC
    inside.humidityShare[hour] = lastPa / mostPa
    inside.heatW[hour] = heatW
  }
  return inside
}

/** W; 0 where it is off, or the air is warm enough without it. */
function heatGiven(
  { holdsC, mostW }: Heater,
  at: { readonly hour: number; readonly freeC: number; readonly forKelvinW: number },
): number {
  const shortK = holdsC[at.hour]! - at.freeC
  return shortK > 0 ? Math.min(mostW, shortK * at.forKelvinW) : 0
}
