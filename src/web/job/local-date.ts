/** Dates and clock times of the boat's place, from minutes since 1970. */

/** The date there, YYYY-MM-DD. */
export function localDate(minute: number, timeZone: string): string {
  const parts = new Intl.DateTimeFormat('en-CA', {
    timeZone,
    year: 'numeric',
    month: '2-digit',
    day: '2-digit',
  }).formatToParts(minute * 60_000)
  const part = (type: string): string => parts.find((each) => each.type === type)?.value ?? ''
  return `${part('year')}-${part('month')}-${part('day')}`
}

/** A moment as the log writes it: local date and time with the offset that holds there then. */
export function localInstant(ms: number, timeZone: string): string {
  const parts = new Intl.DateTimeFormat('en-CA', {
    timeZone,
    year: 'numeric',
    month: '2-digit',
    day: '2-digit',
    hour: '2-digit',
    minute: '2-digit',
    hourCycle: 'h23',
    timeZoneName: 'longOffset',
  }).formatToParts(ms)
  const part = (type: string): string => parts.find((each) => each.type === type)?.value ?? ''
  const offset = part('timeZoneName').replace('GMT', '') || '+00:00'
  return `${part('year')}-${part('month')}-${part('day')}T${part('hour')}:${part('minute')}${offset}`
}
