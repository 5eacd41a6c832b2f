/** How far each hour reaches into the dark, and how long it ends before the sun sets. */
import { type HourlySeries, hourMs, startOfHour } from '../series.ts'
import { civilTwilight, type Place, sunTimes } from './sun-position.ts'

export type Daylight = {
  /** How far an hour reaches out of the light from civil dawn to civil dusk, h; 0 when all of it is light. */
  readonly darkHours: Float64Array
  /** From the end of an hour to the sunset of its solar day, h; negative after it, NaN when the sun does not set. */
  readonly toSunsetHours: Float64Array
}

const dayMs = 24 * hourMs

/** Further from the light than this nobody counts, h: a polar night has no dawn to wait for. */
const mostDarkHours = 24

/**
 * Daylight over a place, hour by hour.
 * @param at.series only its hours are read. @param at.place latitude and longitude, rad.
 * @returns `darkHours` to the nearer end of the light, at most 24; an hour that is dark only in part counts the longer
 * of the two ends it has left, so that it is light only when all of it is.
 * Source: civil twilight, the sun's centre 6° under the horizon: work outdoors needs lamps beyond it (US Naval
 * Observatory, Rise, Set and Twilight Definitions).
 */
export function daylight(at: { readonly series: HourlySeries; readonly place: Place }): Daylight {
  const { series, place } = at
  const darkHours = new Float64Array(series.hours).fill(mostDarkHours)
  const toSunsetHours = new Float64Array(series.hours).fill(Number.NaN)
  const noons = solarNoons(series, place)
  for (const { fromMs, toMs } of joined(noons.flatMap((noonMs) => lightOfDay(place, noonMs)))) {
    eachHour(series, fromMs - dayMs, toMs + dayMs, (hour, startMs) => {
      const dark = Math.max(fromMs - startMs, startMs + hourMs - toMs, 0) / hourMs
      if (dark < darkHours[hour]!) darkHours[hour] = dark
    })
  }
  for (const noonMs of noons) {
    const { setMs } = sunTimes({ ...place, noonMs })
    if (setMs === undefined) continue
    eachHour(series, noonMs - dayMs / 2, noonMs + dayMs / 2, (hour, startMs) => {
      toSunsetHours[hour] = (setMs - startMs - hourMs) / hourMs
    })
  }
  return { darkHours, toSunsetHours }
}

/** Mean solar noons from a day before the series to a day after it. */
function solarNoons(series: HourlySeries, { longitude }: Place): readonly number[] {
  // Whole, so that the days of a white night touch.
  const turnMs = Math.round((dayMs * longitude) / (2 * Math.PI))
  const noonOf = (day: number): number => day * dayMs + dayMs / 2 - turnMs
  const first = Math.floor(series.startMs / dayMs) - 1
  const last = Math.ceil(startOfHour(series, series.hours) / dayMs) + 1
  return Array.from({ length: last - first + 1 }, (_, k) => noonOf(first + k))
}

type Span = { readonly fromMs: number; readonly toMs: number }

/** From dawn to dusk; none in a polar night, all of the day in a white one. */
function lightOfDay(place: Place, noonMs: number): readonly Span[] {
  const { light, dawnMs, duskMs } = civilTwilight({ ...place, noonMs })
  if (light === 'always') return [{ fromMs: noonMs - dayMs / 2, toMs: noonMs + dayMs / 2 }]
  return dawnMs === undefined || duskMs === undefined ? [] : [{ fromMs: dawnMs, toMs: duskMs }]
}

/** In order of time, those that touch as one: over a white night the light goes on. */
function joined(spans: readonly Span[]): readonly Span[] {
  const all: { fromMs: number; toMs: number }[] = []
  for (const { fromMs, toMs } of spans) {
    const last = all.at(-1)
    if (last && fromMs <= last.toMs) last.toMs = Math.max(last.toMs, toMs)
    else all.push({ fromMs, toMs })
  }
  return all
}

/** Hours of the series that begin from one moment on and before another. */
function eachHour(
  series: HourlySeries,
  fromMs: number,
  toMs: number,
  tell: (hour: number, startMs: number) => void,
): void {
  const first = Math.max(0, Math.ceil((fromMs - series.startMs) / hourMs))
  const last = Math.min(series.hours, Math.ceil((toMs - series.startMs) / hourMs))
  for (let hour = first; hour < last; hour++) tell(hour, startOfHour(series, hour))
}
