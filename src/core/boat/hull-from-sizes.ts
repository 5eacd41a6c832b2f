/** A hull that has the sizes given, drawn from the few that somebody knows. */

import type { Note } from '#core/note'
import { type DrawnSizes, drawnSizes, type ExtremeSize, extremes } from './drawn-sizes.ts'
import { drawnStations } from './drawn-stations.ts'
import { assumption } from './fault.ts'
import { type HullResult, hullFromStations, skinThrough } from './hull-from-stations.ts'
import { hullShape } from './hull-shape.ts'
import type { HullSizes, SettledSizes } from './hull-sizes.ts'
import { settleSizes } from './settle-sizes.ts'
import { sizesFaults } from './sizes-faults.ts'

/** A given length missed by more than this gets a note, m. */
const allowed = 1e-4
/** A given angle missed by more than this gets a note, rad. */
const allowedAngle = 1e-3

type AngleSize = 'deadrise' | 'deadriseTransom'

/** The angles a drawing has where a level is laid on the bottom. */
const bottomAngles = (drawn: SettledSizes): Pick<HullSizes, AngleSize> => {
  const shape = hullShape(drawn)
  const angleAt = (x: number): number => {
    const { y, z } = shape.corner(x)
    return Math.atan2(z - shape.keelHeight(x), y)
  }
  return {
    ...(drawn.chineHeight === undefined ? { deadrise: angleAt(drawn.lengthOverall / 2) } : {}),
    ...(drawn.beamTransom > 0 ? { deadriseTransom: angleAt(0) } : {}),
  }
}

const lengthMissed = (size: ExtremeSize, wanted: number, drawn: number): readonly Note[] =>
  Math.abs(drawn - wanted) > allowed
    ? [{ code: 'boat.sizeNotReached', severity: 'info', data: { size, wantedM: wanted, drawnM: drawn } }]
    : []

const angleMissed = (size: AngleSize, wanted: number, drawn: number): readonly Note[] =>
  Math.abs(drawn - wanted) > allowedAngle
    ? [{ code: 'boat.angleNotReached', severity: 'info', data: { size, wantedRad: wanted, drawnRad: drawn } }]
    : []

/** Of the sizes given, those that no drawing of ours has together. */
const missedSizes = (given: HullSizes, { sizes, surface }: DrawnSizes): readonly Note[] => {
  const angles = bottomAngles(sizes)
  return [
    ...extremes.flatMap((size) => lengthMissed(size, given[size] ?? surface[size], surface[size])),
    ...(['deadrise', 'deadriseTransom'] as const).flatMap((size) => {
      const drawn = angles[size]
      return drawn === undefined ? [] : angleMissed(size, given[size] ?? drawn, drawn)
    }),
  ]
}

/**
 * Hull from a few sizes: its surface has every length given to a tenth of a millimetre. A note for each size that had
 * to be assumed, for each that could not be had, and one for the drawing itself. Sizes that make no boat give the
 * faults.
 */
export const hullFromSizes = (given: HullSizes): HullResult => {
  const faults = sizesFaults(given)
  if (faults.length > 0) return { ok: false, faults }
  const settled = settleSizes(given)
  const contradictions = settled.notes.filter((note) => note.severity === 'fault')
  if (contradictions.length > 0) return { ok: false, faults: contradictions }
  const drawn = drawnSizes(settled.sizes, (sizes) => skinThrough(drawnStations(sizes)))
  const stations = drawnStations(drawn.sizes)
  const result = hullFromStations(stations)
  if (!result.ok) return result
  const shape = assumption('boat.shapeAssumed', { form: given.form, stations: stations.length })
  return {
    ...result,
    notes: [...settled.notes, ...missedSizes(given, drawn), shape, ...result.notes],
  }
}
