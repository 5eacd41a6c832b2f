/** Limits by the hour, in columns that are worked once and looked up for many products. */
import type { FailingLimit } from './paint-limits.ts'

/** A limit by the hour; undefined where it does not fail. */
export type LimitColumn = readonly (FailingLimit | undefined)[]

/** From each hour on, the next at which something fails, or the length of the series, and how it fails. */
export type NextFailing = {
  readonly at: Int32Array
  /** Of an hour from which on it does fail; made when it is first asked for, and the same for all who ask. */
  readonly limit: (hour: number) => FailingLimit
}

export function column(hours: number, limitAt: (hour: number) => FailingLimit | undefined): LimitColumn {
  const limits = new Array<FailingLimit | undefined>(hours)
  for (let hour = 0; hour < hours; hour++) limits[hour] = limitAt(hour)
  return limits
}

export function nextFailing(
  hours: number,
  fails: {
    readonly holds: (at: number) => boolean
    readonly limit: (at: number, inHours: number) => FailingLimit
  },
): NextFailing {
  const at = new Int32Array(hours)
  let found = hours
  for (let hour = hours - 1; hour >= 0; hour--) {
    if (fails.holds(hour)) found = hour
    at[hour] = found
  }
  const made = new Array<FailingLimit | undefined>(hours)
  return { at, limit: (hour) => (made[hour] ??= fails.limit(at[hour]!, at[hour]! - hour)) }
}

/** A limit that fails in the hour itself. */
export const failed = ({ limit, effect, needed, had }: Omit<FailingLimit, 'inHours'>): FailingLimit => ({
  limit,
  effect,
  needed,
  had,
  inHours: 0,
})
