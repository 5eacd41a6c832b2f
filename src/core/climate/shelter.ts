/**
 * What stands over the boat and what it does to air and wind. Every figure here is assumed and says so; what it does to
 * sun, sky and skin is in `shelterLight` and `roofs`.
 */
import type { Note } from '#core/note'
import type { HourlyColumn, HourlySeries } from './series.ts'
import { type Shed, shedAir } from './shed/shed-air.ts'
import { airInside, type ShelterAir } from './shelter-air.ts'

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

/** What is assumed of a shelter's air: its lag, no sun, and no more water than outside. */
export const assumedAir = (shelter: Shelter): ShelterAir => ({
  airLagHours: shelters[shelter].airLagHours,
  sunKPerWm2: 0,
  waterKgM3: 0,
})

export type UnderShelter = {
  /** Weather outside. */
  readonly series: HourlySeries
  /** What is over the boat; loose parts kept indoors are in a `shed`. */
  readonly shelter: Shelter
  /** What a logger in it told; else it is assumed. */
  readonly air?: ShelterAir | undefined
  /** Sun and sky on level ground, mean over each hour, W/m²; where nobody knows, no sun warms the air. */
  readonly sunWm2?: HourlyColumn | undefined
  /** Heater, doors and floor of a shed of which they are known. */
  readonly shed?: Shed | undefined
}

/**
 * Air, humidity and wind at the boat under a shelter.
 * @returns a series of the same hours. As assumed, air inside follows the air outside with a first-order lag (which also
 * damps its swing); it holds as much water as the air outside, so its dew point is the outside one and its
 * humidity is worked again, at most 1. Rain, cloud and sun stay as outside. A shed of which more is known is worked by
 * `shedAir`.
 */
export function airUnder({ series, shelter, air, sunWm2, shed }: UnderShelter): HourlySeries {
  const figures = shelters[shelter]
  const wind = windUnder(series, figures)
  const inside = air ?? assumedAir(shelter)
  const isOutside = air === undefined && inside.airLagHours === 0
  const sheltered = isOutside ? series : { ...series, ...insideOf({ series, sunWm2, air: inside, shed }) }
  return wind === undefined ? sheltered : { ...sheltered, windMps: wind }
}

/** Temperature and humidity under a shelter: by its balances where it is a shed of which they are known. */
export function insideOf({ shed, ...under }: Inside & { readonly shed?: Shed | undefined }): Climate {
  if (!shed) return airInside(under)
  const { airC, humidityShare } = shedAir({ ...under, shed })
  return { airC, humidityShare }
}

type Inside = Parameters<typeof airInside>[0]
type Climate = ReturnType<typeof airInside>

function windUnder(series: HourlySeries, figures: ShelterFigures): HourlyColumn | undefined {
  if (figures.windShare === 0) return new Float64Array(series.hours)
  if (figures.windShare === 1 || series.windMps === undefined) return series.windMps
  return Float64Array.from(series.windMps, (windMps) => windMps * figures.windShare)
}

/** What `airUnder` assumes for a shelter, to be shown beside its results. */
export function shelterNote(shelter: Shelter): Note {
  const { openToSky: _open, ...figures } = shelters[shelter]
  return {
    code: 'climate.shelterAssumed',
    severity: 'assumed',
    data: { shelter, ...figures },
    source: 'assumed',
  }
}
