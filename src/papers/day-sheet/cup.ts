/** A mixing cup in section with a level line for each part: a truncated cone, the levels where they would stand. */
import type { HatchName } from '../hatches.ts'
import { type Drawing, hatched, line, type Point } from '../shapes.ts'

export type CupFill = {
  /** Share of the cup this part fills, by volume. */
  readonly share: number
  readonly hatch?: HatchName
}

export type Cup = {
  readonly drawing: Drawing
  /** Where each part's level meets the right wall, in the order of the fills. */
  readonly levels: readonly Point[]
  /** Middle of each part. */
  readonly middles: readonly Point[]
}

export type CupSize = { readonly width: number; readonly height: number }

/** Of the width of the bottom to that of the rim. */
const taper = 0.74

/** With its upper left corner at the origin. */
export function cup(fills: readonly CupFill[], { width, height }: CupSize): Cup {
  const wall = (level: number): number => (width / 2) * (taper + (1 - taper) * level)
  const at = (level: number): number => height * (1 - level)
  const corner = (level: number, side: -1 | 1): Point => [width / 2 + side * wall(level), at(level)]
  let filled = 0
  const bounds = fills.map(({ share }) => {
    const from = levelOf(filled)
    filled += share
    return { from, to: levelOf(filled) }
  })
  const parts = bounds.flatMap(({ from, to }, index): Drawing => {
    const round = [corner(from, -1), corner(from, 1), corner(to, 1), corner(to, -1)]
    const hatch = fills[index]?.hatch
    return [...(hatch ? [hatched(round, hatch)] : []), line('medium', corner(to, -1), corner(to, 1))]
  })
  return {
    drawing: [...parts, line('outline', corner(1, -1), corner(0, -1), corner(0, 1), corner(1, 1))],
    levels: bounds.map(({ to }) => corner(to, 1)),
    middles: bounds.map(({ from, to }): Point => [width / 2, at((from + to) / 2)]),
  }
}

/** Height of a filling, 0 to 1, in a cone that widens upward; share of the whole volume, 0 to 1. */
function levelOf(share: number): number {
  const volume = (level: number): number => {
    const top = taper + (1 - taper) * level
    return (level * (taper * taper + taper * top + top * top)) / (taper * taper + taper + 1)
  }
  let [low, high] = [0, 1]
  for (let step = 0; step < 40; step++) {
    const middle = (low + high) / 2
    if (volume(middle) < share) low = middle
    else high = middle
  }
  return (low + high) / 2
}
