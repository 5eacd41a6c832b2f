/**
 * Which hours a surface can take a coat: every hour gets a verdict and the limits that fail, with by how much.
 * First version: the caller gives the surface temperature.
 */
import { dewPoints } from './dew-points.ts'
import type { LightLimits } from './light-limits.ts'
import type { FailingLimit, HourVerdict, Limit, PaintLimits, Verdict } from './paint-limits.ts'
import { limitRounding } from './paint-limits.ts'
import type { HourlyColumn, HourlySeries } from './series.ts'
import { valueAt } from './series.ts'
import type { Wetness } from './wetness.ts'
import { wetness } from './wetness.ts'

export type PaintQuestion = {
  /** Air and wind at the surface: for a shelter, what `airUnder` gives. */
  readonly series: HourlySeries
  /** Surface temperature by the hour, °C, NaN where unknown; as long as the series. */
  readonly surfaceC: HourlyColumn
  /** The warmest skin of a place that looks several ways, °C; left out, its only one. */
  readonly warmestC?: HourlyColumn
  /** Sunbeam on the surface, mean over the hour, W/m²: what `beamOnFaces` gives; left out under a roof. */
  readonly beamWm2?: HourlyColumn
  /** Limits of dark and evening by the hour, the same for every product: what `lightLimits` gives. */
  readonly light?: LightLimits
  readonly limits: PaintLimits
}

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
  const sky = lookAhead(question)
  const verdicts = new Array<HourVerdict>(question.series.hours)
  for (let hour = 0; hour < verdicts.length; hour++) verdicts[hour] = verdictAt(sky, hour)
  return verdicts
}

/** Columns worked once a question, so that each hour is looked up and not searched. */
type Sky = PaintQuestion & {
  readonly marginK: Float64Array
  readonly wet: readonly (Wetness | undefined)[]
  /** Next hour, from each hour on, at which something holds; the length of the series when it never does. */
  readonly nextClose: Int32Array
  readonly nextUnknownMargin: Int32Array
  readonly rain: RainAhead | undefined
  /** Where the limits of an hour are gathered: a list that grows anew each hour takes a third of the time. */
  readonly found: FailingLimit[]
}

type RainAhead = {
  readonly falls: Int32Array
  readonly likely: Int32Array
  readonly possible: Int32Array
  readonly unknown: Int32Array
}

function lookAhead(question: PaintQuestion): Sky {
  const { series, limits } = question
  const marginK = marginOver(question)
  return {
    ...question,
    marginK,
    wet: wetness({ series, marginK, limits }),
    nextClose: nextHour(series.hours, (hour) => marginK[hour]! < limits.dewMarginK - limitRounding),
    nextUnknownMargin: nextHour(series.hours, (hour) => Number.isNaN(marginK[hour]!)),
    rain: limits.openToSky ? rainAhead(series, limits) : undefined,
    found: [],
  }
}

function marginOver({ series, surfaceC }: PaintQuestion): Float64Array {
  return dewPoints(series).map((dewC, hour) => valueAt(surfaceC, hour) - dewC)
}

function rainAhead({ hours, rainMm, rainChanceShare }: HourlySeries, limits: PaintLimits): RainAhead {
  const fell = (hour: number) => valueAt(rainMm, hour)
  const chance = (hour: number) => valueAt(rainChanceShare, hour)
  return {
    falls: nextHour(hours, (hour) => fell(hour) > 0),
    likely: nextHour(hours, (hour) => chance(hour) >= limits.rainNoShare - limitRounding),
    possible: nextHour(hours, (hour) => chance(hour) >= limits.rainRiskyShare - limitRounding),
    unknown: nextHour(hours, (hour) => Number.isNaN(fell(hour)) && Number.isNaN(chance(hour))),
  }
}

function nextHour(hours: number, holds: (hour: number) => boolean): Int32Array {
  const next = new Int32Array(hours)
  let found = hours
  for (let hour = hours - 1; hour >= 0; hour--) {
    if (holds(hour)) found = hour
    next[hour] = found
  }
  return next
}

