/** How warm the skin of a boat under a cloth or a roof is, hour by hour: the same balance as in the open. */
import {
  type HourlySeries,
  heatFromAbove,
  lagged,
  lightOn,
  paintEmittance,
  roofs,
  roofTemperature,
  type Shelter,
  shelterLight,
  shelters,
  skinTemperature,
  skyView,
  usualAlbedo,
  usualFilm,
} from '#core/climate'
import type { Work } from '#job'
import type { Stage } from '../remember.ts'
import { buildOf, type OpenSky, workedAbsorptance } from './open-skin.ts'

export type RoofedSkinInput = {
  readonly weather: HourlySeries
  /** Air under the roof. */
  readonly inside: HourlySeries
  readonly sky: OpenSky
  readonly shelter: Exclude<Shelter, 'open'>
  readonly laminate: Work['boat']['laminate']
}

/**
 * Skin under a roof at the start of each hour, °C. The boat as a whole is told by its level deck or by an upright side,
 * whichever is colder: the deck by night, since it sees the roof alone, a side by day. Loose parts indoors are such a side,
 * a bare laminate.
 */
export const roofedSkin = (name: 'boat' | 'indoors'): Stage<RoofedSkinInput, Float64Array> => ({
  name: `skin ${name}`,
  run: (input) => {
    const { weather, inside, sky, shelter } = input
    const roofC = roofTemperature(roofs[shelter], {
      series: weather,
      lightWm2: sky.light?.globalWm2 ?? new Float64Array(weather.hours),
      skyHeatWm2: sky.skyHeatWm2,
      airUnderC: inside.airC,
    })
    const under = {
      aboveWm2: heatFromAbove(roofs[shelter], { roofC, skyHeatWm2: sky.skyHeatWm2, airC: inside.airC }),
      boatC: lagged({ column: inside.airC, lagHours: shelters[shelter].boatLagHours }),
    }
    const sideC = skinOf('side', input, under)
    if (name === 'indoors') return sideC
    return skinOf('deck', input, under).map((deckC, hour) => Math.min(deckC, sideC[hour]!))
  },
  fresh: true,
})

type Under = {
  /** Heat from roof and sky on a level deck, W/m². */
  readonly aboveWm2: Float64Array
  /** Air in the boat, °C. */
  readonly boatC: Float64Array
}

const looks = { deck: 0, side: Math.PI / 2 } as const

function skinOf(part: 'deck' | 'side', input: RoofedSkinInput, { aboveWm2, boatC }: Under): Float64Array {
  const { inside, sky, shelter, laminate } = input
  const faces = [{ bearing: 0, tilt: looks[part], share: 1 }]
  return skinTemperature({
    series: inside,
    // No shelter lets the sun itself through, so it is all one which way the side looks.
    lightWm2: sky.light
      ? lightOn(sky.light, { faces, albedo: usualAlbedo, under: shelterLight[shelter] })
      : new Float64Array(inside.hours),
    skyHeatWm2: aboveWm2,
    skyShare: skyView(Math.cos(looks[part])),
    absorptance: workedAbsorptance,
    emittance: paintEmittance,
    film: usualFilm,
    build: buildOf(part === 'deck' ? 'deck' : 'port', laminate),
    backC: boatC,
  })
}
