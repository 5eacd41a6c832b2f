/** Calendar dates of the boat's place as moments, and back: a day there is 23, 24 or 25 hours long. */
import { localDate } from './local-date.ts'

const dayMinutes = 24 * 60

export const isDate = (text: string): boolean =>
  /^\d{4}-\d\d-\d\d$/.test(text) && !Number.isNaN(Date.parse(`${text}T12:00:00Z`))

/** `2027-04-12` and 1 give `2027-04-13`. */
export function addDays(date: string, days: number): string {
  const noon = new Date(`${date}T12:00:00Z`)
  noon.setUTCDate(noon.getUTCDate() + days)
  return noon.toISOString().slice(0, 10)
}

/** Whole days from one date to another; negative when it is earlier. */
export const daysBetween = (from: string, to: string): number =>
  Math.round((Date.parse(`${to}T12:00:00Z`) - Date.parse(`${from}T12:00:00Z`)) / (dayMinutes * 60_000))

/** The minute since 1970 at which the clock there shows a time of the date. */
export function minuteAt(date: string, minuteOfDay: number, timeZone: string): number {
  const wanted = Date.parse(`${date}T00:00:00Z`) / 60_000 + minuteOfDay
  // What the clock shows is off by the offset; the offset is looked up again beside the first answer.
  const first = wanted - offsetAt(wanted, timeZone)
  return wanted - offsetAt(first, timeZone)
}

/** Minutes that the clock there is ahead of universal time. */
function offsetAt(minute: number, timeZone: string): number {
  const clock = new Intl.DateTimeFormat('en-GB', {
    timeZone,
    hour: '2-digit',
    minute: '2-digit',
    hourCycle: 'h23',
  }).formatToParts(minute * 60_000)
  const part = (type: string): number => Number(clock.find((each) => each.type === type)?.value ?? 0)
  const shown =
    Date.parse(`${localDate(minute, timeZone)}T00:00:00Z`) / 60_000 + part('hour') * 60 + part('minute')
  return shown - Math.floor(minute)
}
