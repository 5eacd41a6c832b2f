/** A stretch of time as a line from 0 to 1: where a moment stands, and the ticks of a tape over it. */

export type TimeSpan = { readonly fromMs: number; readonly toMs: number }

export const hourMs = 3_600_000

/** 0 at the start, 1 at the end; what lies outside is put at the nearer end. */
export function shareOf(atMs: number, { fromMs, toMs }: TimeSpan): number {
  return toMs > fromMs ? Math.min(1, Math.max(0, (atMs - fromMs) / (toMs - fromMs))) : 0
}

/** A share that is one: what is no number is nothing yet. */
export const bounded = (share: number): number => (share > 0 ? Math.min(1, share) : 0)

/** As SVG and CSS take it, cut to a length that differs by less than a tenth of a pixel. */
export const percent = (share: number): string => `${Math.round(share * 100_000) / 1000}%`

export type TapeTick = {
  readonly atMs: number
  readonly size: 'hour' | 'third' | 'sixth' | 'day'
  /** Local hour of the day, 0 to 23. */
  readonly hour: number
}

export type TapeTicksOptions = TimeSpan & { readonly timeZone: string }

/** A year of hours: more would be neither read nor drawn. */
const mostHours = 24 * 366

/** Every full local hour; zones that are off by a half or a quarter hour get theirs. */
export function tapeTicks({ fromMs, toMs, timeZone }: TapeTicksOptions): readonly TapeTick[] {
  if (!isTime(fromMs) || !isTime(toMs)) return []
  const clock = clockOf(timeZone)
  const quarter = hourMs / 4
  const start = Math.ceil(fromMs / quarter) * quarter
  const first = [0, 1, 2, 3].map((k) => start + k * quarter).find((atMs) => minuteOf(clock, atMs) === 0)
  const count = Math.min(mostHours, Math.floor((toMs - (first ?? start)) / hourMs) + 1)
  return Array.from({ length: Math.max(0, count) }, (_, k): TapeTick => {
    const atMs = (first ?? start) + k * hourMs
    const hour = hourOf(clock, atMs)
    return { atMs, hour, size: sizeOf(hour) }
  })
}

/** SOURCE: the range of ECMAScript's time values, 100 million days around 1970. */
const isTime = (atMs: number): boolean => Math.abs(atMs) <= 8.64e15

const sizeOf = (hour: number): TapeTick['size'] =>
  hour === 0 ? 'day' : hour % 6 === 0 ? 'sixth' : hour % 3 === 0 ? 'third' : 'hour'

function clockOf(timeZone: string): Intl.DateTimeFormat {
  const options = { hour: '2-digit', minute: '2-digit', hourCycle: 'h23' } as const
  try {
    return new Intl.DateTimeFormat('en', { ...options, timeZone })
  } catch {
    return new Intl.DateTimeFormat('en', { ...options, timeZone: 'UTC' })
  }
}

const numberIn = (clock: Intl.DateTimeFormat, atMs: number, type: 'hour' | 'minute'): number =>
  Number(clock.formatToParts(atMs).find((part) => part.type === type)?.value ?? 0)

const hourOf = (clock: Intl.DateTimeFormat, atMs: number): number => numberIn(clock, atMs, 'hour')
const minuteOf = (clock: Intl.DateTimeFormat, atMs: number): number => numberIn(clock, atMs, 'minute')
