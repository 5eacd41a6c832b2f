/** Heat that makes air fit for a coat: how far it has to be warmed, and what that takes in a tent or a shed. */
import { dewPoint } from './dew-point.ts'

/** Heat of a cubic metre of air, J/(m³ K): 1.2 kg/m³ and 1005 J/(kg K), near 20 °C. */
const airHeatJm3K = 1206

export type Room = {
  readonly lengthM: number
  readonly widthM: number
  readonly heightM: number
  /** Heat through its walls and roof, W/(m² K). */
  readonly lossWm2K: number
  /** Times an hour that its air is changed. */
  readonly airChanges: number
}

/**
 * Power that holds the air of a room so far over the air outside, in the steady state.
 * @param riseK K. @returns W. Equation: (U A + n V ρ c / 3600) ΔT; A of walls and roof, the ground left out.
 * Source: heat loss by transmission and ventilation as in EN 12831, from memory.
 */
export function heatToHold(room: Room, riseK: number): number {
  const { lengthM, widthM, heightM, lossWm2K, airChanges } = room
  const skinM2 = lengthM * widthM + 2 * heightM * (lengthM + widthM)
  const volumeM3 = lengthM * widthM * heightM
  return (lossWm2K * skinM2 + (airChanges * volumeM3 * airHeatJm3K) / 3600) * riseK
}

export type AirWanted = {
  readonly airC: number
  readonly humidityShare: number
  /** Coldest air and highest humidity to paint in; left out where only dew counts any more. */
  readonly airLeastC?: number
  readonly humidityMost?: number
  readonly dewMarginK: number
}

/**
 * How far air has to be warmed so that it, and a skin as warm as it, keeps the limits. It holds as much water as before:
 * electric or vented heat adds none.
 * @returns K, 0 where it keeps them already.
 */
export function riseNeeded(wanted: AirWanted): number {
  const { airC, humidityShare, airLeastC, humidityMost, dewMarginK } = wanted
  const dewC = dewPoint({ airC, humidityShare })
  const warm = [
    dewC + dewMarginK,
    ...(airLeastC === undefined ? [] : [airLeastC]),
    // The temperature at which this water is no more than the highest share.
    ...(humidityMost === undefined ? [] : [dewPoint({ airC: dewC, humidityShare: 1 / humidityMost })]),
  ]
  return Math.max(0, ...warm.map((leastC) => leastC - airC))
}
