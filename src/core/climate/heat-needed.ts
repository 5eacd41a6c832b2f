/** How far air has to be warmed to be fit for a coat. */
import { dewPoint } from './dew-point.ts'

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
