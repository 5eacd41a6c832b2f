/** Base and hardener as a cup can measure them: whole millilitres that keep the ratio, and never less than is wanted. */

/** m³ each, or shares. */
export type MeasuredParts = { readonly base: number; readonly hardener: number }

/** Ratios in whole numbers up to this sum are kept exactly: a cup is filled up to the next whole share. */
const mostShares = 12
/** Under this a whole millilitre is too coarse, ml: a few drops of catalyst matter. */
const fineBelow = 20
/** Rounding of decimals is no reason for one more share. */
const slack = 1e-6

/**
 * @param wanted.volume m³ of base and hardener together. @param wanted.base and @param wanted.hardener parts by volume, any
 * scale; no hardener for a one-part paint.
 * @returns m³, no less than wanted. Ratios such as 1 : 1, 2 : 1 or 5 : 1 come out exactly; else the base is whole and the
 * hardener goes with it, to the nearest millilitre, or tenth where it is a few drops.
 */
export function measuredParts(wanted: {
  readonly volume: number
  readonly base: number
  readonly hardener: number
}): MeasuredParts {
  const { base, hardener } = wanted
  const ml = wanted.volume * 1e6
  if (hardener === 0) return { base: upTo(ml) / 1e6, hardener: 0 }
  const shares = wholeShares(base / hardener)
  if (shares) {
    const count = upTo(ml / (shares.base + shares.hardener))
    return { base: (count * shares.base) / 1e6, hardener: (count * shares.hardener) / 1e6 }
  }
  const baseMl = upTo((ml * base) / (base + hardener))
  const exact = (baseMl * hardener) / base
  return { base: baseMl / 1e6, hardener: (exact < fineBelow ? tenths(exact) : Math.round(exact)) / 1e6 }
}

const upTo = (value: number): number => Math.ceil(value - slack)
const tenths = (value: number): number => Math.round(value * 10) / 10

/** A ratio in whole numbers whose sum is small, each a share of that many; undefined where there is none. */
export function wholeShares(ratio: number): MeasuredParts | undefined {
  for (let hardener = 1; hardener < mostShares; hardener++) {
    const base = Math.round(ratio * hardener)
    if (base >= 1 && base + hardener <= mostShares && Math.abs(base - ratio * hardener) < slack)
      return { base, hardener }
  }
  return undefined
}
