/** How warm a cloth or a roof over the boat is, and what heat it sends down onto what stands under it. */
import type { HourlyColumn, HourlySeries } from '../series.ts'
import type { Shelter } from '../shelter.ts'
import { usualFilm } from './film.ts'
import { paintEmittance } from './paint-colours.ts'
import { kelvin, stefanBoltzmann } from './radiation.ts'
import { skinTemperature } from './skin-temperature.ts'

export type Roof = {
  /** Share of the sun that it takes in, 0..1. */
  readonly absorptance: number
  /** Heat that it stores, J/(m² K). */
  readonly storesJm2K: number
  /** W/(m² K) from it to air and boat below. */
  readonly belowWm2K: number
  /** Share of a level deck's view upwards that it fills, 0..1. */
  readonly viewShare: number
  /** The rest of that view is open sky; under a roof with walls it is walls, as warm as the air. */
  readonly restIsSky: boolean
}

/**
 * W/(m² K) downwards: 5 to still air and 5 by radiation between surfaces near 10 °C (4 e σ T³). Assumed.
 */
const belowWm2K = 10

/**
 * Assumed light for cloth and roof alike, whatever their colour: nobody asks for it, and a darker one would only make the skin
 * warmer by day, which is the side that lets a coat onto a wet skin.
 */
const absorptance = 0.3

const steel: Roof = {
  absorptance,
  // 0.6 mm of steel, 7850 kg/m³ and 460 J/(kg K).
  storesJm2K: 2200,
  belowWm2K,
  viewShare: 0.5,
  restIsSky: false,
}

/**
 * Assumed. A tarpaulin of 0.5 kg/m² and 1500 J/(kg K) fills the whole view of the deck; a roof on posts
 * leaves the low third of the sky, as in `shelterLight`; of a shed the roof is half of what the boat sees.
 */
export const roofs: Readonly<Record<Exclude<Shelter, 'open'>, Roof>> = {
  cover: { absorptance, storesJm2K: 750, belowWm2K, viewShare: 1, restIsSky: false },
  'open-sided shed': { ...steel, viewShare: 0.7, restIsSky: true },
  shed: steel,
  'heated shed': steel,
}

/**
 * Temperature of the roof at the start of each hour, °C: the balance of `skinTemperature` under the whole sky.
 * @param over.series weather outside. @param over.lightWm2 on level ground, mean over each hour.
 * @param over.skyHeatWm2 what `skyHeats` gives. @param over.airUnderC below it, °C at the start of each hour.
 */
export function roofTemperature(
  roof: Roof,
  over: {
    readonly series: HourlySeries
    readonly lightWm2: HourlyColumn
    readonly skyHeatWm2: HourlyColumn
    readonly airUnderC: HourlyColumn
  },
): Float64Array {
  return skinTemperature({
    series: over.series,
    lightWm2: over.lightWm2,
    skyHeatWm2: over.skyHeatWm2,
    skyShare: 1,
    absorptance: roof.absorptance,
    emittance: paintEmittance,
    film: usualFilm,
    build: { storesJm2K: roof.storesJm2K, backWm2K: roof.belowWm2K },
    backC: over.airUnderC,
  })
}

/**
 * Heat from above on a level deck at the start of each hour, W/m²: from the roof as a black body, since what it does not
 * send out it throws back of a deck about as warm, and from the sky beside it.
 * @param from.roofC °C. @param from.skyHeatWm2 what `skyHeats` gives. @param from.airC for walls.
 * Equation: v σ T⁴ + (1 - v) rest, v the share of the view.
 */
export function heatFromAbove(
  { viewShare, restIsSky }: Roof,
  from: { readonly roofC: HourlyColumn; readonly skyHeatWm2: HourlyColumn; readonly airC: HourlyColumn },
): Float64Array {
  return Float64Array.from(from.roofC, (roofC, hour) => {
    const rest = restIsSky ? from.skyHeatWm2[hour]! : blackWm2(from.airC[hour]!)
    return viewShare * blackWm2(roofC) + (1 - viewShare) * rest
  })
}

const blackWm2 = (surfaceC: number): number => stefanBoltzmann * (surfaceC + kelvin) ** 4
