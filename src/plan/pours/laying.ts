/** Sections of a pour: how many along the run, how long each may take, and how long the edge waits for the next. */
import type { ChainedPour } from '#core/coating'
import type { Known } from '../known.ts'
import type { LayingOff } from '../types.ts'
import type { Coat } from './coat.ts'

export function layingOf(coat: Coat, pour: ChainedPour, known: Known): LayingOff {
  const { crew, sunny, shows } = coat
  return {
    crew,
    sunny,
    overlapM: known.tipOverlapM.value,
    floor: coat.floorAt(pour.from),
    // What shows no lap is not laid section by section.
    ...(shows ? { ...sectionsOf(coat, pour, known), edgeMinutes: coat.wetEdgeAt(pour.from) } : {}),
  }
}

/** Even sections of about what a crew rolls before it tips, over the length of all that this pour covers. */
function sectionsOf(
  { runs, pace, crew }: Coat,
  { stretches }: ChainedPour,
  { sectionM, sectionAloneM }: Known,
): Pick<LayingOff, 'sections'> {
  const lengths = stretches.map(({ run, area }) => {
    const { lengthM, area: whole } = runs[run]!
    return lengthM && whole > 0 ? (lengthM * area) / whole : Number.NaN
  })
  const lengthM = lengths.reduce((sum, length) => sum + length, 0)
  if (!(lengthM > 0)) return {}
  const usualM = (crew > 1 ? sectionM : sectionAloneM).value
  const count = lengths.reduce((sum, length) => sum + Math.max(1, Math.round(length / usualM)), 0)
  const areaM2 = stretches.reduce((sum, { area }) => sum + area, 0)
  return { sections: { count, widthM: lengthM / count, minutes: areaM2 / pace / count } }
}
