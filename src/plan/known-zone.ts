/** A time zone by its name. */
import { Temporal } from 'temporal-polyfill'

/** The name as it is known; universal time where it is none. */
export function knownZone(name: string): string {
  try {
    return Temporal.PlainDate.from('2027-01-01').toZonedDateTime(name).timeZoneId
  } catch {
    return 'UTC'
  }
}
