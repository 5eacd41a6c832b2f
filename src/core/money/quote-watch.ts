/** Warns while a job runs past its quote, early enough to talk to the owner. */
import type { Note } from '#core/note'

/** Shares of the quote at which to warn, in hundredths so that the comparison is exact (common practice). */
const warnAtHundredths = 10
const stopAtHundredths = 15

/**
 * Compares the forecast cost with the quote, both in the smallest coin. From 10 % over it gives
 * `money.forecastOverQuote`, from 15 % over `money.forecastFarOverQuote` instead, with the share that it is
 * over. Nothing under 10 %, and nothing without a quote (0 or less) to compare with.
 */
export function quoteWatch({
  quoteCoins,
  forecastCoins,
}: {
  readonly quoteCoins: number
  readonly forecastCoins: number
}): readonly Note[] {
  if (!(quoteCoins > 0)) return []
  const over = forecastCoins - quoteCoins
  const reaches = (hundredths: number): boolean => over * 100 >= quoteCoins * hundredths
  if (!reaches(warnAtHundredths)) return []
  const code = reaches(stopAtHundredths) ? 'money.forecastFarOverQuote' : 'money.forecastOverQuote'
  const data = { quoteCoins, forecastCoins, overCoins: over, overShare: over / quoteCoins }
  return [{ code, severity: 'notice', data, source: 'assumed' }]
}
