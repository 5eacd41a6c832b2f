/** A moment with its offset from UTC, as ISO 8601 writes it. */
import { Temporal } from 'temporal-polyfill'
import { SumError } from './sum-error.ts'

export type Moment = {
  /** Milliseconds since 1970-01-01 UTC. */
  readonly atMs: number
  /** Noon of that date at that offset, milliseconds since 1970-01-01 UTC. */
  readonly noonMs: number
  /** Hours to add to UTC. */
  readonly offsetHours: number
}

/** The sun's series holds over these years. */
const years = { from: 1900, to: 2100 }

const msPerHour = 3_600_000

/**
 * Reads `2027-06-21T14:00-04:00` or `…Z`. An offset is required: the sun does not know what a local clock means.
 * @throws SumError for no offset, a date that is not in the calendar, or a year outside 1900 to 2100.
 */
export function readMoment(field: string, text: string): Moment {
  const offset = /(?:z|([+-])(\d{2}):?(\d{2})?)$/iu.exec(text.trim())
  const instant = offset ? instantOf(text.trim()) : undefined
  if (!offset || !instant) throw badMoment(field, text)
  const [, sign, hours, minutes] = offset
  const offsetHours = (sign === '-' ? -1 : 1) * (Number(hours ?? 0) + Number(minutes ?? 0) / 60)
  const atMs = instant.epochMilliseconds
  const local = new Date(atMs + offsetHours * msPerHour)
  const year = local.getUTCFullYear()
  if (year < years.from || year > years.to) throw badMoment(field, text)
  const noonMs = Date.UTC(year, local.getUTCMonth(), local.getUTCDate(), 12) - offsetHours * msPerHour
  return { atMs, noonMs, offsetHours }
}

/** Time of day at the moment's offset, h after midnight. */
export function timeOfDay({ offsetHours }: Moment, atMs: number): number {
  const hours = atMs / msPerHour + offsetHours
  return hours - 24 * Math.floor(hours / 24)
}

function instantOf(text: string): Temporal.Instant | undefined {
  try {
    return Temporal.Instant.from(text)
  } catch {
    return undefined
  }
}

function badMoment(field: string, text: string): SumError {
  return new SumError(
    'sums.badMoment',
    { field, text },
    `${field}: not a moment, got "${text}", expected a date and time with offset such as 2027-06-21T14:00-04:00`,
  )
}
