/**
 * Lines of a hull drawn from its sizes: keel and stem, sheer, and the corner of bottom and side, as functions of x.
 * Boat frame, metres. The laws are our own drawing curves (assumed); a measured hull does not use them.
 */

import type { Bilge, SettledSizes } from './hull-sizes.ts'

export type HullShape = {
  readonly keelHeight: (x: number) => number
  readonly sheerHeight: (x: number) => number
  readonly sheerHalfBreadth: (x: number) => number
  /** Chine of a hard-chine hull; on a round bilge the corner that is rounded off. */
  readonly corner: (x: number) => { readonly y: number; readonly z: number }
}

/** Where the keel line leaves its level part, as a share of the waterline length. */
const forefootStart = 0.5
/** Where the sheer is widest, as a share of the length. */
const widestAt = 0.42
/** Power of the sheer's closing curve in plan. */
const sheerPower = 2.3
/** Share of the overhangs that lies aft, on a round bilge; a hard-chine transom stands in the water. */
const overhangAft = 0.4
/** Share of the overhangs that lies forward. */
export const overhangForward: Readonly<Record<Bilge, number>> = {
  'hard-chine': 1,
  'round-bilge': 1 - overhangAft,
}
/** At the stem the corner stands at this share of the height and of the half breadth. */
const cornerAtStem = { height: 0.45, breadth: 0.5 }
/** A waterline longer than this share of the length is drawn as this: the stem must close somewhere. */
const longestWaterline = 0.985

type WaterlineEnds = { readonly aft: number; readonly fore: number }

const waterlineEnds = ({ form, lengthOverall, lengthWaterline }: SettledSizes): WaterlineEnds => {
  const length = Math.min(lengthWaterline, longestWaterline * lengthOverall)
  const aft = form === 'round-bilge' ? overhangAft * (lengthOverall - length) : 0
  return { aft, fore: aft + length }
}

/** Level, then a power curve that cuts the waterline at its fore end and the sheer at the stem head. */
const keelForward = (sizes: SettledSizes, start: number, fore: number) => {
  const { draft, freeboardStem, lengthOverall } = sizes
  const rise = draft + freeboardStem
  const reach = lengthOverall - start
  const power = Math.max(Math.log(draft / rise) / Math.log((fore - start) / reach), 1.2)
  return (x: number): number => -draft + rise * Math.max((x - start) / reach, 0) ** power
}

/** Level, or a parabola that leaves the water at the aft end of the waterline and stays under the sheer. */
const keelAft = ({ draft, freeboardStern }: SettledSizes, start: number, aft: number) => {
  const climb = aft > 0 ? (start / (start - aft)) ** 2 * draft : 0
  const top = Math.min(climb, draft + 0.6 * freeboardStern)
  return (x: number): number => -draft + top * Math.max((start - x) / start, 0) ** 2
}

const keelHeightOf = (sizes: SettledSizes) => {
  const { aft, fore } = waterlineEnds(sizes)
  const start = aft + forefootStart * (fore - aft)
  const [forward, after] = [keelForward(sizes, start, fore), keelAft(sizes, start, aft)]
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

const sheerHalfBreadthOf = ({ lengthOverall, beam, beamTransom }: SettledSizes) => {
  const middle = widestAt * lengthOverall
  return (x: number): number =>
    x < middle
      ? beam / 2 - ((beam - beamTransom) / 2) * ((middle - x) / middle) ** 2
      : (beam / 2) * (1 - ((x - middle) / (lengthOverall - middle)) ** sheerPower)
}

/** From `aft` at x = 0 to `mid` at half length, then along a square law to `stem`; smooth enough to fair. */
const alongLength = (length: number, { aft, mid, stem }: Record<'aft' | 'mid' | 'stem', number>) => {
  return (x: number): number => {
    const t = (2 * x) / length - 1
    return t < 0 ? mid + (aft - mid) * t * t : mid + (stem - mid) * t * t
  }
}

const cornerOf = (sizes: SettledSizes, lines: Omit<HullShape, 'corner'>): HullShape['corner'] => {
  const { lengthOverall, beam, chineBeam, deadrise, deadriseTransom } = sizes
  const share = chineBeam / beam
  const heightShare = (x: number, angle: number): number => {
    const keel = lines.keelHeight(x)
    const rise = Math.tan(angle) * share * lines.sheerHalfBreadth(x)
    return Math.min(Math.max(rise / (lines.sheerHeight(x) - keel), 0), 0.9)
  }
  const breadth = alongLength(lengthOverall, { aft: share, mid: share, stem: cornerAtStem.breadth * share })
  const height = alongLength(lengthOverall, {
    aft: heightShare(0, deadriseTransom),
    mid: heightShare(lengthOverall / 2, deadrise),
    stem: Math.max(cornerAtStem.height, heightShare(lengthOverall / 2, deadrise)),
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
