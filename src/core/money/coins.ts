/** Sums in the smallest coin: whole numbers, checked, rounded half up in one place. */

/**
 * Half up, towards plus infinity on a draw. The product is first cut to 15 digits, all that a double holds for
 * certain, so that 1.005 × 100 is 100.5 and not a hair less. Very large products stand as they are.
 */
export const toCoins = (exact: number): number => {
  const sure = Math.abs(exact) < 1e14 ? Number(exact.toPrecision(15)) : exact
  return Number.isInteger(sure) ? sure : Math.floor(sure + 0.5)
}

/** Whether a sum can be held to the coin: whole and inside 2^53. */
export const isCoins = (value: number): boolean => Number.isSafeInteger(value)

/** Sum of the coins that are known; NaN once it passes 2^53, so that no wrong sum is ever shown. */
export const sumCoins = (coins: readonly (number | undefined)[]): number => {
  let sum = 0
  for (const each of coins) {
    sum += each ?? 0
    if (!isCoins(sum)) return Number.NaN
  }
  return sum
}
