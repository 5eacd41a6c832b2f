/** Writes an amount of money with all its coins: `$12.50`, `12,50 €`, `SEK 1250.00`. */

import { minorDigitsOf, signOf } from './currency.ts'
import { stop } from './unit-error.ts'
import { writeDigits } from './write-number.ts'

const thin = '\u2009'

/**
 * `coins` is a whole number of the smallest coin of `currency` (ISO 4217); the locale decides the decimal sign,
 * and whether the currency stands before or after. Throws a `UnitError` for an unknown currency or a broken coin.
 */
export const writeMoney = (coins: number, currency: string, locale: string): string => {
  const digits = minorDigitsOf(currency)
  const source = { text: `${coins} ${currency}`, dimension: 'money' } as const
  const span = { at: 0, end: source.text.length }
  if (digits === undefined) return stop(source, 'units.unknownUnit', span)
  if (!Number.isSafeInteger(coins)) return stop(source, 'units.notWhole', span)
  const amount = writeDigits(withPoint(Math.abs(coins), digits), locale)
  const minus = coins < 0 ? '\u2212' : ''
  const { before, gap } = placeOf(currency, locale)
  const sign = signOf(currency) ?? currency
  return minus + (before ? sign + gap + amount : amount + gap + sign)
}

/** 1250 with two digits is `12.50`, without going through a binary fraction. */
const withPoint = (coins: number, digits: number): string => {
  const all = String(coins).padStart(digits + 1, '0')
  const point = all.length - digits
  return digits === 0 ? all : `${all.slice(0, point)}.${all.slice(point)}`
}

/** Where the locale puts the currency; taken from `Intl`, the digits are ours. */
const placeOf = (currency: string, locale: string): { readonly before: boolean; readonly gap: string } => {
  const currencyDisplay = signOf(currency) ? 'narrowSymbol' : 'code'
  const parts = new Intl.NumberFormat(locale, { style: 'currency', currency, currencyDisplay }).formatToParts(
    1,
  )
  const at = parts.findIndex(({ type }) => type === 'currency')
  const before = at < parts.findIndex(({ type }) => type === 'integer')
  const beside = parts[before ? at + 1 : at - 1]
  return { before, gap: beside?.type === 'literal' ? thin : '' }
}
