/** Where the sun stands on a place of a boat in the open, and the warmer skin of one that looks two ways. */
import { beamOnFaces } from '#core/climate'
import type { Stage } from '../remember.ts'
import type { OpenPlace } from '../types.ts'
import { facesOf, type OpenSkinInput, skinOf } from './open-skin.ts'

export type OpenSun = {
  /** W/m², mean over each hour; of both sides the brighter. Absent where nobody knows where the sun stands. */
  readonly beamWm2?: Float64Array
  /** °C; only of both sides, where `openSkin` is the colder of the two. */
  readonly warmestC?: Float64Array
}

export const openSun = (place: OpenPlace): Stage<OpenSkinInput, OpenSun> => ({
  name: `skin sun ${place}`,
  run: (input) => {
    if (place !== 'sides') return sunOn(place, input)
    const [port, starboard] = [sunOn('port', input), sunOn('starboard', input)]
    return {
      ...(port.beamWm2 && starboard.beamWm2 ? { beamWm2: larger(port.beamWm2, starboard.beamWm2) } : {}),
      warmestC: larger(skinOf('port', input), skinOf('starboard', input)),
    }
  },
  fresh: true,
})

/** The sides of a boat whose bow points nobody knows where have no sun that is known. */
function sunOn(place: Exclude<OpenPlace, 'sides'>, input: OpenSkinInput): Pick<OpenSun, 'beamWm2'> {
  const { light } = input.sky
  if (!light || (place !== 'deck' && input.bowBearing === undefined)) return {}
  return { beamWm2: beamOnFaces(light, facesOf(place, input)) }
}

const larger = (a: Float64Array, b: Float64Array): Float64Array =>
  a.map((value, hour) => Math.max(value, b[hour]!))
