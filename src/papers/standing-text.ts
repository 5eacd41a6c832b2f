/** How the boat stands, in a sentence. */
import type { Standing } from '#plan'
import type { Words } from '#words'

/** Trim, heel, height and how well the marks agree. Angles in rad, lengths in m. */
export const standingText = (
  { trimRad, heelRad, heightM, rmsM, over }: NonNullable<Standing['fit']>,
  words: Pick<Words, 'sentence'>,
): string =>
  words.sentence('boat.standing', {
    trimRad: Math.abs(trimRad),
    bow: trimRad < 0 ? 'down' : 'up',
    heelRad: Math.abs(heelRad),
    // She leans to the side that is lower.
    side: heelRad < 0 ? 'port' : 'starboard',
    heightByTapeM: heightM,
    over,
    rmsByTapeM: rmsM,
  })
