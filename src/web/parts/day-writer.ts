/** Days as a tape names them: weekday and number, in the zone of the place. */

export type DayReader = { readonly timeZone: string; readonly locale: string }

/** A locale or zone that is unusable gives English days in universal time. */
export function dayWriter({ timeZone, locale }: DayReader): (atMs: number) => string {
  const format = formatOf(locale, timeZone) ?? new Intl.DateTimeFormat('en', { ...options, timeZone: 'UTC' })
  return (atMs) => format.format(atMs).replace(',', '')
}

const options = { weekday: 'short', day: 'numeric' } as const

function formatOf(locale: string, timeZone: string): Intl.DateTimeFormat | undefined {
  try {
    return new Intl.DateTimeFormat(locale, { ...options, timeZone })
  } catch {
    return undefined
  }
}
