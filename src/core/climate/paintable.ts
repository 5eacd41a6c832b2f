/**
 * Which hours a surface can take a coat: every hour gets a verdict and the limits that fail, with by how much.
 * First version: the caller gives the surface temperature.
 */
import { airAhead } from './air-ahead.ts'
import type { NextFailing } from './limit-columns.ts'
import type { FailingLimit, HourVerdict, Limit, SheetLimits, Verdict } from './paint-limits.ts'
import { limitRounding } from './paint-limits.ts'
import type { PaintQuestion } from './paint-place.ts'
import type { PlaceAhead } from './place-ahead.ts'
import { placeAhead } from './place-ahead.ts'
import { valueAt } from './series.ts'

const go: HourVerdict = Object.freeze({ verdict: 'go', failing: Object.freeze([]) })

/**
 * Verdict for starting a coat in each hour of a series.
 *
 * `no` when a limit fails: air, skin, humidity, wind and rain in the hour; dew margin and rain also in the `hoursAfter`
 * next ones; a surface that was wet and has not yet dried; the dark. `risky` for wind and for the skin between their
 * two limits, for a side that the sun stands on and has warmed, past an evening stop that nobody set, for a
 * chance of rain, for rain not known over a surface open to the sky, for wind not known, and where nobody knows
 * whether the surface was wet. `unknown` when air, humidity or surface are missing in the hour, whatever else
 * fails, or when the dew margin of the hours after is not known (also past the end of the series).
 * Rain counts only where the sky is. A margin, humidity or temperature equal to its limit is a go.
 * @returns one verdict an hour, in order.
 * Source: ISO 8502-4 (3 °C over the dew point); the whole drying time: commercial data sheets; wind, rain, drying, sun
 * and evening: common practice, assumed; dark: civil twilight.
 */
export function paintableHours(question: PaintQuestion): readonly HourVerdict[] {
  return hoursForSheet(placeAhead(airAhead(question), question), question.limits)
}

/** The same for one product of several at a place: what they share is in `ahead`, worked once. */
export function hoursForSheet(ahead: PlaceAhead, limits: SheetLimits): readonly HourVerdict[] {
  const asked: Asked = { ...ahead, sheet: limits, found: [] }
  const verdicts = new Array<HourVerdict>(ahead.series.hours)
  for (let hour = 0; hour < verdicts.length; hour++) verdicts[hour] = verdictAt(asked, hour)
  return verdicts
}

type Asked = PlaceAhead & {
  readonly sheet: SheetLimits
  /** Where the limits of an hour are gathered: a list that grows anew each hour takes a third of the time. */
  readonly found: FailingLimit[]
}

/** Written out flat: a year of hours for every zone and sheet passes here. */
function verdictAt(asked: Asked, hour: number): HourVerdict {
  // Where the margin is known, air, humidity and surface are.
  if (asked.unknownMargin.at[hour] === hour && isMissing(asked, hour))
    return { verdict: 'unknown', failing: missingAt(asked, hour) }
  const { found } = asked
  const span = { hour, last: hour + hoursAfterOf(asked.sheet, hour) }
  let count = keep(found, 0, airAt(asked, hour))
  count = keep(found, count, skinAt(asked, hour))
  count = keep(found, count, asked.hotSun[hour])
  count = keep(found, count, humidityAt(asked, hour))
  count = keep(found, count, dewAt(asked, span))
  count = keep(found, count, asked.wet[hour])
  count = keep(found, count, asked.wind[hour])
  count = keep(found, count, rainAt(asked, span))
  const unlit = asked.light?.[hour]
  if (count === 0) return unlit ?? go
  if (unlit !== undefined) for (const limit of unlit.failing) found[count++] = limit
  const failing = found.slice(0, count)
  return { verdict: worst(failing), failing }
}

/** How many limits are found to fail by now. */
function keep(found: FailingLimit[], count: number, limit: FailingLimit | undefined): number {
  if (limit === undefined) return count
  found[count] = limit
  return count + 1
}

