/** Where a hull in a scan begins and ends, and where the sections next to its ends are cut. Metres along the boat. */

import type { ScanSection } from './scan-section.ts'

export type ScanEnds = {
  /** The ends of the hull itself. */
  readonly aft: number
  readonly fore: number
  /** The sections next to each, and one farther in that tells how the hull runs there. */
  readonly aftCuts: readonly [near: number, far: number]
  readonly foreCuts: readonly [near: number, far: number]
}

export type EndsAsked = {
  readonly length: number
  readonly grain: number
  /** How far the transom reaches forward, 0 without one. */
  readonly transom: number
  readonly section: (x: number) => ScanSection | undefined
}

/** No section is cut nearer to an end than this share of the length or so many triangles: the rim there is ragged. */
const [edgeShare, edgeGrains] = [0.004, 2.5]
/** A section lower than this share of the middle one says little: it is mostly the rim of the scan. */
const leastBow = 0.1
/** A sharp end that smoothing made round is drawn out again by no more than so many triangles. */
const mostDrawn = 3
/** An end narrower than this share of the half beam is sharp; one lower than this share of its depth is a point. */
export const [closedShare, pointShare] = [0.05, 0.3]

export const scanEnds = ({ length, grain, transom, section }: EndsAsked): ScanEnds => {
  const middle = section(length / 2)
  const edge = Math.max(edgeShare * length, edgeGrains * grain)
  const tried = [1, 2, 4].map((times) => times * edge)
  const whole = middle?.girth ?? 0
  const foreEdge = tried.find((off) => (section(length - off)?.girth ?? 0) > leastBow * whole) ?? 4 * edge
  const aftCuts = [transom + edge, transom + 3 * edge] as const
  const foreCuts = [length - foreEdge, length - 3 * foreEdge] as const
  const beam = middle ? widest(middle) : 0
  const drawn = (at: number, cuts: readonly [number, number]): number => {
    const [near, far] = cuts.map(section)
    return near && far && transomless(at, transom)
      ? sharpEnd(at, [near, far], { beam, most: mostDrawn * grain })
      : at
  }
  return { aft: drawn(0, aftCuts), fore: drawn(length, foreCuts), aftCuts, foreCuts }
}

const transomless = (at: number, transom: number): boolean => at > 0 || transom === 0

const widest = ({ spots }: ScanSection): number => Math.max(...spots.map(({ y }) => y))
const meanBreadth = ({ spots }: ScanSection): number =>
  spots.reduce((sum, { y }) => sum + y, 0) / spots.length
const depth = ({ spots }: ScanSection): number => spots.at(-1)!.z - spots[0]!.z

/** Where both sides would meet, running on straight from the sections next to the end: there the plumb stem was. */
const sharpEnd = (
  at: number,
  [near, far]: readonly [ScanSection, ScanSection],
  { beam, most }: { readonly beam: number; readonly most: number },
): number => {
  const share = (at - near.x) / (far.x - near.x)
  const run = (of: (section: ScanSection) => number): number => of(near) + share * (of(far) - of(near))
  if (run(widest) > closedShare * beam || run(depth) < pointShare * beam) return at
  const [own, inner] = [meanBreadth(near), meanBreadth(far)]
  if (!(inner > own)) return at
  const met = near.x + ((near.x - far.x) * own) / (inner - own)
  return Math.min(Math.max(met, at - most), at + most)
}
