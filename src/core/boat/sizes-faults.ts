/** What is wrong with a set of hull sizes, before anything is drawn from them. */

import type { Note } from '#core/note'
import { fault } from './fault.ts'
import type { HullSizes } from './hull-sizes.ts'

type SizeName = Exclude<keyof HullSizes, 'form'>
type Range = { readonly least: number; readonly most: number }

const degree = Math.PI / 180
const angles: ReadonlySet<SizeName> = new Set(['deadrise', 'deadriseTransom', 'stemRake', 'flare'])

/** Widest ranges that still make a boat; lengths in metres or shares of length and beam, angles in radians. */
const rangeOf = (size: SizeName, { lengthOverall, beam }: HullSizes): Range => {
  const ranges: Record<SizeName, Range> = {
    lengthOverall: { least: 1, most: 100 },
    lengthWaterline: { least: 0.5 * lengthOverall, most: lengthOverall },
    beam: { least: 0.02 * lengthOverall, most: lengthOverall },
    beamTransom: { least: 0, most: beam },
    draft: { least: 0.002 * lengthOverall, most: 0.5 * lengthOverall },
    freeboardStem: { least: 0.01 * lengthOverall, most: 0.5 * lengthOverall },
    freeboardMid: { least: 0.01 * lengthOverall, most: 0.5 * lengthOverall },
    freeboardStern: { least: 0.01 * lengthOverall, most: 0.5 * lengthOverall },
    deadrise: { least: 0, most: 60 * degree },
    deadriseTransom: { least: 0, most: 60 * degree },
    chineBeam: { least: 0.3 * beam, most: beam },
    chineHeight: { least: -0.5 * lengthOverall, most: 0.5 * lengthOverall },
    stemRake: { least: 0, most: 75 * degree },
    flare: { least: -10 * degree, most: 50 * degree },
  }
  return ranges[size]
}

const names: readonly SizeName[] = [
  'lengthOverall',
  'beam',
  'lengthWaterline',
  'beamTransom',
  'draft',
  'freeboardStem',
  'freeboardMid',
  'freeboardStern',
  'deadrise',
  'deadriseTransom',
  'chineBeam',
  'chineHeight',
  'stemRake',
  'flare',
]

const outOfRange = (size: SizeName, value: number, { least, most }: Range): Note =>
  angles.has(size)
    ? fault('boat.angleOutOfRange', { size, valueRad: value, leastRad: least, mostRad: most })
    : fault('boat.sizeOutOfRange', { size, valueM: value, leastM: least, mostM: most })

/**
 * Faults of the sizes, empty when they make sense. A bad length or beam is reported alone: the other ranges hang on
 * those two.
 */
export const sizesFaults = (sizes: HullSizes): readonly Note[] => {
  const faults: Note[] = []
  for (const size of names) {
    const value = sizes[size]
    if (value === undefined) continue
    const range = rangeOf(size, sizes)
    if (!Number.isFinite(value)) faults.push(fault('boat.sizeNotNumber', { size }))
    else if (value < range.least || value > range.most) faults.push(outOfRange(size, value, range))
    if (faults.length > 0 && (size === 'lengthOverall' || size === 'beam')) return faults
  }
  return faults
}
