/** For every hour of a series at once, how long a clock that starts at its end takes: one pass, not one search each. */
import type { CureTable } from './cure-table.ts'
import { foundAt, hoursOf } from './hours-at.ts'

/**
 * Whole hours a clock of a least time takes from the end of each hour on, at the temperatures that follow.
 * @param clock.table made by `cureTable`. @param clock.airC °C by the hour; NaN counts as no progress.
 * @param clock.most whole hours after which it is not followed any further, also past the end of the series.
 * @returns for hour i the smallest n for which the shares of hours i + 1 to i + n sum to 1, at most `most`.
 * Source: the sum of shares as in `clockEnd`.
 */
export function hoursToRun(clock: {
  readonly table: CureTable
  readonly airC: ArrayLike<number>
  readonly most: number
}): readonly number[] {
  const { table, airC, most } = clock
  const done = new Float64Array(airC.length + 1)
  for (let hour = 0; hour < airC.length; hour++) {
    done[hour + 1] = done[hour]! + shareAt(table, airC[hour]!)
  }
  const hours = new Array<number>(airC.length)
  let end = 1
  for (let hour = 0; hour < airC.length; hour++) {
    end = Math.max(end, hour + 1)
    // Less than this short of full is full: sums of shares are not exact.
    while (end < airC.length && done[end]! - done[hour + 1]! < 1 - 1e-9) end++
    const full = done[end]! - done[hour + 1]! >= 1 - 1e-9
    hours[hour] = Math.min(most, full ? end - hour - 1 : most)
  }
  return hours
}

function shareAt(table: CureTable, airC: number): number {
  return Number.isNaN(airC) ? 0 : 1 / hoursOf({ table, sense: 'least' }, airC, foundAt(table, airC))
}
