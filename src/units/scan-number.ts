/**
 * Reads one unsigned number: `7.72`, `7,72`, `1 250`, `1.250,5`, `1e3`, `3/8`, `1 1/2`, `1-1/2`, `1½`.
 * A number with two readings (`1,250`) gives both and leaves the choice to the caller.
 */

import { isDigit, isMinus, isSlash, isSpace, skipDigits, skipSpaces } from './chars.ts'
import { type Source, stop } from './unit-error.ts'

export type ScannedNumber = {
  readonly at: number
  readonly end: number
  readonly value: number
  /** Digits after the decimal sign; 0 for whole numbers and fractions. */
  readonly decimals: number
  /** Only digits, perhaps grouped. */
  readonly whole: boolean
  /** The number in plain digits with a point; empty for a fraction or an exponent. */
  readonly digits: string
  /** The value when its one comma or point is a grouping sign, where that can be. */
  readonly grouped?: number
  /** Both readings hold and the sign is a comma, so that neither is taken for granted. */
  readonly ambiguous: boolean
}

const vulgarFractions: Readonly<Record<string, number>> = {
  '¼': 1 / 4,
  '½': 1 / 2,
  '¾': 3 / 4,
  '⅐': 1 / 7,
  '⅑': 1 / 9,
  '⅒': 1 / 10,
  '⅓': 1 / 3,
  '⅔': 2 / 3,
  '⅕': 1 / 5,
  '⅖': 2 / 5,
  '⅗': 3 / 5,
  '⅘': 4 / 5,
  '⅙': 1 / 6,
  '⅚': 5 / 6,
  '⅛': 1 / 8,
  '⅜': 3 / 8,
  '⅝': 5 / 8,
  '⅞': 7 / 8,
}

/** Scans a number at `at`, or gives undefined when none starts there; throws when one is malformed. */
export const scanNumber = (source: Source, at: number): ScannedNumber | undefined => {
  const { text } = source
  const vulgar = vulgarFractions[text[at] ?? '']
  if (vulgar !== undefined) return fraction(at, at + 1, vulgar)
  const startsHere = isDigit(text[at]) || (isSeparator(text[at]) && isDigit(text[at + 1]))
  if (!startsHere) return undefined
  const end = endOfDigits(text, at)
  if (isWhole(text, at, end)) {
    const withFraction = scanFraction(source, at, end)
    if (withFraction) return withFraction
  }
  return finish(source, at, end)
}

const isSeparator = (c: string | undefined): boolean => c === '.' || c === ','

const isWhole = (text: string, at: number, end: number): boolean => skipDigits(text, at) === end

const fraction = (at: number, end: number, value: number): ScannedNumber => ({
  at,
  end,
  value,
  decimals: 0,
  digits: '',
  whole: false,
  ambiguous: false,
})

/** The end of digits, separators between digits, and spaces that group three digits. */
const endOfDigits = (text: string, at: number): number => {
  let end = skipDigits(text, at)
  if (end > at && end - at <= 3) while (groupsThree(text, end)) end += 4
  while (isSeparator(text[end]) && isDigit(text[end + 1])) end = skipDigits(text, end + 1)
  return end
}

const groupsThree = (text: string, at: number): boolean =>
  isSpace(text[at]) &&
  skipDigits(text, at + 1) === at + 4 &&
  !(isSlash(text[at + 4]) && isDigit(text[at + 5]))

const scanFraction = (source: Source, at: number, end: number): ScannedNumber | undefined => {
  const { text } = source
  const whole = Number(text.slice(at, end))
  if (isSlash(text[end]) && isDigit(text[end + 1]))
    return overSlash(source, { at, top: at, slash: end, whole: 0 })
  const gap = isMinus(text[end]) ? end + 1 : skipSpaces(text, end)
  const vulgar = vulgarFractions[text[gap] ?? '']
  if (vulgar !== undefined) return fraction(at, gap + 1, whole + vulgar)
  const slash = skipDigits(text, gap)
  if (gap === end || slash === gap || !isSlash(text[slash]) || !isDigit(text[slash + 1])) return undefined
  return overSlash(source, { at, top: gap, slash, whole })
}

type Slashed = { readonly at: number; readonly top: number; readonly slash: number; readonly whole: number }

