/** Reads an amount of money, its currency before or after it, as a whole number of the smallest coin. */

import { isLetter, skipSpaces } from './chars.ts'
import type { Found, Task } from './checked.ts'
import { currenciesSpelled, minorDigitsOf } from './currency.ts'
import { refuseBoth } from './refuse-both.ts'
import { type ScannedNumber, scanNumber } from './scan-number.ts'
import { scanSign } from './scan-sign.ts'
import { quoted, type Source, type Span, stop } from './unit-error.ts'

export const readMoney = (task: Task): Found => {
  const { source, span } = task
  const { text } = source
  const outer = scanSign(text, span.at)
  const before = scanCurrency(text, outer.end)
  const inner = before && outer.end === span.at ? scanSign(text, skipSpaces(text, before.end)) : undefined
  const at = inner?.end ?? skipSpaces(text, before?.end ?? outer.end)
  if (before && currenciesSpelled(before.spelling).length === 0) return unknown(source, before)
  const number = scanNumber(source, at)
  if (!number) return stop(source, 'units.notANumber', { at, end: span.end })
  const after = scanCurrency(text, skipSpaces(text, number.end))
  const rest = skipSpaces(text, after?.end ?? number.end)
  if (rest < span.end || (before && after)) {
    return stop(source, 'units.leftOver', { at: before && after ? after.at : rest, end: span.end })
  }
  const currency = currencyOf(task, number, before ?? after)
  const coins = coinsOf(task, number, currency)
  return { value: outer.factor * (inner?.factor ?? 1) * coins, unit: currency, currency }
}

type Spelled = Span & { readonly spelling: string }

const scanCurrency = (text: string, at: number): Spelled | undefined => {
  let end = at
  while (isLetter(text[end]) || /^\p{Sc}$/u.test(text[end] ?? '')) end++
  if (end === at) return undefined
  const spelling = text.slice(at, end)
  return { at, end: spelling.toLowerCase() === 'kr' && text[end] === '.' ? end + 1 : end, spelling }
}

const unknown = (source: Source, { at, end }: Span): never => stop(source, 'units.unknownUnit', { at, end })

const currencyOf = (
  { source, limits }: Task,
  number: ScannedNumber,
  spelled: Spelled | undefined,
): string => {
  if (!spelled) return limits.currency ?? stop(source, 'units.missingUnit', number)
  const [code, ...others] = currenciesSpelled(spelled.spelling)
  if (code === undefined) return unknown(source, spelled)
  if (others.length === 0) return code
  const amount = source.text.slice(number.at, number.end)
  const readings = quoted([code, ...others].map((other) => `${other} ${amount}`))
  return stop(source, 'units.ambiguous', spelled, { readings })
}

/**
 * Where a coin has no third digit, `1,250` and `1.250` can only be grouped; where it has, a comma is refused
 * and a point is decimal, as everywhere else.
 */
const coinsOf = ({ source, span }: Task, number: ScannedNumber, currency: string): number => {
  const digits = minorDigitsOf(currency) ?? stop(source, 'units.unknownUnit', span)
  const onlyGrouped = number.grouped !== undefined && digits < 3
  if (number.ambiguous && !onlyGrouped) return refuseBoth(source, number, span.end)
  const amount = onlyGrouped ? (number.grouped as number) : number.value
  const coins = Math.round(amount * 10 ** digits)
  const split = onlyGrouped ? 0 : number.decimals
  const uneven = Math.abs(amount * 10 ** digits - coins) > 1e-6 * Math.max(1, coins * 1e-9)
  if (split > digits || uneven) return stop(source, 'units.tooFine', number, { decimals: digits, currency })
  if (!Number.isSafeInteger(coins))
    return stop(source, 'units.outOfRange', number, { atMost: Number.MAX_SAFE_INTEGER })
  return coins
}
