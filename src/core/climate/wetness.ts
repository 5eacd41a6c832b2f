/** Whether a surface is still wet from dew or rain: after it was wet it must first dry. */
import type { PlaceLimits } from './paint-limits.ts'
import { limitRounding } from './paint-limits.ts'
import type { HourlySeries } from './series.ts'
import { valueAt } from './series.ts'

export type Wetness = {
  /** False when nobody knows whether it was wet: at the start of a series and after hours without figures. */
  readonly certain: boolean
  /** Whole hours it has been drying so far. */
  readonly dryHours: number
}

/**
 * Wetness of a surface at the start of each hour.
 * @param at.series rain, which wets a surface open to the sky. @param at.marginK surface over dew point, K, NaN
 * where unknown. @param at.limits how long and at which margin it dries.
 * @returns one entry an hour, undefined where it is dry. A surface at or under the dew point is wet; it is dry
 * again after `dryHours` whole hours in a row with at least `dryMarginK` and no rain. With `dryHours` 0 nothing
 * is ever wet.
 * Source: common practice, assumed: after a night at or under the dew point, 60 minutes at dew point + 3 K.
 */
export function wetness(at: {
  readonly series: HourlySeries
  readonly marginK: Float64Array
  readonly limits: PlaceLimits
}): readonly (Wetness | undefined)[] {
  const { dryHours } = at.limits
  const wet: (Wetness | undefined)[] = []
  let state: Wetness | undefined = dryHours > 0 ? perhapsWet : undefined
  for (let hour = 0; hour < at.series.hours; hour++) {
    wet.push(state)
    if (dryHours > 0) state = after(at, { hour, before: state })
  }
  return wet
}

const soaked: Wetness = { certain: true, dryHours: 0 }
const perhapsWet: Wetness = { certain: false, dryHours: 0 }

/** State at the end of an hour. */
function after(
  at: { readonly series: HourlySeries; readonly marginK: Float64Array; readonly limits: PlaceLimits },
  step: { readonly hour: number; readonly before: Wetness | undefined },
): Wetness | undefined {
  const { series, marginK, limits } = at
  const { hour, before } = step
  const margin = marginK[hour]!
  const rained = limits.openToSky && valueAt(series.rainMm, hour) > 0
  if (rained || margin <= limitRounding) return soaked
  if (Number.isNaN(margin)) return before?.certain ? soaked : perhapsWet
  if (before === undefined) return undefined
  if (margin < limits.dryMarginK - limitRounding) return before.certain ? soaked : perhapsWet
  const dryHours = before.dryHours + 1
  return dryHours >= limits.dryHours ? undefined : { certain: before.certain, dryHours }
}
