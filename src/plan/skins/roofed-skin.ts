/** How warm the skin of a boat under a cloth or a roof is, hour by hour: the same balance as in the open. */
import {
  type Behind,
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
import { type BehindOf, behindAt } from './behind-skins.ts'
import { backOf, buildOf, type OpenSky, workedAbsorptance } from './open-skin.ts'
import { leastOf } from './span-of.ts'

type RoofInput = {
  readonly weather: HourlySeries
  /** Air under the roof. */
  readonly inside: HourlySeries
  readonly sky: OpenSky
  readonly shelter: Exclude<Shelter, 'open'>
  readonly laminate: Work['boat']['laminate']
}

export type RoofedSkinInput = RoofInput & { readonly behind: BehindOf }

/**
 * Skin under a roof at the start of each hour, °C. The boat as a whole is told by its level deck or by an upright side,
 * whichever is colder: the deck by night, since it sees the roof alone, a side by day. Loose parts indoors are such a side,
 * a bare laminate.
 */
export const roofedSkin = (name: 'boat' | 'indoors'): Stage<RoofedSkinInput, Float64Array> => ({
  name: `skin ${name}`,
  run: (input) => {
    const under = underRoof(input)
    const parts = name === 'indoors' ? (['side'] as const) : (['deck', 'side'] as const)
    const kinds = behindAt(input.behind, name)
    return leastOf(parts.flatMap((part) => kinds.map((behind) => skinOf(part, input, { ...under, behind }))))
  },
  fresh: true,
})

type Under = {
  /** Heat from roof and sky on a level deck, W/m². */
  readonly aboveWm2: Float64Array
  /** Air in the boat, °C. */
  readonly boatC: Float64Array
}

function underRoof({ weather, inside, sky, shelter }: RoofInput): Under {
  const roofC = roofTemperature(roofs[shelter], {
    series: weather,
    lightWm2: sky.light?.globalWm2 ?? new Float64Array(weather.hours),
    skyHeatWm2: sky.skyHeatWm2,
    airUnderC: inside.airC,
  })
  return {
    aboveWm2: heatFromAbove(roofs[shelter], { roofC, skyHeatWm2: sky.skyHeatWm2, airC: inside.airC }),
    boatC: lagged({ column: inside.airC, lagHours: shelters[shelter].boatLagHours }),
  }
}

/** Ways that the parts of a boat look; the bottom as in `usualFaces`. */
const looks = { deck: 0, side: Math.PI / 2, bottom: (5 * Math.PI) / 6 } as const
type RoofedPart = keyof typeof looks

export type RoofedPartHours = { readonly skinC: Float64Array; readonly lightWm2: Float64Array }

/**
 * Skin and light of each part under a roof, hour by hour. All upright sides are alike, whichever way they look: what light
 * gets in comes from everywhere.
 */
export function roofedParts(input: RoofInput): Readonly<Record<RoofedPart, RoofedPartHours>> {
  const under = underRoof(input)
  const of = (part: RoofedPart) => ({
    skinC: skinOf(part, input, { ...under, behind: 'bare' }),
    lightWm2: lightOf(part, input),
  })
  return { deck: of('deck'), side: of('side'), bottom: of('bottom') }
}

/** No shelter lets the sun itself through, so it is all one which way the side looks. */
function lightOf(part: RoofedPart, { inside, sky, shelter }: RoofInput): Float64Array {
  const faces = [{ bearing: 0, tilt: looks[part], share: 1 }]
  return sky.light
    ? lightOn(sky.light, { faces, albedo: usualAlbedo, under: shelterLight[shelter] })
    : new Float64Array(inside.hours)
}

function skinOf(
  part: RoofedPart,
  input: RoofInput,
  { aboveWm2, boatC, behind }: Under & { readonly behind: Behind },
): Float64Array {
  const { inside, laminate } = input
  return skinTemperature({
    series: inside,
    lightWm2: lightOf(part, input),
    skyHeatWm2: aboveWm2,
    skyShare: skyView(Math.cos(looks[part])),
    absorptance: workedAbsorptance,
    emittance: paintEmittance,
    film: usualFilm,
    build: buildOf(part === 'side' ? 'port' : part, laminate, behind),
    backC: backOf(boatC, behind),
  })
}
