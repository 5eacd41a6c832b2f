/**
 * What stands over the boat and what it does to air, wind and skin: a first, plain model. Every figure here
 * is assumed and says so; a heat balance of the skin takes its place later.
 */
import type { Note } from '#core/note'
import { relativeHumidity } from './dew-point.ts'
import { dewPoints } from './dew-points.ts'
import { lagged } from './lagged.ts'
import type { HourlyColumn, HourlySeries } from './series.ts'

/** As the job document names them. */
export type Shelter = 'open' | 'cover' | 'open-sided shed' | 'shed' | 'heated shed'

export type ShelterFigures = {
  /** Rain and the night sky reach the surface. */
  readonly openToSky: boolean
  /** Wind at the hull as a share of the wind 10 m up. */
  readonly windShare: number
  /** Time constant with which the air inside follows the air outside, h. */
  readonly airLagHours: number
  /** Time constant with which the skin follows the air around it, h. */
  readonly surfaceLagHours: number
  /** How far a clear night sky takes the skin below the air, K. */
  readonly nightDropK: number
}

const shed: ShelterFigures = {
  openToSky: false,
  windShare: 0,
  airLagHours: 3,
  surfaceLagHours: 3,
  nightDropK: 0,
}

/**
 * Assumed. Night drop: open 6 K, the middle of 4 to 8 K worked for an insulated skin (emittance 0.9, film
 * 3 to 10 W/(m² K)) under Berdahl and Martin's clear sky (1984), an upper bound for a thick skin; a metal roof
 * is seen up to 5 K below air (New Zealand roofing code). Under a cloth or an open roof 1 K, the middle of
 * 0 to 2 K. Wind: the full hourly mean 10 m up for an open hull, since gusts make up for the lee near the
 * ground; half under a cloth, none behind walls. Lags: a steel shed and a boat in it, 3 h each.
 */
export const shelters: Readonly<Record<Shelter, ShelterFigures>> = {
  open: { openToSky: true, windShare: 1, airLagHours: 0, surfaceLagHours: 0, nightDropK: 6 },
  cover: { openToSky: false, windShare: 0.5, airLagHours: 0, surfaceLagHours: 0, nightDropK: 1 },
  'open-sided shed': { openToSky: false, windShare: 1, airLagHours: 0, surfaceLagHours: 0, nightDropK: 1 },
  shed,
  'heated shed': shed,
}

/**
 * Air, humidity and wind at the boat under a shelter.
 * @param at.series weather outside. @param at.shelter what is over the boat; loose parts kept indoors are in a
 * `shed`.
 * @returns a series of the same hours. Air inside follows the air outside with a first-order lag (which also
 * damps its swing); it holds as much water as the air outside, so its dew point is the outside one and its
 * humidity is worked again, at most 1. Rain, cloud and sun stay as outside. A heated shed is taken as unheated.
 */
export function airUnder(at: { readonly series: HourlySeries; readonly shelter: Shelter }): HourlySeries {
  const { series } = at
  const figures = shelters[at.shelter]
  const wind = windUnder(series, figures)
  const sheltered =
    figures.airLagHours > 0 ? { ...series, ...airInside(series, figures.airLagHours) } : series
  return wind === undefined ? sheltered : { ...sheltered, windMps: wind }
}

function windUnder(series: HourlySeries, figures: ShelterFigures): HourlyColumn | undefined {
  if (figures.windShare === 0) return new Float64Array(series.hours)
  if (figures.windShare === 1 || series.windMps === undefined) return series.windMps
  return Float64Array.from(series.windMps, (windMps) => windMps * figures.windShare)
}

function airInside(series: HourlySeries, lagHours: number): Pick<HourlySeries, 'airC' | 'humidityShare'> {
  const airC = lagged({ column: series.airC, lagHours })
  // Math.min keeps NaN, so unknown stays unknown.
  const humidityShare = dewPoints(series).map((dewC, hour) =>
    Math.min(1, relativeHumidity({ airC: airC[hour]!, dewC })),
  )
  return { airC, humidityShare }
}

/** What `airUnder` and `surfaceTemperature` assume for a shelter, to be shown beside their results. */
export function shelterNotes(shelter: Shelter): readonly Note[] {
  const { openToSky: _open, ...figures } = shelters[shelter]
  const assumed: Note = {
    code: 'climate.shelterAssumed',
    severity: 'assumed',
    data: { shelter, ...figures },
    source: 'assumed',
  }
  const heating: Note = { code: 'climate.heatingLeftOut', severity: 'uncovered', data: { shelter } }
  return shelter === 'heated shed' ? [assumed, heating] : [assumed]
}