function worst(failing: readonly FailingLimit[]): Verdict {
  let verdict: Verdict = 'risky'
  for (const { effect } of failing) {
    if (effect === 'no') return 'no'
    if (effect === 'unknown') verdict = 'unknown'
  }
  return verdict
}

function isMissing({ series, surfaceC }: Asked, hour: number): boolean {
  return Number.isNaN(series.airC[hour]! + series.humidityShare[hour]! + valueAt(surfaceC, hour))
}

function missingAt({ series, surfaceC, limits, sheet }: Asked, hour: number): readonly FailingLimit[] {
  const figures: readonly (readonly [Limit, number, number])[] = [
    ['airLeast', sheet.airLeastC, series.airC[hour]!],
    ['humidity', sheet.humidityMost, series.humidityShare[hour]!],
    ['dewMargin', limits.dewMarginK, valueAt(surfaceC, hour)],
  ]
  return figures
    .filter(([, , had]) => Number.isNaN(had))
    .map(([limit, needed]) => ({ limit, effect: 'unknown', needed, had: null, inHours: 0 }))
}

function airAt({ series, sheet }: Asked, hour: number): FailingLimit | undefined {
  const had = series.airC[hour]!
  const { airLeastC, airMostC } = sheet
  if (had < airLeastC - limitRounding)
    return { limit: 'airLeast', effect: 'no', needed: airLeastC, had, inHours: 0 }
  if (had > airMostC + limitRounding)
    return { limit: 'airMost', effect: 'no', needed: airMostC, had, inHours: 0 }
  return undefined
}

function skinAt({ surfaceC, warmestC, sheet }: Asked, hour: number): FailingLimit | undefined {
  const had = surfaceC[hour]!
  if (had < sheet.skinCoolC - limitRounding) {
    const under = had < sheet.skinLeastC - limitRounding
    const needed = under ? sheet.skinLeastC : sheet.skinCoolC
    return { limit: 'skinLeast', effect: under ? 'no' : 'risky', needed, had, inHours: 0 }
  }
  const warmest = warmestC === undefined ? had : warmestC[hour]!
  // An unknown one is over no limit here: the skin that is known decides.
  if (!(warmest > sheet.skinWarmC + limitRounding)) return undefined
  const over = warmest > sheet.skinMostC + limitRounding
  const needed = over ? sheet.skinMostC : sheet.skinWarmC
  return { limit: 'skinMost', effect: over ? 'no' : 'risky', needed, had: warmest, inHours: 0 }
}

function humidityAt({ series, sheet }: Asked, hour: number): FailingLimit | undefined {
  const had = series.humidityShare[hour]!
  const needed = sheet.humidityMost
  return had > needed + limitRounding
    ? { limit: 'humidity', effect: 'no', needed, had, inHours: 0 }
    : undefined
}

/** Past the end of the list nothing is known of the drying, so the last figure holds. */
function hoursAfterOf({ hoursAfter }: SheetLimits, hour: number): number {
  return typeof hoursAfter === 'number' ? hoursAfter : (hoursAfter[hour] ?? hoursAfter.at(-1) ?? 0)
}

type Span = { readonly hour: number; readonly last: number }

function dewAt({ series, tooClose, unknownMargin }: Asked, span: Span): FailingLimit | undefined {
  if (fallsIn(tooClose, span) && tooClose.at[span.hour]! < series.hours) return tooClose.limit(span.hour)
  // Past the end of the series the margin is not known either.
  return unknownMargin.at[span.hour]! > span.last ? undefined : unknownMargin.limit(span.hour)
}

/** Of two that fail the graver one tells, however late in the span. */
function rainAt({ series, rain }: Asked, { hour, last }: Span): FailingLimit | undefined {
  if (rain === undefined) return undefined
  const span = { hour, last: Math.min(last, series.hours - 1) }
  for (const next of rain) if (fallsIn(next, span)) return next.limit(hour)
  return undefined
}

const fallsIn = ({ at }: NextFailing, { hour, last }: Span): boolean => at[hour]! <= last
