/** Which strips and bands of a cut hull belong to which zone. */

import type { Height } from './height.ts'
import type { Hull } from './hull.ts'
import type { BootTop, HullCuts } from './hull-cuts.ts'
import { allStrips, type StripRange } from './hull-lines.ts'

/** Strips between two of the plan's heights, named by their number; an open end has none. */
export type ZonePatch = {
  readonly strips: StripRange
  /** Counted by how many of the plan's heights lie below. */
  readonly bands: readonly number[]
  readonly low?: number
  readonly high?: number
}

export type ZonePlan = {
  /** Heights that cut the hull, lowest first. */
  readonly heights: readonly Height[]
  readonly topsides: readonly ZonePatch[]
  readonly bottom: readonly ZonePatch[]
  readonly bootTop: readonly ZonePatch[]
  /** Parts of the flat ends that go with the bottom, with the boot-top, and with the transom. */
  readonly ends: Record<'bottom' | 'bootTop' | 'transom', readonly ZonePatch[]>
}

/** Everything under the chine is bottom; the band lies on the sides above it, the flat ends are transom. */
const planAtChine = (hull: Hull, bootTop: BootTop | undefined): ZonePlan => {
  const strips = allStrips(hull)
  const chine = hull.edges.indexOf('chine')
  const below = { from: 0, to: chine }
  const above = { from: chine + 1, to: strips.to }
  if (!bootTop) {
    return {
      heights: [],
      topsides: [{ strips: above, bands: [0] }],
      bottom: [{ strips: below, bands: [0] }],
      bootTop: [],
      ends: { bottom: [], bootTop: [], transom: [{ strips, bands: [0] }] },
    }
  }
  const { zLow, zHigh, acrossTransom } = bootTop
  const under = { bands: [0], high: 0 }
  const band = { bands: [1], low: 0, high: 1 }
  const over = { bands: [2], low: 1 }
  return {
    heights: [zLow, zHigh],
    topsides: [under, over].map((part) => ({ strips: above, ...part })),
    bottom: [{ strips: below, bands: [0, 1, 2] }],
    bootTop: [{ strips: above, ...band }],
    ends: {
      bottom: [],
      bootTop: acrossTransom ? [{ strips, ...band }] : [],
      transom: acrossTransom
        ? [under, over].map((part) => ({ strips, ...part }))
        : [{ strips, bands: [0, 1, 2] }],
    },
  }
}

const planAtHeight = (hull: Hull, z: Height, bootTop: BootTop | undefined): ZonePlan => {
  const strips = allStrips(hull)
  const bottom = [{ strips, bands: [0], high: 0 }]
  if (!bootTop) {
    const topsides = [{ strips, bands: [1], low: 0 }]
    return { heights: [z], topsides, bottom, bootTop: [], ends: { bottom, bootTop: [], transom: topsides } }
  }
  const { zLow, zHigh, acrossTransom } = bootTop
  const band = [{ strips, bands: [2], low: 1, high: 2 }]
  const besideBand = [
    { strips, bands: [1], low: 0, high: 1 },
    { strips, bands: [3], low: 2 },
  ]
  return {
    heights: [z, zLow, zHigh],
    topsides: besideBand,
    bottom,
    bootTop: band,
    ends: {
      bottom,
      bootTop: acrossTransom ? band : [],
      transom: acrossTransom ? besideBand : [{ strips, bands: [1, 2, 3], low: 0 }],
    },
  }
}

export const zonePlan = (hull: Hull, { bottomTo, bootTop }: HullCuts): ZonePlan =>
  bottomTo.kind === 'chine' ? planAtChine(hull, bootTop) : planAtHeight(hull, bottomTo.z, bootTop)
