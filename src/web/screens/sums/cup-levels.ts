/** Where the level of each part stands in a cup that is wider at its rim, poured in order. */

export type Poured = { readonly key: string; readonly volumeMl: number }

export type CupLevel = Poured & {
  /** Poured with everything below it, ml. */
  readonly toMl: number
  /** Height of its level, 0 at the bottom of the cup and 1 at the rim. */
  readonly height: number
}

/** Widths at bottom and rim, as shares of the rim's. */
export const cupTaper = { bottom: 0.72, rim: 1 }

/** The cup holds this much more than is poured, so that it can be stirred. */
const room = 1.3

export function cupLevels(parts: readonly Poured[]): readonly CupLevel[] {
  const poured = parts.filter(({ volumeMl }) => volumeMl > 0)
  const all = poured.reduce((sum, { volumeMl }) => sum + volumeMl, 0)
  let toMl = 0
  return poured.map((part) => {
    toMl += part.volumeMl
    return { ...part, toMl, height: heightOf(toMl / (all * room)) }
  })
}

/** A frustum's height for a share of its volume: radii grow evenly, so volume goes with their cubes. */
function heightOf(share: number): number {
  const { bottom, rim } = cupTaper
  const radius = Math.cbrt(bottom ** 3 + share * (rim ** 3 - bottom ** 3))
  return (radius - bottom) / (rim - bottom)
}

/** Half width of the cup at a height, as a share of half the rim. */
export const cupWidth = (height: number): number =>
  cupTaper.bottom + height * (cupTaper.rim - cupTaper.bottom)
