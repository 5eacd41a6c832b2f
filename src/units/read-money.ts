/** Reads an amount of money, its currency before or after it, as a whole number of the smallest coin. */

import { isLetter, skipSpaces } from './chars.ts'
import type { Found, Task } from './checked.ts'
import { coinsOf } from './coins.ts'
import { currenciesSpelled } from './currency.ts'
import { unitsSpelled } from './find-unit.ts'
import { type ScannedNumber, scanNumber } from './scan-number.ts'
import { scanSign } from './scan-sign.ts'
import { quoted, type Source, type Span, stop } from './unit-error.ts'

export const readMoney = (task: Task): Found => {
  const { source, span } = task
  const { text } = source
  const outer = scanSign(text, span.at)
  const before = scanCurrency(text, outer.end)
  const start = skipSpaces(text, before?.end ?? outer.end)
  const { factor, end: at } = outer.end === span.at ? scanSign(text, start) : { ...outer, end: start }
  const number = scanNumber(source, at)
  if (!number) return stop(source, 'units.notANumber', { at, end: span.end })
  const after = before ? undefined : scanCurrency(text, skipSpaces(text, number.end))
  const rest = skipSpaces(text, after?.end ?? number.end)
  if (rest < span.end) return stop(source, 'units.leftOver', { at: rest, end: span.end })
  const currency = currencyOf(task, number, before ?? after)
  return { value: factor * coinsOf(task, number, currency), unit: currency, currency }
}

type Spelled = Span & { readonly spelling: string }

const scanCurrency = (text: string, at: number): Spelled | undefined => {
  let end = at
  while (isLetter(text[end]) || /^\p{Sc}$/u.test(text[end] ?? '')) end++
  if (end === at) return undefined
  const spelling = text.slice(at, end)
  return { at, end: spelling.toLowerCase() === 'kr' && text[end] === '.' ? end + 1 : end, spelling }
}

const currencyOf = (
  { source, limits }: Task,
  number: ScannedNumber,
  spelled: Spelled | undefined,
): string => {
  if (!spelled) return limits.currency ?? stop(source, 'units.missingUnit', number)
  const [code, ...others] = currenciesSpelled(spelled.spelling)
  if (code === undefined) return noCurrency(source, spelled)
  if (others.length === 0) return code
  const amount = source.text.slice(number.at, number.end)
  const readings = quoted([code, ...others].map((other) => `${other} ${amount}`))
  return stop(source, 'units.ambiguous', spelled, { readings })
}

const noCurrency = (source: Source, spelled: Spelled): never => {
  const unit = unitsSpelled(spelled.spelling)[0]
  return unit
    ? stop(source, 'units.wrongDimension', spelled, { got: unit.kind })
    : stop(source, 'units.unknownUnit', spelled)
}
