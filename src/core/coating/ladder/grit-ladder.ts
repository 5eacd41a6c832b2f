/** Which grits follow each other on a surface, so that each takes out the scratches of the one before. */
import type { Grit } from '../bond/rule.ts'

/**
 * The shortest row of grits from the one that cuts the surface to the one that the next layer wants.
 * @param way.first grit that takes off what stands proud; left out where the last alone does. @param way.last what
 * the next layer goes on. @param way.grits those at hand in between, any order. @param way.mostRatio how many times
 * finer the next may be at most: more, and it polishes the old scratches instead of taking them out.
 * @returns coarse to fine, `first` and `last` included. Where the grits at hand leave a wider gap than that, the
 * widest steps that there are: the ladder never fails, it is only as good as the paper.
 */
export function gritLadder(way: {
  readonly first?: Grit | undefined
  readonly last: Grit
  readonly grits: readonly Grit[]
  readonly mostRatio: number
}): readonly Grit[] {
  const { first, last, grits, mostRatio } = way
  if (!first || first.sizeM <= last.sizeM) return [last]
  const between = grits
    .filter(({ sizeM }) => sizeM < first.sizeM && sizeM > last.sizeM)
    .sort((a, b) => b.sizeM - a.sizeM)
  const ladder = [first]
  let rungs = between
  for (;;) {
    const now = ladder.at(-1)!
    if (now.sizeM / last.sizeM <= mostRatio * ROUNDED || rungs.length === 0) return [...ladder, last]
    // As far as one step goes; else the nearest there is.
    const within = rungs.filter(({ sizeM }) => now.sizeM / sizeM <= mostRatio * ROUNDED)
    const next = within.at(-1) ?? rungs[0]!
    ladder.push(next)
    rungs = rungs.filter(({ sizeM }) => sizeM < next.sizeM)
  }
}

/** Sizes of grains are means of a spread: so much over counts as on the line. */
const ROUNDED = 1.001

/**
 * Whether a film levels the scratches of a grit.
 * @param of.sizeM grain, m. @param of.filmM dry film that lies over it, m. @param of.mostRatio grains to film.
 */
export const fillsScratches = (of: {
  readonly sizeM: number
  readonly filmM: number
  readonly mostRatio: number
}): boolean => of.sizeM <= of.filmM * of.mostRatio * ROUNDED
