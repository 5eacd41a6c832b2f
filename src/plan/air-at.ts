/** The temperature a clock runs at, hour by hour, also where the weather at hand has a hole or has ended. */
import type { AirAt } from '#core/schedule'
import type { Stage } from './remember.ts'
import type { AirHours, Conditions } from './types.ts'

/** Without any weather, clocks run at this temperature; marked assumed wherever it is used. */
export const PLANNING_AIR_C = 20

/** How many days at the end of the series stand for what comes after it. */
const DAYS_KEPT = 7

/**
 * Temperature at an hour since 1970 UTC. Inside the series it is the series; in a hole and before the start
 * it is the nearest hour known before, or after; past the end it is the mean of the same hour of the day over
 * the last week of the series.
 */
export function airAt(air: AirHours | undefined): AirAt {
  if (!air || air.airC.every(Number.isNaN)) return () => PLANNING_AIR_C
  const filled = fillHoles(air.airC)
  const firstHour = Math.floor(air.firstMinute / 60)
  const after = lastWeek(filled)
  return (hour) => {
    const index = hour - firstHour
    if (index < 0) return filled[0]!
    return filled[index] ?? after[index % 24]!
  }
}

function fillHoles(airC: readonly number[]): readonly number[] {
  const first = airC.find((value) => !Number.isNaN(value))!
  let last = first
  return airC.map((value) => {
    if (!Number.isNaN(value)) last = value
    return last
  })
}

/** Mean by hour of the day (counted from the start of the series) over its last week. */
function lastWeek(airC: readonly number[]): readonly number[] {
  const from = Math.max(0, airC.length - 24 * DAYS_KEPT)
  const sums = new Array<number>(24).fill(0)
  const counts = new Array<number>(24).fill(0)
  for (let index = from; index < airC.length; index++) {
    sums[index % 24]! += airC[index]!
    counts[index % 24]! += 1
  }
  const mean = sums.reduce((all, sum) => all + sum, 0) / (airC.length - from)
  return sums.map((sum, hour) => (counts[hour]! > 0 ? sum / counts[hour]! : mean))
}

/** One reader a place, for stages that ask for many hours. */
const airByPlace = (air: readonly AirHours[]): AirOf => {
  const known = new Map(air.map((one) => [one.key, airAt(one)]))
  const none = airAt(undefined)
  return (place) => known.get(place) ?? none
}

export type AirOf = (place: string) => AirAt

/** The readers of a plan's air, kept for as long as its weather and shelter. */
export const airs: Stage<{ readonly conditions: Conditions }, AirOf> = {
  name: 'airs',
  run: ({ conditions }) => airByPlace(conditions.air),
  fresh: true,
}
