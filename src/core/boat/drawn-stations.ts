/** Stations of a plausible hull from a full set of sizes, numbered from the stem; boat frame, metres. */

import { type HullShape, hullShape } from './hull-shape.ts'
import type { Bilge, SettledSizes } from './hull-sizes.ts'
import type { Station, StationPoint } from './station.ts'

/** Intervals between stations; a third of them lie aft of mid length. */
const intervals = 21
/** Points of a round section, keel to sheer. */
const roundPoints = 11
/** A stem edge shorter than this share of the length is a point. */
const leastEdge = 1e-6
/** Pull of the round section towards the corner of bottom and side: 1 would make the fullest cubic. */
const fullness = 0.93

/** Closer together towards the stem, where the lines turn most. */
const placeAt = (length: number, k: number): number =>
  3 * k === intervals ? length / 2 : length * Math.sin((Math.PI / 2) * (k / intervals))

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

/** The hull closes in the stem head, or in a plumb stem edge. */
const closing = (shape: HullShape, length: number): readonly StationPoint[] => {
  const [foot, head] = [shape.keelHeight(length), shape.sheerHeight(length)]
  return head - foot > leastEdge * length ? [foot, head].map((z) => ({ y: 0, z })) : [{ y: 0, z: head }]
}

/** Stations of a hull of these sizes, from the transom to 0 at the stem head; one of them stands at mid length. */
export const drawnStations = (sizes: SettledSizes): readonly Station[] => {
  const { form, lengthOverall } = sizes
  const shape = hullShape(sizes)
  return Array.from({ length: intervals + 1 }, (_, k) => {
    const x = placeAt(lengthOverall, k)
    const points = k === intervals ? closing(shape, lengthOverall) : sectionPoints(form, shape, x)
    return { id: `${intervals - k}`, x, points }
  })
}
