/**
 * Lines of a hull drawn from its sizes: keel and stem, sheer, and the corner of bottom and side, as functions of x.
 * Boat frame, metres. The laws are our own drawing curves (assumed); a measured hull does not use them.
 */

import type { Bilge, SettledSizes } from './hull-sizes.ts'

export type HullShape = {
  /** At the stem head this is the foot of a plumb stem edge, or the head itself when the stem runs up to it. */
  readonly keelHeight: (x: number) => number
  readonly sheerHeight: (x: number) => number
  readonly sheerHalfBreadth: (x: number) => number
  /** Chine of a hard-chine hull; on a round bilge the corner that is rounded off. */
  readonly corner: (x: number) => { readonly y: number; readonly z: number }
}

/** Powers of the sheer's closing curves in plan, from mid length on, where it is widest. */
const sheerPower = { aft: 2, fore: 2.3 }
/** Share of the overhangs that lies aft, on a round bilge; a hard-chine transom stands in the water. */
const overhangAft = 0.4
/** Share of the overhangs that lies forward. */
export const overhangForward: Readonly<Record<Bilge, number>> = {
  'hard-chine': 1,
  'round-bilge': 1 - overhangAft,
}
/** At the stem the corner stands at this share of the height and of the half breadth. */
const cornerAtStem = { height: 0.45, breadth: 0.5 }
/** Highest that the corner is drawn, as a share of the height from keel to sheer. */
const highestCorner = 0.9
/** Powers of the forefoot curve: a slacker one would leave the level keel with a corner, a sharper one ends plumb. */
const forefootPower = { slackest: 1.6, sharpest: 8 }
/** The forefoot leaves at least this share of the waterline to the run aft. */
const shortestRun = 0.1
/** A stem nearer to plumb than this share of the length is plumb down into the water. */
const plumb = 1e-6
/** Depth that such a stem edge reaches into the water, as a share of the draft. */
const plumbFoot = 0.2

type WaterlineEnds = { readonly aft: number; readonly fore: number }

const waterlineEnds = ({ form, lengthOverall, lengthWaterline }: SettledSizes): WaterlineEnds => {
  const aft = form === 'round-bilge' ? overhangAft * (lengthOverall - lengthWaterline) : 0
  return { aft, fore: aft + lengthWaterline }
}

const powerThrough = (share: number, reach: number): number => Math.log(share) / Math.log(reach)

/** Where the keel leaves its level part: mid length, or farther aft where the stem is slack. */
const forefootStart = (sizes: SettledSizes, { aft, fore }: WaterlineEnds): number => {
  const { draft, freeboardStem, lengthOverall } = sizes
  const reach = (draft / (draft + freeboardStem)) ** (1 / forefootPower.slackest)
  const slack = (fore - reach * lengthOverall) / (1 - reach)
  return Math.max(Math.min(lengthOverall / 2, slack), aft + shortestRun * (fore - aft))
}

/** Level, then a power curve that cuts the waterline at its fore end, and the stem head where the power allows. */
const keelForward = (sizes: SettledSizes, start: number, fore: number) => {
  const { draft, freeboardStem, lengthOverall } = sizes
  const reach = (fore - start) / (lengthOverall - start)
  const steepest = draft / reach ** forefootPower.sharpest
  const rise = reach > 1 - plumb ? (1 - plumbFoot) * draft : Math.min(draft + freeboardStem, steepest)
  const power = rise > draft ? powerThrough(draft / rise, reach) : forefootPower.sharpest
  return (x: number): number =>
    -draft + rise * Math.max((x - start) / (lengthOverall - start), 0) ** Math.max(power, 1)
}

/** Level, or a curve that leaves the water at the aft end of the waterline and stays under the sheer. */
const keelAft = ({ draft, freeboardStern }: SettledSizes, start: number, aft: number) => {
  if (aft === 0) return () => -draft
  const reach = (start - aft) / start
  const top = Math.min(draft / reach ** 2, draft + 0.6 * freeboardStern)
  const power = powerThrough(draft / top, reach)
  return (x: number): number => -draft + top * Math.max((start - x) / start, 0) ** power
}

const keelHeightOf = (sizes: SettledSizes) => {
  const ends = waterlineEnds(sizes)
  const start = forefootStart(sizes, ends)
  const [forward, after] = [keelForward(sizes, start, ends.fore), keelAft(sizes, start, ends.aft)]
  return (x: number): number => (x < start ? after(x) : forward(x))
}

/** The parabola through the three freeboards. */
const sheerHeightOf = ({ lengthOverall, freeboardStern, freeboardMid, freeboardStem }: SettledSizes) => {
  return (x: number): number => {
    const t = x / lengthOverall
    return (
      freeboardStern * (1 - t) * (1 - 2 * t) +
      freeboardMid * 4 * t * (1 - t) +
      freeboardStem * t * (2 * t - 1)
    )
  }
}

/** Widest at mid length, where the sizes of the section are taken. */
const sheerHalfBreadthOf = ({ lengthOverall, beam, beamTransom }: SettledSizes) => {
  return (x: number): number => {
    const t = (2 * x) / lengthOverall - 1
    return t < 0
      ? beam / 2 - ((beam - beamTransom) / 2) * (-t) ** sheerPower.aft
      : (beam / 2) * (1 - t ** sheerPower.fore)
  }
}

/** From `aft` at x = 0 to `mid` at half length, then along a square law to `stem`; smooth enough to fair. */
const alongLength = (length: number, { aft, mid, stem }: Record<'aft' | 'mid' | 'stem', number>) => {
  return (x: number): number => {
    const t = (2 * x) / length - 1
    return t < 0 ? mid + (aft - mid) * t * t : mid + (stem - mid) * t * t
  }
}

const cornerOf = (sizes: SettledSizes, lines: Omit<HullShape, 'corner'>): HullShape['corner'] => {
  const { lengthOverall, beam, chineBeam, chineHeight, deadrise, deadriseTransom } = sizes
  const share = chineBeam / beam
  const middle = lengthOverall / 2
  const shareOf = (x: number, rise: number): number =>
    Math.min(Math.max(rise / (lines.sheerHeight(x) - lines.keelHeight(x)), 0), highestCorner)
  const riseAt = (x: number, angle: number): number => Math.tan(angle) * share * lines.sheerHalfBreadth(x)
  const rise = chineHeight === undefined ? riseAt(middle, deadrise) : chineHeight - lines.keelHeight(middle)
  const mid = shareOf(middle, rise)
  const breadth = alongLength(lengthOverall, { aft: share, mid: share, stem: cornerAtStem.breadth * share })
  const height = alongLength(lengthOverall, {
    aft: shareOf(0, riseAt(0, deadriseTransom)),
    mid,
    stem: Math.max(cornerAtStem.height, mid),
  })
  return (x) => {
    const keel = lines.keelHeight(x)
    return {
      y: breadth(x) * lines.sheerHalfBreadth(x),
      z: keel + height(x) * (lines.sheerHeight(x) - keel),
    }
  }
}

export const hullShape = (sizes: SettledSizes): HullShape => {
  const lines = {
    keelHeight: keelHeightOf(sizes),
    sheerHeight: sheerHeightOf(sizes),
    sheerHalfBreadth: sheerHalfBreadthOf(sizes),
  }
  return { ...lines, corner: cornerOf(sizes, lines) }
}