const overSlash = (source: Source, { at, top, slash, whole }: Slashed): ScannedNumber => {
  const { text } = source
  const end = skipDigits(text, slash + 1)
  const above = Number(text.slice(top, slash))
  const below = Number(text.slice(slash + 1, end))
  const improper = top > at && above >= below
  const goesOn =
    (isSeparator(text[end]) && isDigit(text[end + 1])) || (isSlash(text[end]) && isDigit(text[end + 1]))
  if (below === 0 || improper || goesOn) return stop(source, 'units.notANumber', { at, end })
  return fraction(at, end, whole + above / below)
}

const finish = (source: Source, at: number, mantissaEnd: number): ScannedNumber => {
  const { text } = source
  const readings = readingsOf(text.slice(at, mantissaEnd))
  if (!readings) return stop(source, 'units.notANumber', { at, end: mantissaEnd })
  const end = endOfExponent(text, mantissaEnd)
  const power = text.slice(mantissaEnd, end).replace(/[\u2010-\u2012\u2013\u2212]/, '-')
  const numberOf = (digits: string): number => inRange(source, { at, end }, digits, Number(digits + power))
  const grouped = readings.grouped === undefined ? {} : { grouped: numberOf(readings.grouped) }
  return {
    at,
    end,
    value: numberOf(readings.decimal),
    decimals: power === '' ? readings.decimals : 0,
    digits: power === '' ? readings.decimal : '',
    whole: power === '' && readings.decimals === 0,
    ambiguous: readings.ambiguous,
    ...grouped,
  }
}

/** Refuses what the machine cannot hold: too large, or so small that it would turn into nothing. */
const inRange = (
  source: Source,
  span: { at: number; end: number },
  digits: string,
  value: number,
): number => {
  const vanished = value === 0 && /[1-9]/.test(digits)
  if (!Number.isFinite(value) || vanished) return stop(source, 'units.outOfRange', span)
  return value
}

const endOfExponent = (text: string, at: number): number => {
  if (text[at] !== 'e' && text[at] !== 'E') return at
  const signed = isMinus(text[at + 1]) || text[at + 1] === '+' ? at + 2 : at + 1
  const end = skipDigits(text, signed)
  return end === signed ? at : end
}

type Readings = {
  readonly decimal: string
  readonly decimals: number
  readonly grouped?: string
  readonly ambiguous: boolean
}

const readingsOf = (raw: string): Readings | undefined => {
  const spaced = [...raw].some(isSpace)
  const digits = spaced ? [...raw].filter((c) => !isSpace(c)).join('') : raw
  const commas = digits.split(',').length - 1
  const points = digits.split('.').length - 1
  if (commas + points === 0) return { decimal: digits, decimals: 0, ambiguous: false }
  if (commas > 0 && points > 0) return spaced ? undefined : twoSigns(digits)
  return oneSign(digits, { sign: commas > 0 ? ',' : '.', count: commas + points, spaced })
}

/** `1.250,5` or `1,250.5`: the last sign is the decimal one, the other must group threes. */
const twoSigns = (digits: string): Readings | undefined => {
  const decimalAt = Math.max(digits.lastIndexOf(','), digits.lastIndexOf('.'))
  const decimalSign = digits[decimalAt] as string
  const head = digits.slice(0, decimalAt)
  const groupSign = decimalSign === ',' ? '.' : ','
  if (head.includes(decimalSign) || !groupsWell(head, groupSign)) return undefined
  return decimalReading(head.split(groupSign).join(''), digits.slice(decimalAt + 1))
}

type OneSign = { readonly sign: ',' | '.'; readonly count: number; readonly spaced: boolean }

const oneSign = (digits: string, { sign, count, spaced }: OneSign): Readings | undefined => {
  const groups = !spaced && groupsWell(digits, sign)
  const joined = digits.split(sign).join('')
  if (count > 1) return groups ? { decimal: joined, decimals: 0, ambiguous: false } : undefined
  const [head, tail] = digits.split(sign) as [string, string]
  const decimal = decimalReading(head, tail)
  return groups ? { ...decimal, grouped: joined, ambiguous: sign === ',' } : decimal
}

const decimalReading = (head: string, tail: string): Readings => ({
  decimal: `${head === '' ? '0' : head}.${tail}`,
  decimals: tail.length,
  ambiguous: false,
})

/** Whether the sign can be a grouping sign: one to three digits not led by 0, then threes. */
const groupsWell = (digits: string, sign: string): boolean => {
  const [first = '', ...rest] = digits.split(sign)
  return (
    first.length >= 1 && first.length <= 3 && first[0] !== '0' && rest.every((group) => group.length === 3)
  )
}
