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

/** Even sections of about what a crew rolls before it tips, over the length that this pour covers. */
function sectionsOf(
  { runs, pace, crew }: Coat,
  { stretches }: ChainedPour,
  { sectionM, sectionAloneM }: Known,
): Pick<LayingOff, 'sections'> {
  const [first] = stretches
  const run = first && runs[first.run]
  if (!first || !run?.lengthM || run.area <= 0) return {}
  const lengthM = (run.lengthM * first.area) / run.area
  const count = Math.max(1, Math.round(lengthM / (crew > 1 ? sectionM : sectionAloneM).value))
  return { sections: { count, widthM: lengthM / count, minutes: first.area / pace / count } }
}
