// The statistics of timings: ranks, because one slow run in a hundred must not move the figure.

/**
 * @param {readonly number[]} values at least one
 * @returns {number} the middle value, of an even count the mean of the two in the middle
 */
export function median(values) {
  return quantile(values, 0.5)
}

/**
 * @param {readonly number[]} values at least one
 * @returns {number} the value that 95 of 100 do not pass
 */
export function p95(values) {
  return quantile(values, 0.95)
}

/**
 * Linear between ranks: type 7 of Hyndman and Fan, Sample Quantiles in Statistical Packages, 1996.
 *
 * @param {readonly number[]} values at least one, none NaN
 * @param {number} share 0 to 1
 * @returns {number}
 */
export function quantile(values, share) {
  if (values.length === 0) throw new RangeError('quantile: no values, got 0, expected at least 1')
  const sorted = values.toSorted((a, b) => a - b)
  const rank = (sorted.length - 1) * share
  const below = sorted[Math.floor(rank)] ?? Number.NaN
  const above = sorted[Math.ceil(rank)] ?? Number.NaN
  return below + (above - below) * (rank - Math.floor(rank))
}

/**
 * The median of the ratios round by round. What slows the machine for a moment slows both halves of a round, so the
 * ratio of a round is steadier than the ratio of two medians.
 *
 * @param {readonly number[]} a
 * @param {readonly number[]} b as many as `a`
 * @returns {number}
 */
export function medianRatio(a, b) {
  if (a.length !== b.length) throw new RangeError(`ratio: uneven rounds, got ${a.length} and ${b.length}`)
  return median(a.map((value, i) => value / (b[i] ?? Number.NaN)))
}
