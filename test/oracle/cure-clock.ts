/**
 * A cure clock worked out the slow way: minute after minute, each at the temperature of its hour.
 *
 * A wait runs at 1/hours a hour; hours lie between the rows linear in ln(hours) against temperature. A least
 * wait stands still below its table and gets no shorter above it. A limit gets no longer below its table and
 * goes on shortening above it, at least halved per 10 °C. A table of one row doubles per 10 °C colder, both ways.
 */

export type CureRow = { readonly airC: number; readonly hours: number }
export type ClockSense = 'least' | 'most'
export type AirOfHour = (hourSince1970: number) => number

/** Share of the clock that one hour at this temperature lets run. */
export function shareAnHour(rows: readonly CureRow[], airC: number, sense: ClockSense): number {
  const first = rows[0]!
  const last = rows.at(-1)!
  if (rows.length === 1) return 2 ** ((airC - first.airC) / 10) / first.hours
  if (airC < first.airC) return sense === 'least' ? 0 : 1 / first.hours
  if (airC > last.airC) return sense === 'least' ? 1 / last.hours : beyond(rows, airC)
  const upper = rows.find((row) => row.airC >= airC)!
  const lower = rows.findLast((row) => row.airC <= airC)!
  if (upper === lower) return 1 / upper.hours
  const part = (airC - lower.airC) / (upper.airC - lower.airC)
  return 1 / (lower.hours ** (1 - part) * upper.hours ** part)
}

function beyond(rows: readonly CureRow[], airC: number): number {
  const [before, last] = rows.slice(-2) as [CureRow, CureRow]
  const foldPer10K = Math.max(2, (before.hours / last.hours) ** (10 / (last.airC - before.airC)))
  return foldPer10K ** ((airC - last.airC) / 10) / last.hours
}

/** A clock is given up after two years. */
const longestMinutes = 2 * 366 * 24 * 60

export type RunningClock = {
  readonly rows: readonly CureRow[]
  readonly sense: ClockSense
  readonly fromMinute: number
  readonly airC: AirOfHour
}

/** The minute, since 1970 UTC, at which the clock is full; undefined when it never is. */
export function clockFullMinute({ rows, sense, fromMinute, airC }: RunningClock): number | undefined {
  let done = 0
  let hour = Number.NaN
  let step = 0
  for (let minute = fromMinute; minute < fromMinute + longestMinutes; minute++) {
    const now = Math.floor(minute / 60)
    if (now !== hour) {
      hour = now
      step = shareAnHour(rows, airC(hour), sense) / 60
    }
    done += step
    // 1e-9: sixty times a sixtieth is not quite one.
    if (done >= 1 - 1e-9) return minute + 1
  }
  return undefined
}
