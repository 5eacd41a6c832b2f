/** Moments in UTC from the clock of a place, through the hours at which it is put forward and back. */

export type LocalClock = {
  /**
   * @param localMs what the clock showed, as if it stood in UTC. @param afterMs the moment of the reading before, to
   * tell the second pass of an hour from the first.
   * @returns ms since 1970 UTC; undefined for an hour that the clock of the place skips.
   */
  readonly toUtc: (localMs: number, afterMs: number) => number | undefined
}

const minuteMs = 60_000
const dayMs = 86_400_000

/** A clock by an offset such as `+01:00` or a name such as `Europe/Paris`; undefined when there is none of that name. */
export function localClock(zone: string): LocalClock | undefined {
  const fixed = /^(?:UTC|GMT)?([+-])(\d{1,2}):?(\d{2})?$/i.exec(zone)
  if (fixed !== null) {
    const minutes = Number(fixed[2]) * 60 + Number(fixed[3] ?? 0)
    const offsetMs = (fixed[1] === '-' ? -1 : 1) * minutes * minuteMs
    return minutes > 14 * 60 ? undefined : { toUtc: (localMs) => localMs - offsetMs }
  }
  const offsetAt = offsetsOf(zone)
  return offsetAt && { toUtc: (localMs, afterMs) => toUtc({ localMs, afterMs, offsetAt }) }
}

type OffsetAt = (utcMs: number) => number

function toUtc(of: { readonly localMs: number; readonly afterMs: number; readonly offsetAt: OffsetAt }) {
  const { localMs, afterMs, offsetAt } = of
  const [before, after] = [offsetAt(localMs - dayMs), offsetAt(localMs + dayMs)]
  if (before === after) return localMs - before
  const real = [localMs - before, localMs - after].filter((utcMs) => offsetAt(utcMs) === localMs - utcMs)
  return real.find((utcMs) => utcMs > afterMs) ?? real[0]
}

/** Offset of a zone, ms east of UTC; the same day is asked for once. */
function offsetsOf(zone: string): OffsetAt | undefined {
  let format: Intl.DateTimeFormat
  try {
    format = new Intl.DateTimeFormat('en-US', { timeZone: zone, timeZoneName: 'longOffset' })
  } catch {
    return undefined
  }
  const ask: OffsetAt = (utcMs) => {
    const name = format.formatToParts(utcMs).find(({ type }) => type === 'timeZoneName')?.value ?? ''
    const parts = /([+-])(\d{2}):(\d{2})/.exec(name)
    if (parts === null) return 0
    return (parts[1] === '-' ? -1 : 1) * (Number(parts[2]) * 60 + Number(parts[3])) * minuteMs
  }
  const starts = new Map<number, number>()
  const atDay = (day: number): number => {
    const known = starts.get(day) ?? ask(day * dayMs)
    starts.set(day, known)
    return known
  }
  return (utcMs) => {
    const day = Math.floor(utcMs / dayMs)
    return atDay(day) === atDay(day + 1) ? atDay(day) : ask(utcMs)
  }
}