/** Written out flat: a year of hours for every zone and sheet passes here. */
function verdictAt(sky: Sky, hour: number): HourVerdict {
  if (isMissing(sky, hour)) return { verdict: 'unknown', failing: missingAt(sky, hour) }
  const { found } = sky
  let count = keep(found, 0, airAt(sky, hour))
  count = keep(found, count, skinAt(sky, hour))
  count = keep(found, count, hotSunAt(sky, hour))
  count = keep(found, count, humidityAt(sky, hour))
  count = keep(found, count, dewAt(sky, hour))
  count = keep(found, count, wetAt(sky, hour))
  count = keep(found, count, windAt(sky, hour))
  count = keep(found, count, rainAt(sky, hour))
  const unlit = sky.light?.[hour]
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

function isMissing({ series, surfaceC }: Sky, hour: number): boolean {
  return Number.isNaN(series.airC[hour]! + series.humidityShare[hour]! + valueAt(surfaceC, hour))
}

function missingAt({ series, surfaceC, limits }: Sky, hour: number): readonly FailingLimit[] {
  const figures: readonly (readonly [Limit, number, number])[] = [
    ['airLeast', limits.airLeastC, series.airC[hour]!],
    ['humidity', limits.humidityMost, series.humidityShare[hour]!],
    ['dewMargin', limits.dewMarginK, valueAt(surfaceC, hour)],
  ]
  return figures
    .filter(([, , had]) => Number.isNaN(had))
    .map(([limit, needed]) => ({ limit, effect: 'unknown', needed, had: null, inHours: 0 }))
}

function airAt({ series, limits }: Sky, hour: number): FailingLimit | undefined {
  const had = series.airC[hour]!
  const { airLeastC, airMostC } = limits
  if (had < airLeastC - limitRounding)
    return { limit: 'airLeast', effect: 'no', needed: airLeastC, had, inHours: 0 }
  if (had > airMostC + limitRounding)
    return { limit: 'airMost', effect: 'no', needed: airMostC, had, inHours: 0 }
  return undefined
}

function skinAt({ surfaceC, warmestC, limits }: Sky, hour: number): FailingLimit | undefined {
  const had = surfaceC[hour]!
  if (had < limits.skinCoolC - limitRounding) {
    const under = had < limits.skinLeastC - limitRounding
    const needed = under ? limits.skinLeastC : limits.skinCoolC
    return { limit: 'skinLeast', effect: under ? 'no' : 'risky', needed, had, inHours: 0 }
  }
  const warmest = warmestC === undefined ? had : warmestC[hour]!
  // An unknown one is over no limit here: the skin that is known decides.
  if (!(warmest > limits.skinWarmC + limitRounding)) return undefined
  const over = warmest > limits.skinMostC + limitRounding
  const needed = over ? limits.skinMostC : limits.skinWarmC
  return { limit: 'skinMost', effect: over ? 'no' : 'risky', needed, had: warmest, inHours: 0 }
}

/** Paint in the sun on a warm side skins over before it is laid off, and its thinner boils out. */
function hotSunAt(sky: Sky, hour: number): FailingLimit | undefined {
  const { series, surfaceC, warmestC, beamWm2, limits } = sky
  if (beamWm2 === undefined || !(beamWm2[hour]! > limits.sunnyBeamWm2)) return undefined
  const had = (warmestC ?? surfaceC)[hour]! - series.airC[hour]!
  const needed = limits.sunnyOverAirK
  return had > needed + limitRounding
    ? { limit: 'hotSun', effect: 'risky', needed, had, inHours: 0 }
    : undefined
}

function humidityAt({ series, limits }: Sky, hour: number): FailingLimit | undefined {
  const had = series.humidityShare[hour]!
  const needed = limits.humidityMost
  return had > needed + limitRounding
    ? { limit: 'humidity', effect: 'no', needed, had, inHours: 0 }
    : undefined
}

/** Past the end of the list nothing is known of the drying, so the last figure holds. */
function hoursAfterOf({ hoursAfter }: PaintLimits, hour: number): number {
  return typeof hoursAfter === 'number' ? hoursAfter : (hoursAfter[hour] ?? hoursAfter.at(-1) ?? 0)
}

function dewAt(
  { series, marginK, limits, nextClose, nextUnknownMargin }: Sky,
  hour: number,
): FailingLimit | undefined {
  const last = hour + hoursAfterOf(limits, hour)
  const needed = limits.dewMarginK
  const close = nextClose[hour]!
  if (close <= last && close < series.hours)
    return { limit: 'dewMargin', effect: 'no', needed, had: marginK[close]!, inHours: close - hour }
  const unknown = nextUnknownMargin[hour]!
  if (unknown > last) return undefined
  return { limit: 'dewMargin', effect: 'unknown', needed, had: null, inHours: unknown - hour }
}

function wetAt({ wet, marginK, limits }: Sky, hour: number): FailingLimit | undefined {
  const state = wet[hour]
  // While the margin itself fails, that says it all.
  if (state === undefined || marginK[hour]! < limits.dewMarginK - limitRounding) return undefined
  const effect = state.certain ? 'no' : 'risky'
  return { limit: 'wetSince', effect, needed: limits.dryHours, had: state.dryHours, inHours: 0 }
}

function windAt({ series, limits }: Sky, hour: number): FailingLimit | undefined {
  const had = valueAt(series.windMps, hour)
  const { windGoMps, windNoMps } = limits
  if (had <= windGoMps + limitRounding) return undefined
  if (Number.isNaN(had)) return { limit: 'wind', effect: 'risky', needed: windGoMps, had: null, inHours: 0 }
  const over = had > windNoMps + limitRounding
  return {
    limit: 'wind',
    effect: over ? 'no' : 'risky',
    needed: over ? windNoMps : windGoMps,
    had,
    inHours: 0,
  }
}

function rainAt({ series, limits, rain }: Sky, hour: number): FailingLimit | undefined {
  if (rain === undefined) return undefined
  const last = Math.min(hour + hoursAfterOf(limits, hour), series.hours - 1)
  const falls = rain.falls[hour]!
  if (falls <= last)
    return {
      limit: 'rain',
      effect: 'no',
      needed: 0,
      had: valueAt(series.rainMm, falls),
      inHours: falls - hour,
    }
  const likely = rain.likely[hour]!
  if (likely <= last) return chanceOf(series, { effect: 'no', needed: limits.rainNoShare, hour, at: likely })
  const unknown = rain.unknown[hour]!
  if (unknown <= last)
    return { limit: 'rain', effect: 'risky', needed: 0, had: null, inHours: unknown - hour }
  const possible = rain.possible[hour]!
  if (possible > last) return undefined
  return chanceOf(series, { effect: 'risky', needed: limits.rainRiskyShare, hour, at: possible })
}

function chanceOf(
  series: HourlySeries,
  found: {
    readonly effect: 'no' | 'risky'
    readonly needed: number
    readonly hour: number
    readonly at: number
  },
): FailingLimit {
  const { effect, needed, hour, at } = found
  return { limit: 'rainChance', effect, needed, had: valueAt(series.rainChanceShare, at), inHours: at - hour }
}
