/**
 * What stands over the boat and what it does to air and wind. Every figure here is assumed and says so; what it does to
 * sun, sky and skin is in `shelterLight` and `roofs`.
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
  /** Time constant with which the air inside the boat follows the air around it, h. */
  readonly boatLagHours: number
}

const shed: ShelterFigures = {
  openToSky: false,
  windShare: 0,
  airLagHours: 3,
  boatLagHours: 3,
}

/**
 * Assumed. Wind: the full hourly mean 10 m up for an open hull, since gusts make up for the lee near the
 * ground; half under a cloth, none behind walls. Lags: a steel shed and a boat in it, 3 h each.
 */
export const shelters: Readonly<Record<Shelter, ShelterFigures>> = {
  open: { openToSky: true, windShare: 1, airLagHours: 0, boatLagHours: 0 },
  cover: { openToSky: false, windShare: 0.5, airLagHours: 0, boatLagHours: 0 },
  'open-sided shed': { openToSky: false, windShare: 1, airLagHours: 0, boatLagHours: 0 },
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

/** What `airUnder` assumes for a shelter, to be shown beside their results. */
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
