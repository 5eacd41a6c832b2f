/** Corners that run along the boat: where sections turn sharply at most stations, at about the same share of the girth. */

import type { Spot } from './half-section.ts'
import type { ScanSection } from './scan-section.ts'
import { sharpened, turnAt } from './section-corner.ts'

/** By station, the place of each corner on its section, keel to sheer: number of the spot and where the corner is. */
export type Corner = { readonly at: number; readonly spot: Spot }
export type KnuckleLines = {
  readonly corners: readonly (readonly Corner[])[]
  /** How many stations showed each line by themselves. */
  readonly shown: readonly number[]
}

/** A turn this sharp, rad, that twice the reach makes hardly larger, is a corner and no bilge; chosen on the tests. */
const [leastTurn, mostSpread] = [0.2, 1.45]
/** What it is looked for over: share of the girth to either side. */
const reachShare = 0.04
/** A line of corners moves no farther along the girth between two stations, and shows at this share of them. */
const [mostStray, shownShare] = [0.1, 0.55]
const mostLines = 2

type Found = { readonly at: number; readonly turn: number }

/** @param grain side of a triangle, m: corners of a smoothed scan are round over a few of them. */
export const knuckleLines = (sections: readonly ScanSection[], grain: number): KnuckleLines => {
  const reaches = sections.map(({ girth, spots }) =>
    Math.ceil(Math.max(reachShare, (2.5 * grain) / girth) * (spots.length - 1)),
  )
  const found = sections.map((section, i) => cornersOf(section, reaches[i]!))
  const lines: (readonly number[])[] = []
  const shown: number[] = []
  for (let tried = 0; tried < 6 && lines.length < mostLines; tried++) {
    const line = strongestLine(sections, found)
    if (line === undefined) break
    const own = line.filter((at) => at !== undefined).length
    line.forEach((at, i) => {
      found[i] = found[i]!.filter((one) => one.at !== at)
    })
    if (own < shownShare * sections.length) continue
    lines.push(filled(sections, line, reaches))
    shown.push(own)
  }
  const order = lines.map((_, k) => k).sort((a, b) => meanOf(lines[a]!) - meanOf(lines[b]!))
  const kept = order.filter((k, rank) => rank === 0 || apart(lines[order[0]!]!, lines[k]!, reaches))
  return {
    corners: sections.map(({ spots }, i) =>
      kept.map((k) => ({ at: lines[k]![i]!, spot: sharpened(spots, lines[k]![i]!, reaches[i]!) })),
    ),
    shown: kept.map((k) => shown[k]!),
  }
}

const meanOf = (line: readonly number[]): number => line.reduce((sum, at) => sum + at, 0) / line.length

const apart = (low: readonly number[], high: readonly number[], reaches: readonly number[]): boolean =>
  low.every((at, i) => high[i]! - at > reaches[i]!)

const cornersOf = ({ spots }: ScanSection, reach: number): readonly Found[] => {
  const turns = spots.map((_, at) => turnAt(spots, at, reach))
  return turns.flatMap((turn, at) => {
    const beside = turns.slice(Math.max(at - reach, 0), at + reach + 1)
    if (turn < leastTurn || turn < Math.max(...beside) || at < reach || at > spots.length - 1 - reach)
      return []
    // Near an end twice the reach does not fit: the corner is taken at its word.
    const wide = turnAt(spots, at, 2 * reach)
    return wide > mostSpread * turn ? [] : [{ at, turn }]
  })
}

/** From the sharpest corner of all aft and forward, to whichever lies nearest in the next section. */
const strongestLine = (
  sections: readonly ScanSection[],
  found: readonly (readonly Found[])[],
): readonly (number | undefined)[] | undefined => {
  const all = found.flatMap((corners, i) => corners.map((corner) => ({ ...corner, i })))
  const seed = all.reduce<(typeof all)[number] | undefined>(
    (best, one) => (best && best.turn >= one.turn ? best : one),
    undefined,
  )
  if (seed === undefined) return undefined
  const line: (number | undefined)[] = sections.map(() => undefined)
  line[seed.i] = seed.at
  for (const way of [1, -1]) {
    let [last, stray] = [seed.at, 1]
    for (let i = seed.i + way; i >= 0 && i < sections.length; i += way) {
      const limit = stray * mostStray * sections[i]!.spots.length
      const near = found[i]!.filter(({ at }) => Math.abs(at - last) <= limit)
      const next = near.toSorted((a, b) => Math.abs(a.at - last) - Math.abs(b.at - last))[0]
      if (next) [line[i], last, stray] = [next.at, next.at, 1]
      else stray = Math.min(stray + 0.5, 2)
    }
  }
  return line
}

/** Where a station shows no corner: the sharpest turn near where its neighbours have theirs. */
const filled = (
  sections: readonly ScanSection[],
  line: readonly (number | undefined)[],
  reaches: readonly number[],
): readonly number[] => {
  const known = line.flatMap((at, i) => (at === undefined ? [] : [{ at, x: sections[i]!.x }]))
  return line.map((own, i) => {
    if (own !== undefined) return own
    const { x, spots } = sections[i]!
    const after = known.findIndex((one) => one.x > x)
    const [a, b] =
      after < 0 ? [known.at(-1)!, known.at(-1)!] : [known[Math.max(after - 1, 0)]!, known[after]!]
    const share = b.x === a.x ? 0 : (x - a.x) / (b.x - a.x)
    const about = Math.round(a.at + share * (b.at - a.at))
    const spread = Math.round(reaches[i]! / 2)
    const near = Array.from({ length: 2 * spread + 1 }, (_, k) => about - spread + k)
    const best = near.reduce(
      (most, at) => (turnAt(spots, at, reaches[i]!) > turnAt(spots, most, reaches[i]!) ? at : most),
      about,
    )
    return Math.min(Math.max(best, 2), spots.length - 3)
  })
}
