/** A clock that runs at the pace of the hour's temperature: when a wait is over or a limit is reached. */
import type { CureTable } from './cure-table.ts'
import { type CureFound, type CureSense, foundAt, hoursOf } from './hours-at.ts'

/** A clock is given up after this many hours (two years), also when the series goes on for ever. */
const longestCureHours = 2 * 366 * 24

export type CureClock = {
  readonly table: CureTable
  readonly sense: CureSense
  /** When the clock starts, h from the start of the series; may fall inside an hour. */
  readonly startHours: number
  /** Temperature during hour `index` (from `index` to `index + 1`), °C; undefined where the series has ended. */
  readonly temperatureAt: (index: number) => number | undefined
}

export type CureEnd = {
  /** When the clock is full, h from the start of the series. */
  readonly endHours: number
  /** Every way in which the times on the road were found, in order of first use. */
  readonly found: readonly CureFound[]
}

/**
 * When a clock that starts at `startHours` is full: the moment at which the sum of dt / hours(T) reaches 1.
 * @returns the end and how its times were found; undefined when the series ends first, or after two years.
 * @throws CureError when the series gives a temperature that is not a number: a gap is undefined, not NaN.
 * Steps end at whole hours of the series and the last is cut exactly.
 * Source: the sum of shares is the equivalent-age form of ASTM C1074 with the sheet's own table for its rate.
 */
export function clockEnd(clock: CureClock): CureEnd | undefined {
  const found: CureFound[] = []
  const limit = clock.startHours + longestCureHours
  let done = 0
  for (let from = clock.startHours; from < limit; from = Math.floor(from) + 1) {
    const airC = clock.temperatureAt(Math.floor(from))
    if (airC === undefined) return undefined
    const way = foundAt(clock.table, airC)
    if (!found.includes(way)) found.push(way)
    const hours = hoursOf(clock, airC, way)
    const span = spanFrom(from, limit)
    const left = (1 - done) * hours
    if (left <= span + roundingHours) return { endHours: from + left, found }
    done += span / hours
  }
  return undefined
}

/** To the next whole hour of the series, or to the limit, h. */
const spanFrom = (from: number, limit: number): number => Math.min(Math.floor(from) + 1, limit) - from

/** A clock this close to full at the end of a step is full, h: sums of shares are not exact. */
const roundingHours = 1e-9

/**
 * Share of the clock that has run by `endHours`, 0 at its start, 1 when full and more beyond.
 * @returns undefined when the series ends before `endHours`.
 */
export function clockShare(clock: CureClock & { readonly endHours: number }): number | undefined {
  let done = 0
  for (let from = clock.startHours; from < clock.endHours; from = Math.floor(from) + 1) {
    const airC = clock.temperatureAt(Math.floor(from))
    if (airC === undefined) return undefined
    done += spanFrom(from, clock.endHours) / hoursOf(clock, airC, foundAt(clock.table, airC))
  }
  return done
}
