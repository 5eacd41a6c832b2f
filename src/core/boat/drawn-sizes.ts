/**
 * Sizes to draw a hull by so that its surface has the sizes wanted. Splines through drawn stations overshoot them by
 * a little, so the surface is measured and what it missed is added to the drawing, until nothing is missing.
 */

import { greatestDepth, greatestSheer } from './extremes.ts'
import type { HullSkin } from './hull.ts'
import { heightLines } from './hull-lines.ts'
import type { SettledSizes } from './hull-sizes.ts'

/** Sizes that no station holds: the extremes of the surface. All others stand in a drawn station. */
export const extremes = ['lengthWaterline', 'beam', 'draft'] as const
export type ExtremeSize = (typeof extremes)[number]

/** Rounds of measuring and correcting; each leaves a small part of the miss before. */
const mostRounds = 12
/** Close enough, m: far below what a tape tells. */
const closeEnough = 1e-7
/** Nothing is drawn smaller than this share of the size wanted. */
const leastShare = 0.5

export type ExtremeSizes = Readonly<Record<ExtremeSize, number>>

const measured = (skin: HullSkin): ExtremeSizes => {
  const water = heightLines(skin, 0).flatMap((line) => line.map((point) => point.x))
  return {
    lengthWaterline: water.length === 0 ? 0 : Math.max(...water) - Math.min(...water),
    beam: 2 * greatestSheer(skin),
    draft: greatestDepth(skin),
  }
}

/** The drawing with what its surface missed added to it; a waterline stays within the boat. */
const corrected = (drawn: SettledSizes, wanted: SettledSizes, surface: ExtremeSizes): SettledSizes => {
  const next = (size: ExtremeSize): number =>
    Math.max(drawn[size] + wanted[size] - surface[size], leastShare * wanted[size])
  return {
    ...drawn,
    lengthWaterline: Math.min(next('lengthWaterline'), drawn.lengthOverall),
    beam: next('beam'),
    draft: next('draft'),
  }
}

export type DrawnSizes = { readonly sizes: SettledSizes; readonly surface: ExtremeSizes }

/** Sizes to draw by, and what the surface drawn by them has; the nearest found where nothing fits exactly. */
export const drawnSizes = (wanted: SettledSizes, skinOf: (sizes: SettledSizes) => HullSkin): DrawnSizes => {
  const drawnBy = (sizes: SettledSizes) => {
    const surface = measured(skinOf(sizes))
    const missed = Math.max(...extremes.map((size) => Math.abs(surface[size] - wanted[size])))
    return { sizes, surface, missed }
  }
  let last = drawnBy(wanted)
  let best = last
  for (let round = 1; round < mostRounds && best.missed > closeEnough; round++) {
    last = drawnBy(corrected(last.sizes, wanted, last.surface))
    if (last.missed < best.missed) best = last
  }
  return best
}
