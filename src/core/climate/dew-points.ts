/** Dew point hour by hour. */
import { dewPoint } from './dew-point.ts'
import type { HourlySeries } from './series.ts'

/**
 * Dew point of every hour of a series.
 * @returns °C, NaN where air or humidity is unknown. See `dewPoint` for equation and source.
 */
export function dewPoints({ hours, airC, humidityShare }: HourlySeries): Float64Array {
  const dewC = new Float64Array(hours).fill(Number.NaN)
  for (let hour = 0; hour < hours; hour++) {
    const air = { airC: airC[hour]!, humidityShare: humidityShare[hour]! }
    // Asked here because `dewPoint` takes humidity that is not a number for perfectly dry air.
    if (!Number.isNaN(air.airC + air.humidityShare)) dewC[hour] = dewPoint(air)
  }
  return dewC
}
