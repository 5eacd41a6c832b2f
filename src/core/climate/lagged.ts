/** A column that follows another with a first-order lag. */
import type { HourlyColumn } from './series.ts'

/**
 * First-order lag, worked hour by hour with backward steps so that it is stable for every lag.
 * @param from.column values by the hour, NaN where unknown. @param from.lagHours time constant, h, 0 or more;
 * 0 gives the column back.
 * @returns same length; unknown hours stay unknown, and the first known hour (also after unknown ones) starts
 * at the value itself.
 * Equation: y(i) = y(i-1) + (x(i) - y(i-1)) / (1 + lag), lag in hours: backward Euler on dy/dt = (x - y) / lag.
 */
export function lagged(from: { readonly column: HourlyColumn; readonly lagHours: number }): Float64Array {
  if (from.lagHours === 0) return Float64Array.from(from.column)
  let last = Number.NaN
  return Float64Array.from(from.column, (value) => {
    last = Number.isNaN(last) ? value : last + (value - last) / (1 + from.lagHours)
    return last
  })
}
