/** Where a tape line through three heights ends on the hull, and its low point. Boat frame, metres. */
import { type Hull, lineAtHeight } from '#core/boat'
import type { Note } from '#core/note'
import type { CurvePlaces, ThreeHeights } from './stripe-curve.ts'
import { fault } from './stripe-notes.ts'

/** Low point aft of the stem as a share of the waterline, not midships (yacht designers' articles). */
const lowPointShare = 0.7

/** Where a line ends, at the heights it has there, and its low point on the waterline. */
export function curvePlaces(hull: Hull, heights: ThreeHeights): CurvePlaces | Note {
  const water = extentAt(hull, 0)
  if (water === undefined) return fault('marking.noWaterline', {})
  const lowX = water.fore - lowPointShare * (water.fore - water.aft)
  const sternX = extentAt(hull, heights.stern)?.aft
  const stemX = extentAt(hull, heights.stem)?.fore
  if (sternX === undefined || !(sternX < lowX)) {
    return fault('marking.stripeOffHull', { xM: water.aft, heightM: heights.stern })
  }
  if (stemX === undefined || !(stemX > lowX)) {
    return fault('marking.stripeOffHull', { xM: water.fore, heightM: heights.stem })
  }
  return { sternX, lowX, stemX }
}

function extentAt(hull: Hull, z: number): { readonly aft: number; readonly fore: number } | undefined {
  const ends = lineAtHeight(hull, { z, side: 'port' })
    .pieces.flat()
    .map((point) => point.x)
  return ends.length === 0 ? undefined : { aft: Math.min(...ends), fore: Math.max(...ends) }
}
