/** A stripe round both sides of the hull between two heights: what it covers, and how far that is from flat. */

import { type BandLimits, sideBand } from './band-area.ts'
import type { Hull } from './hull.ts'
import { lineAtHeight } from './line-at-height.ts'

export type Stripe = {
  /** True surface, both sides, m²; the transom is not in it. */
  readonly area: number
  /** The same seen square from the side, both sides, m². */
  readonly profileArea: number
  /** Length of each edge on one side, m. */
  readonly lowerLength: number
  readonly upperLength: number
}

/**
 * Measures the stripe between two heights, of which `zLow` must be the lower one. A height the hull does not reach
 * leaves that side of the stripe open and its edge without length.
 */
export const stripeArea = (hull: Hull, limits: BandLimits): Stripe => {
  const band = sideBand(hull, limits)
  return {
    area: 2 * band.area,
    profileArea: 2 * band.vector.y,
    lowerLength: lineAtHeight(hull, { z: limits.zLow, side: 'port' }).length,
    upperLength: lineAtHeight(hull, { z: limits.zHigh, side: 'port' }).length,
  }
}
