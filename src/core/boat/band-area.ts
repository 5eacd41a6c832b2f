/** Areas of the hull between two heights: sides, and the flat ends cut with them. Boat frame, square metres. */

import { addBands, type BandIntegral, integrateBands, integrateRow, loftLineAt } from '#core/geometry'
import { type Height, levelOf } from './height.ts'
import type { Hull } from './hull.ts'

export type BandLimits = { readonly zLow: Height; readonly zHigh: Height }

export type BandArea = {
  /** Moulded surface, both sides. */
  readonly sides: number
  /** Flat transom, and bow where the hull closes flat there. */
  readonly ends: number
  readonly total: number
}

/** One side's integral between two heights. */
export const sideBand = ({ surface }: Hull, { zLow, zHigh }: BandLimits): BandIntegral =>
  addBands(integrateBands(surface, [levelOf(zLow), levelOf(zHigh)]).map((bands) => bands[1]!))

const endArea = ({ surface }: Hull, u: 0 | 1, { zLow, zHigh }: BandLimits): number =>
  integrateRow(loftLineAt(surface, u), [levelOf(zLow), levelOf(zHigh)]).reduce(
    (sum, bands) => sum + 2 * bands[1]!.flatArea,
    0,
  )

/**
 * Area of the hull between two heights. A height the hull does not reach just leaves that side of the band open;
 * `zLow` must be the lower one.
 */
export const areaBetween = (hull: Hull, limits: BandLimits): BandArea =>
  withEnds(hull, sideBand(hull, limits), limits)

const withEnds = (hull: Hull, { area }: BandIntegral, limits: BandLimits): BandArea => {
  const sides = 2 * area
  const ends = endArea(hull, 0, limits) + endArea(hull, 1, limits)
  return { sides, ends, total: sides + ends }
}

/** Area of the hull below z = 0, without fins, skegs and drives. */
export const wettedArea = (hull: Hull): BandArea =>
  withEnds(hull, hull.water.below, { zLow: Number.NEGATIVE_INFINITY, zHigh: 0 })

/** Area of the hull above z = 0. */
export const dryArea = (hull: Hull): BandArea =>
  withEnds(hull, hull.water.above, { zLow: 0, zHigh: Number.POSITIVE_INFINITY })
