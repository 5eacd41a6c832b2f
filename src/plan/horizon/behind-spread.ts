/** How far apart the days like each date lie: of air, dew and wind at the boat, hour by hour behind the horizon. */
import {
  airUnder,
  countOfLikeDays,
  dewPoints,
  type HourlyColumn,
  type HourlySeries,
  hourMs,
  hourOfYear,
  likeDayCount,
  type Shed,
  type ShelterAir,
  spreadOfLikeDays,
} from '#core/climate'
import type { Work } from '#job'
import { openSky } from '../skins/open-skin.ts'
import type { Horizon } from '../types.ts'
import { ofYear, yearRound } from './like-days.ts'

/** The 10th, 50th and 90th percentile of each hour; NaN where it is not known. */
export type HourSpread = {
  readonly low: readonly number[]
  readonly middle: readonly number[]
  readonly high: readonly number[]
}

export type BehindSpread = Horizon & {
  /** Of the typical year, in one line; empty where it does not say. */
  readonly source: string
  /** The columns begin here: the first full hour behind the horizon. */
  readonly firstMinute: number
  /** How many days of the typical year are like each date. */
  readonly likeDays: number
  readonly airC: HourSpread
  readonly dewC: HourSpread
  /** At the boat, under its shelter. */
  readonly windMps: HourSpread
  /** On how many of the like days rain falls in that hour; empty where the typical year does not tell rain. */
  readonly rainOnDays: readonly number[]
}

/** @param of.series the weather of the plan on its dates. */
export function behindSpread(of: {
  readonly series: HourlySeries
  readonly year: HourlySeries
  readonly horizon: Horizon
  /** Where a logger told of it, and the place for its sun. */
  readonly air?: ShelterAir | undefined
  readonly place: Work['place']
  /** Heater, doors and floor over the hours of a weather. */
  readonly shedOver: (weather: HourlySeries) => Shed | undefined
}): BehindSpread {
  const { series, year, horizon, air, place, shedOver } = of
  const first = Math.round((horizon.forecastUntilMinute * 60_000 - series.startMs) / hourMs)
  const hourAt = hourOfYear(year.startMs)
  const from = Array.from({ length: series.hours - first }, (_, hour) =>
    hourAt(series.startMs + (first + hour) * hourMs),
  )
  const round = yearRound.run({ year })
  const sunWm2 = air && openSky.run({ weather: round, place }).light?.globalWm2
  const inside = airUnder({ series: round, shelter: place.shelter, air, sunWm2, shed: shedOver(round) })
  const over = (column: HourlyColumn | undefined): HourSpread => {
    const { low, middle, high } = spreadOfLikeDays(ofYear(Array.from(column ?? [])))
    const laid = (ring: Float64Array) => from.map((hour) => ring[hour]!)
    return { low: laid(low), middle: laid(middle), high: laid(high) }
  }
  const rain = year.rainMm && countOfLikeDays((hour) => (year.rainMm?.[hour] ?? 0) > 0)
  return {
    ...horizon,
    source: year.source,
    firstMinute: series.startMs / 60_000 + first * 60,
    likeDays: likeDayCount,
    airC: over(inside.airC),
    dewC: over(dewPoints(inside)),
    windMps: over(inside.windMps),
    rainOnDays: rain ? from.map((hour) => rain[hour]!) : [],
  }
}

export type HourOrigin = 'forecast' | 'blended' | 'typical'

/** Which of the two an hour is from, by the minute it begins; all are of the forecast where there is no horizon. */
export function originOf(horizon: Horizon | undefined, minute: number): HourOrigin {
  if (!horizon || minute < horizon.forecastUntilMinute) return 'forecast'
  return minute < horizon.typicalFromMinute ? 'blended' : 'typical'
}
