/** Stations of a plausible hull from a few sizes, numbered from the stem; boat frame, metres. */

import type { Note } from '#core/note'
import { assumption } from './fault.ts'
import { type HullShape, hullShape } from './hull-shape.ts'
import type { Bilge, HullSizes } from './hull-sizes.ts'
import { settleSizes } from './settle-sizes.ts'
import { sizesFaults } from './sizes-faults.ts'
import type { Station, StationPoint } from './station.ts'

export type DrawnStations = { readonly stations: readonly Station[]; readonly notes: readonly Note[] }

/** Intervals between stations; 21 stations as on a lines plan. */
const intervals = 20
/** Points of a round section, keel to sheer. */
const roundPoints = 11
/** Pull of the round section towards the corner of bottom and side: 1 would make the fullest cubic. */
const fullness = 0.93

/** Closer together towards the stem, where the lines turn most. */
const placeAt = (length: number, k: number): number => length * Math.sin((Math.PI / 2) * (k / intervals))

type Corners = Record<'keel' | 'corner' | 'sheer', { readonly y: number; readonly z: number }>

/** Cubic Bézier curve from keel to sheer, tangent there to the lines of bottom and side. */
const roundSection = ({ keel, corner, sheer }: Corners): readonly StationPoint[] => {
  const towards = (from: number, to: number) => from + fullness * (to - from)
  const at = (t: number, axis: 'y' | 'z') => {
    const r = 1 - t
    const [first, second] = [towards(keel[axis], corner[axis]), towards(sheer[axis], corner[axis])]
    return r * r * r * keel[axis] + 3 * r * r * t * first + 3 * r * t * t * second + t * t * t * sheer[axis]
  }
  return Array.from({ length: roundPoints }, (_, i) => {
    const t = i / (roundPoints - 1)
    return { y: at(t, 'y'), z: at(t, 'z') }
  })
}

const sectionPoints = (form: Bilge, shape: HullShape, x: number): readonly StationPoint[] => {
  const keel = { y: 0, z: shape.keelHeight(x) }
  const sheer = { y: shape.sheerHalfBreadth(x), z: shape.sheerHeight(x) }
  const corner = shape.corner(x)
  return form === 'round-bilge'
    ? roundSection({ keel, corner, sheer })
    : [keel, { ...corner, knuckle: 'chine' }, sheer]
}

const stationAt = (form: Bilge, shape: HullShape, length: number, k: number): Station => {
  const x = placeAt(length, k)
  const closed: readonly StationPoint[] = [{ y: 0, z: shape.sheerHeight(length) }]
  return { id: `${intervals - k}`, x, points: k === intervals ? closed : sectionPoints(form, shape, x) }
}

/**
 * Stations from a few sizes, 20 at the transom to 0 at the stem head, with a note for every size that had to be
 * assumed and one for the drawing itself. Sizes that make no boat give no stations and the faults as notes.
 */
export const stationsFromSizes = (sizes: HullSizes): DrawnStations => {
  const faults = sizesFaults(sizes)
  if (faults.length > 0) return { stations: [], notes: faults }
  const settled = settleSizes(sizes)
  if (settled.notes.some((note) => note.severity === 'fault')) return { stations: [], notes: settled.notes }
  const shape = hullShape(settled.sizes)
  const { form, lengthOverall } = settled.sizes
  return {
    stations: Array.from({ length: intervals + 1 }, (_, k) => stationAt(form, shape, lengthOverall, k)),
    notes: [...settled.notes, assumption('boat.shapeAssumed', { form, stations: intervals + 1 })],
  }
}
