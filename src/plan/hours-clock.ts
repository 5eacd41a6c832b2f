/** The clock of the place over the hours of the weather: which of them lie in a span of the day. */
import { Temporal } from 'temporal-polyfill'
import { type HourlySeries, hourMs, startOfHour } from '#core/climate'
import { knownZone } from './known-zone.ts'

/** Minutes of the local day, 0 to 1439, at the start of each hour; at a change of the clock one comes twice or never. */
export function minutesOfDay(series: HourlySeries, timeZone: string): Int16Array {
  const minutes = new Int16Array(series.hours)
  const zone = knownZone(timeZone)
  const endMs = startOfHour(series, series.hours)
  let midnight = Temporal.Instant.fromEpochMilliseconds(series.startMs).toZonedDateTimeISO(zone).startOfDay()
  while (midnight.epochMilliseconds < endMs) {
    const next = midnight.add({ days: 1 }).startOfDay()
    const [fromMs, toMs] = [midnight.epochMilliseconds, next.epochMilliseconds]
    const first = Math.max(0, Math.ceil((fromMs - series.startMs) / hourMs))
    const last = Math.min(series.hours, Math.ceil((toMs - series.startMs) / hourMs))
    const plain = toMs - fromMs === 24 * hourMs
    for (let hour = first; hour < last; hour++)
      minutes[hour] = plain
        ? (startOfHour(series, hour) - fromMs) / 60_000
        : minuteAt(startOfHour(series, hour), zone)
    midnight = next
  }
  return minutes
}

function minuteAt(atMs: number, zone: string): number {
  const { hour, minute } = Temporal.Instant.fromEpochMilliseconds(atMs).toZonedDateTimeISO(zone)
  return 60 * hour + minute
}

const dayMinutes = 1440

/** Minutes since midnight of a time of day. */
export const minuteOf = (timeOfDay: string): number => {
  const { hour, minute } = Temporal.PlainTime.from(timeOfDay)
  return 60 * hour + minute
}

/**
 * Share of the hour before a minute of the day that lies in a span of it, 0 to 1.
 * @param span minutes of the day; one that ends at or before its begin runs over midnight.
 */
export function shareBefore(minute: number, span: { readonly from: number; readonly until: number }): number {
  const until = span.until <= span.from ? span.until + dayMinutes : span.until
  // The spans of the two days before, and of the day after, may reach into the hour too.
  const inside = [-2, -1, 0, 1].map((days) => {
    const shift = days * dayMinutes
    return Math.max(0, Math.min(minute, until + shift) - Math.max(minute - 60, span.from + shift))
  })
  return Math.min(1, inside.reduce((sum, part) => sum + part, 0) / 60)
}
