/** How warm the skin of each place of a boat in the open is, hour by hour: sun, sky, wind and laminate. */
import {
  type Behind,
  behindLagHours,
  coredSkin,
  type Face,
  type HourlyColumn,
  type HourlySeries,
  lagged,
  lightOn,
  paintEmittance,
  type SkinBuild,
  type SkinQuestion,
  type SkyLight,
  shelterLight,
  skinTemperature,
  skyHeats,
  skyLight,
  skyView,
  solidSkin,
  usualAlbedo,
  usualFilm,
} from '#core/climate'
import type { Note } from '#core/note'
import type { Work } from '#job'
import type { Stage } from '../remember.ts'
import type { OpenPlace } from '../types.ts'
import { type BehindOf, behindAt } from './behind-skins.ts'
import type { FacedPlace, PlaceFaces } from './place-faces.ts'
import { leastOf } from './span-of.ts'

/**
 * Between coats a hull is white, cream or grey: filler, primer, undercoat. Taken as light, which errs to the cold and so
 * to the wet side. Assumed.
 */
export const workedAbsorptance = 0.3

/** Laminates of small boats, m. Assumed. */
const sideM = 0.007
const bottomM = 0.012
const outerM = 0.004
const coreM = 0.012
const innerM = 0.003

type Laminate = Work['boat']['laminate']

/** Of a boat nobody has said how it is built, the deck is cored. */
export function buildOf(place: OpenPlace, laminate: Laminate, behind: Behind): SkinBuild {
  const cored = place === 'deck' ? laminate !== 'solid' : laminate === 'cored throughout'
  if (cored) return coredSkin({ outerM, coreM, core: 'balsa', innerM, behind })
  return solidSkin({ thicknessM: place === 'bottom' ? bottomM : sideM, behind })
}

/** Temperature behind a skin at the start of each hour, °C. @param boatC air in the boat. */
export const backOf = (boatC: HourlyColumn, behind: Behind): HourlyColumn =>
  lagged({ column: boatC, lagHours: behindLagHours[behind] })

export type OpenSky = {
  /** Absent where nobody knows where the boat stands: then no sun warms it. */
  readonly light?: SkyLight
  readonly skyHeatWm2: Float64Array
}

type SkyInput = { readonly weather: HourlySeries; readonly place: Work['place'] }

/** Sun and sky over the boat, once for all its places. */
export const openSky: Stage<SkyInput, OpenSky> = {
  name: 'skin sky',
  run: ({ weather, place: { latitude, longitude } }) => ({
    ...(latitude && longitude
      ? {
          light: skyLight({
            series: weather,
            place: { latitude: latitude.value, longitude: longitude.value },
          }),
        }
      : {}),
    skyHeatWm2: skyHeats(weather),
  }),
  fresh: true,
}

export type OpenSkinInput = {
  readonly weather: HourlySeries
  readonly sky: OpenSky
  readonly faces: PlaceFaces
  readonly bowBearing: Pick<NonNullable<Work['place']['bowBearing']>, 'value'> | undefined
  readonly laminate: Laminate
  /** What stands behind the skin of each place. */
  readonly behind: BehindOf
}

/** Skin of one place at the start of each hour, °C; where it has several, as both sides do, the coldest of them. */
export const openSkin = (place: OpenPlace): Stage<OpenSkinInput, Float64Array> => ({
  name: `skin ${place}`,
  run: (input) => leastOf(skinsOf(place, { ...input, absorptance: workedAbsorptance })),
  fresh: true,
})

/** The skins of a place, °C: of each side that it takes in, and of each thing that stands behind a part of it. */
export function skinsOf(
  place: OpenPlace,
  input: OpenSkinInput & { readonly absorptance: number },
): readonly Float64Array[] {
  const sides = place === 'sides' ? (['port', 'starboard'] as const) : [place]
  return sides.flatMap((side) => {
    const lit = litPlace(side, input)
    return behindAt(input.behind, side).map((behind) =>
      skinTemperature({ ...lit, ...backed(side, input, behind), absorptance: input.absorptance }),
    )
  })
}

/** All that makes the skin of one place as warm as it is, but for its colour, where nothing stands behind it. */
export const skinQuestion = (
  place: FacedPlace,
  input: Omit<OpenSkinInput, 'behind'>,
): Omit<SkinQuestion, 'absorptance'> => ({ ...litPlace(place, input), ...backed(place, input, 'bare') })

function litPlace(
  place: FacedPlace,
  input: Omit<OpenSkinInput, 'behind'>,
): Omit<SkinQuestion, 'absorptance' | 'build' | 'backC'> {
  const { weather, sky } = input
  const faces = facesOf(place, input)
  return {
    series: weather,
    lightWm2: lightOf(place, input, faces),
    skyHeatWm2: sky.skyHeatWm2,
    skyShare: faces.reduce((sum, face) => sum + face.share * skyView(Math.cos(face.tilt)), 0),
    emittance: paintEmittance,
    film: usualFilm,
  }
}

const backed = (
  place: FacedPlace,
  { weather, laminate }: Pick<OpenSkinInput, 'weather' | 'laminate'>,
  behind: Behind,
): Pick<SkinQuestion, 'build' | 'backC'> => ({
  build: buildOf(place, laminate, behind),
  backC: backOf(weather.airC, behind),
})

/** Which ways the surface of a place looks over the ground. */
export const facesOf = (
  place: FacedPlace,
  { faces, bowBearing }: Pick<OpenSkinInput, 'faces' | 'bowBearing'>,
): readonly Face[] =>
  faces[place].map(({ normalAzimuth, tilt, share }) => ({
    bearing: (bowBearing?.value ?? 0) + normalAzimuth,
    tilt,
    share,
  }))

/** Where nobody knows which way the bow points, only the deck has sun: the sides have the sky's light alone. */
function lightOf(
  place: OpenPlace,
  { weather, sky, bowBearing }: Omit<OpenSkinInput, 'behind'>,
  faces: readonly Face[],
): Float64Array {
  if (!sky.light) return new Float64Array(weather.hours)
  const sunKnown = place === 'deck' || bowBearing !== undefined
  const under = sunKnown ? shelterLight.open : { ...shelterLight.open, beamShare: 0 }
  return lightOn(sky.light, { faces, albedo: usualAlbedo, under })
}

/** What the skins of a boat in the open take for granted. */
export function openSkinNotes({ light }: OpenSky, { bowBearing }: Work['place']): readonly Note[] {
  const assumed: Note = {
    code: 'conditions.openSkin',
    severity: 'assumed',
    data: {
      light: light ? usualOrigin(light.from) : 'none',
      absorbedShare: workedAbsorptance,
      thicknessMm: 1000 * sideM,
      groundShare: usualAlbedo,
    },
    source: 'assumed',
  }
  const bow: Note = { code: 'conditions.bowUnknown', severity: 'missing', data: {} }
  return bowBearing || !light ? [assumed] : [assumed, bow]
}

/** What most hours of daylight were worked from. */
const usualOrigin = (from: SkyLight['from']): string =>
  Object.entries(from).reduce((most, one) => (one[1] > most[1] ? one : most))[0]
