/** How warm the skin of each place of a boat in the open is, hour by hour: sun, sky, wind and laminate. */
import {
  coredSkin,
  type Face,
  type HourlySeries,
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
import type { PlaceFaces } from './place-faces.ts'

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
export function buildOf(place: OpenPlace, laminate: Laminate): SkinBuild {
  const cored = place === 'deck' ? laminate !== 'solid' : laminate === 'cored throughout'
  if (cored) return coredSkin({ outerM, coreM, core: 'balsa', innerM, behind: 'bare' })
  return solidSkin({ thicknessM: place === 'bottom' ? bottomM : sideM, behind: 'bare' })
}

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
}

/** Skin of one place at the start of each hour, °C; of both sides the colder of the two. */
export const openSkin = (place: OpenPlace): Stage<OpenSkinInput, Float64Array> => ({
  name: `skin ${place}`,
  run: (input) => {
    if (place !== 'sides') return skinOf(place, input)
    const starboard = skinOf('starboard', input)
    return skinOf('port', input).map((skinC, hour) => Math.min(skinC, starboard[hour]!))
  },
  fresh: true,
})

/** Skin of one side at the start of each hour, °C. */
export function skinOf(place: Exclude<OpenPlace, 'sides'>, input: OpenSkinInput): Float64Array {
  return skinTemperature({ ...skinQuestion(place, input), absorptance: workedAbsorptance })
}

/** All that makes the skin of one place as warm as it is, but for its colour. */
export function skinQuestion(
  place: Exclude<OpenPlace, 'sides'>,
  input: OpenSkinInput,
): Omit<SkinQuestion, 'absorptance'> {
  const { weather, sky } = input
  const faces = facesOf(place, input)
  return {
    series: weather,
    lightWm2: lightOf(place, input, faces),
    skyHeatWm2: sky.skyHeatWm2,
    skyShare: faces.reduce((sum, face) => sum + face.share * skyView(Math.cos(face.tilt)), 0),
    emittance: paintEmittance,
    film: usualFilm,
    build: buildOf(place, input.laminate),
    backC: weather.airC,
  }
}

/** Which ways the surface of a place looks over the ground. */
export const facesOf = (
  place: Exclude<OpenPlace, 'sides'>,
  { faces, bowBearing }: OpenSkinInput,
): readonly Face[] =>
  faces[place].map(({ normalAzimuth, tilt, share }) => ({
    bearing: (bowBearing?.value ?? 0) + normalAzimuth,
    tilt,
    share,
  }))

/** Where nobody knows which way the bow points, only the deck has sun: the sides have the sky's light alone. */
function lightOf(
  place: OpenPlace,
  { weather, sky, bowBearing }: OpenSkinInput,
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
      light: light ? mostOf(light.from) : 'none',
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
const mostOf = (from: SkyLight['from']): string =>
  Object.entries(from).reduce((most, one) => (one[1] > most[1] ? one : most))[0]
