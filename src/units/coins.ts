/** Turns an amount as written into a whole number of coins, digit by digit. */

import type { Task } from './checked.ts'
import { minorDigitsOf } from './currency.ts'
import { refuseBoth } from './refuse-both.ts'
import type { ScannedNumber } from './scan-number.ts'
import { quoted, type Source, stop } from './unit-error.ts'

/**
 * Where a coin has no third digit, `1,250` can only be grouped; `1.250` is refused, for a point is decimal
 * everywhere else and a price may be written to the tenth of a cent.
 */
export const coinsOf = ({ source, span }: Task, number: ScannedNumber, currency: string): number => {
  const digits = minorDigitsOf(currency) ?? stop(source, 'units.unknownUnit', span)
  const coins = number.grouped === undefined ? undefined : groupedCoins(source, number, { digits, currency })
  return coins ?? exactCoins(source, number, { digits, currency })
}

type Coin = { readonly digits: number; readonly currency: string }

const groupedCoins = (
  source: Source,
  number: ScannedNumber,
  { digits, currency }: Coin,
): number | undefined => {
  if (digits >= 3) return number.ambiguous ? refuseBoth(source, number, source.text.length) : undefined
  if (number.ambiguous) return (number.grouped as number) * 10 ** digits
  const readings = quoted(
    [number.grouped as number, number.value.toFixed(digits)].map((n) => `${n} ${currency}`),
  )
  return stop(source, 'units.ambiguous', number, { readings })
}

const exactCoins = (source: Source, number: ScannedNumber, coin: Coin): number => {
  const { digits, currency } = coin
  const coins = number.digits === '' ? number.value * 10 ** digits : shiftedPoint(number.digits, digits)
  if (coins === undefined || !Number.isInteger(coins)) {
    return stop(source, 'units.tooFine', number, { decimals: digits, currency })
  }
  const fits = Number.isSafeInteger(coins)
  return fits ? coins : stop(source, 'units.outOfRange', number, { atMost: Number.MAX_SAFE_INTEGER })
}

/** `12.5` with two digits is 1250, without going through a binary fraction; zeros further on do no harm. */
const shiftedPoint = (plain: string, digits: number): number | undefined => {
  const [head = '', tail = ''] = plain.split('.')
  const beyond = tail.slice(digits)
  return /[1-9]/.test(beyond) ? undefined : Number(head + tail.slice(0, digits).padEnd(digits, '0'))
}
