/**
 * Where the views of a lines plan stand on the screen, in px: sheer plan over half-breadth plan on common stations,
 * the body plan at the right, or below where it is narrow. From boat metres (x forward, y to port, z up from the
 * water); bow right.
 */

import type { ShownPlan } from '../../worker/messages.ts'

export type Outline = NonNullable<ShownPlan['surfaces']['outline']>
export type Point = readonly [x: number, y: number]
export type Place = (along: number, across: number) => Point

export type BoatLayout = {
  readonly width: number
  readonly height: number
  readonly perM: number
  readonly length: number
  readonly halfBeam: number
  /** Heights of the highest sheer, the water, the lowest keel and the centreline from above. */
  readonly top: number
  readonly water: number
  readonly keel: number
  readonly centre: number
  /** Centreline, water and lowest point of the body plan. */
  readonly body: { readonly x: number; readonly water: number; readonly keel: number; readonly top: number }
  readonly side: Place
  readonly above: Place
  readonly ahead: Place
}

const gap = { left: 56, right: 24, top: 40, between: 72, below: 56, middle: 72 }
/** Narrower than this the body plan goes below. */
const wide = 640

export function boatLayout(outline: Outline, width: number): BoatLayout {
  const { length, halfBeam, high, low } = extent(outline)
  const beside = width >= wide
  const across = beside ? length + 2 * halfBeam : Math.max(length, 2 * halfBeam)
  const perM = (width - gap.left - gap.right - (beside ? gap.between : 0)) / across
  const top = gap.top
  const water = top + high * perM
  const keel = water - low * perM
  const centre = keel + gap.middle
  const lowest = centre + halfBeam * perM + 16
  const bodyTop = beside ? top : lowest + gap.top
  const bodyWater = bodyTop + high * perM
  const bodyKeel = bodyWater - low * perM
  const bodyX = beside ? gap.left + (length + halfBeam) * perM + gap.between : width / 2
  return {
    width,
    height: (beside ? lowest : bodyKeel + gap.below) + 8,
    perM,
    length,
    halfBeam,
    top,
    water,
    keel,
    centre,
    body: { x: bodyX, water: bodyWater, keel: bodyKeel, top: bodyTop },
    side: (x, z) => [gap.left + x * perM, water - z * perM],
    above: (x, y) => [gap.left + x * perM, centre + y * perM],
    ahead: (y, z) => [bodyX + y * perM, bodyWater - z * perM],
  }
}

function extent({ sheerPlan, halfBreadthPlan, bodyPlan }: Outline) {
  const profile = [...sheerPlan.keel, ...sheerPlan.sheer]
  const heights = [0, ...profile.map(([, z]) => z)]
  return {
    length: Math.max(0.1, ...profile.map(([x]) => x)),
    halfBeam: Math.max(
      0.05,
      ...halfBreadthPlan.sheer.map(([, y]) => y),
      ...bodyPlan.flatMap(({ line }) => line.map(([y]) => y)),
    ),
    high: Math.max(...heights),
    low: Math.min(...heights),
  }
}

export const pathOf = (points: readonly Point[], close = false): string =>
  points.length < 2
    ? ''
    : `M${points.map(([x, y]) => `${x.toFixed(1)} ${y.toFixed(1)}`).join('L')}${close ? 'Z' : ''}`

/** How far left of the stern the draft is measured; its figure stands left of that, turned, and may be longer than it. */
export const draftLeft = 20

/** The floating line through both views with its sign right of the bow, where no figure stands. */
export function waterPaths({ side, length, water, body, halfBeam, perM }: BoatLayout) {
  const [aft] = side(0, 0)
  const [forward] = side(length, 0)
  const from = aft - draftLeft - 4
  const half = halfBeam * perM + 12
  const same = Math.abs(body.water - water) < 1
  return {
    lines: same
      ? `M${from} ${water}H${body.x + half}`
      : `M${from} ${water}H${forward + 22}M${body.x - half} ${body.water}H${body.x + half}`,
    sign: `M${forward + 13} ${water}l-7-10h14Z`,
  }
}
