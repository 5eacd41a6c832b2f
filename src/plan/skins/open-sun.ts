/** Where the sun stands on a place of a boat in the open, and the warmer skin of one that looks two ways. */
import { beamOnFaces } from '#core/climate'
import type { Stage } from '../remember.ts'
import type { OpenPlace } from '../types.ts'
import { facesOf, type OpenSkinInput, skinsOf, workedAbsorptance } from './open-skin.ts'
import type { FacedPlace } from './place-faces.ts'
import { mostOf } from './span-of.ts'

export type OpenSun = {
  /** W/m², mean over each hour; of both sides the brighter. Absent where nobody knows where the sun stands. */
  readonly beamWm2?: Float64Array
  /** °C; only of a place with several skins, of which `openSkin` is the coldest. */
  readonly warmestC?: Float64Array
}

export const openSun = (place: OpenPlace): Stage<OpenSkinInput, OpenSun> => ({
  name: `skin sun ${place}`,
  run: (input) => ({ ...beamOn(place, input), ...warmestOf(place, input) }),
  fresh: true,
})

function warmestOf(place: OpenPlace, input: OpenSkinInput): Pick<OpenSun, 'warmestC'> {
  const skins = skinsOf(place, { ...input, absorptance: workedAbsorptance })
  return skins.length > 1 ? { warmestC: mostOf(skins) } : {}
}

/** The warmest skin of a place in a colour that takes in more of the sun than the usual light one, °C. */
export const darkSkin = (place: OpenPlace, absorptance: number): Stage<OpenSkinInput, Float64Array> => ({
  name: `skin dark ${place} ${absorptance}`,
  run: (input) => mostOf(skinsOf(place, { ...input, absorptance })),
  fresh: true,
})

function beamOn(place: OpenPlace, input: OpenSkinInput): Pick<OpenSun, 'beamWm2'> {
  if (place !== 'sides') return sunOn(place, input)
  const [port, starboard] = [sunOn('port', input), sunOn('starboard', input)]
  return port.beamWm2 && starboard.beamWm2 ? { beamWm2: mostOf([port.beamWm2, starboard.beamWm2]) } : {}
}

/** The sides of a boat whose bow points nobody knows where have no sun that is known. */
function sunOn(place: FacedPlace, input: OpenSkinInput): Pick<OpenSun, 'beamWm2'> {
  const { light } = input.sky
  if (!light || (place !== 'deck' && input.bowBearing === undefined)) return {}
  return { beamWm2: beamOnFaces(light, facesOf(place, input)) }
}
