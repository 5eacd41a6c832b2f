/** A shed or a tent as heat and water see it: how large, how well it keeps heat, how often its air is changed. */

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

/** m³. */
export const volumeOf = ({ lengthM, widthM, heightM }: Room): number => lengthM * widthM * heightM

/**
 * Power that leaves a room for each kelvin that its air is over the air outside, in the steady state.
 * @returns W/K. Equation: U A + n V ρ c / 3600; A of walls and roof, the ground left out.
 * Source: heat loss by transmission and ventilation as in EN 12831, from memory.
 */
export function lossOf(room: Room): number {
  const { lengthM, widthM, heightM, lossWm2K, airChanges } = room
  const skinM2 = lengthM * widthM + 2 * heightM * (lengthM + widthM)
  return lossWm2K * skinM2 + (airChanges * volumeOf(room) * airHeatJm3K) / 3600
}

/** Power that holds the air of a room so far over the air outside, W; `riseK` in K. */
export const heatToHold = (room: Room, riseK: number): number => lossOf(room) * riseK
