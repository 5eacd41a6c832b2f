/** What the days about a date have at the same hour, over a typical year: how far apart they lie, and how many are good. */
import { hoursOfYear } from '../over-dates.ts'
import { type HourlyColumn, valueAt } from '../series.ts'

/** Days before and after a date that count as like it: a season hardly moves in them. Common practice, assumed. */
const eachSide = 10

/** With the date itself. */
export const likeDayCount = 2 * eachSide + 1

const dayHours = 24

export type Spread = {
  /** 10th, 50th and 90th percentile; NaN where fewer than half of the days have a figure. */
  readonly low: Float64Array
  readonly middle: Float64Array
  readonly high: Float64Array
}

/** Hours of a typical year, a ring, that lie whole days from one: the days like it, from the earliest. */
const likeHour = (hour: number, day: number): number =>
  (hour + (day - eachSide) * dayHours + hoursOfYear) % hoursOfYear

/**
 * @param column of a typical year, 8760 hours. @returns for each of its hours the spread of the same hour of the day over
 * the like days; between two ranks straight (Hyndman and Fan 1996, definition 7, from memory): of 21 days the third
 * least, the middle and the third greatest.
 */
export function spreadOfLikeDays(column: HourlyColumn): Spread {
  const made = () => new Float64Array(hoursOfYear).fill(Number.NaN)
  const spread = { low: made(), middle: made(), high: made() }
  const days = new Float64Array(likeDayCount)
  for (let hour = 0; hour < hoursOfYear; hour++) {
    let count = 0
    for (let day = 0; day < likeDayCount; day++) {
      const value = valueAt(column, likeHour(hour, day))
      if (!Number.isNaN(value)) days[count++] = value
    }
    if (2 * count < likeDayCount) continue
    const sorted = days.subarray(0, count).sort()
    spread.low[hour] = rankOf(sorted, 0.1)
    spread.middle[hour] = rankOf(sorted, 0.5)
    spread.high[hour] = rankOf(sorted, 0.9)
  }
  return spread
}

function rankOf(sorted: Float64Array, share: number): number {
  const rank = share * (sorted.length - 1)
  // Nearly whole ranks are whole: 0.1 of 20 is.
  const below = Math.floor(rank + 1e-9)
  const over = Math.max(0, rank - below)
  return sorted[below]! + over * (sorted[Math.min(below + 1, sorted.length - 1)]! - sorted[below]!)
}

/** @param holds of each of 8760 hours. @returns on how many of the like days it holds at that hour, 0 to 21. */
export function countOfLikeDays(holds: (hour: number) => boolean): Uint8Array {
  const told = Uint8Array.from({ length: hoursOfYear }, (_, hour) => (holds(hour) ? 1 : 0))
  const counts = new Uint8Array(hoursOfYear)
  for (let first = 0; first < dayHours; first++) {
    let count = 0
    for (let day = 0; day < likeDayCount; day++) count += told[likeHour(first, day)]!
    for (let hour = first; hour < hoursOfYear; hour += dayHours) {
      counts[hour] = count
      count += told[likeHour(hour + dayHours, likeDayCount - 1)]! - told[likeHour(hour, 0)]!
    }
  }
  return counts
}
