/** Reads a unit as written after a number: `ft`, `sq. ft`, `g/m2`, `fl oz per qt`, `ml/100 ml`. */

import {
  isDegree,
  isDigit,
  isDoubleQuote,
  isLetter,
  isMinus,
  isSingleQuote,
  isSlash,
  isSpace,
  skipSpaces,
} from './chars.ts'
import { currenciesSpelled } from './currency.ts'
import type { Dimension } from './dimension.ts'
import { nearestUnit, preferring, unitsSpelled } from './find-unit.ts'
import { pairUnits } from './pair-units.ts'
import { scanNumber } from './scan-number.ts'
import { quoted, type Source, type Span, stop } from './unit-error.ts'
import type { Unit } from './unit-table.ts'

export type ScannedUnit = {
  readonly unit: Unit
  readonly at: number
  readonly end: number
  /** As spelled in the text, spaces and dots made even. */
  readonly spelling: string
}

/** A unit without a kind of its own, such as mass over time. */
export type ScannedPair = { readonly pair: string; readonly at: number; readonly end: number }

type Word = { readonly word: string; readonly end: number }
type Term = {
  readonly units: readonly Unit[]
  readonly spelling: string
  readonly at: number
  readonly end: number
}

const mostWords = 4

/** Scans a unit at `at` (spaces allowed before it); undefined when no unit starts there; throws when unknown. */
export const scanUnit = (source: Source, at: number): ScannedUnit | ScannedPair | undefined => {
  const top = scanTerm(source, skipSpaces(source.text, at))
  if (!top) return undefined
  const per = endOfPer(source.text, top.end)
  return per === undefined ? oneUnit(source, top) : scanPair(source, top, per)
}

const oneUnit = (source: Source, { units, ...term }: Term): ScannedUnit => {
  const chosen = preferring(units, source.dimension)
  const unit = chosen[0] as Unit
  if (source.dimension === 'areicMass') refuseOunces(source, { units, ...term }, ['oz/ft²', 'oz/yd²'])
  if (chosen.length > 1)
    stopAmbiguous(
      source,
      term,
      chosen.map(({ id }) => id),
    )
  return { unit, ...term }
}

const scanPair = (source: Source, top: Term, per: number): ScannedUnit | ScannedPair => {
  const { text } = source
  const start = skipSpaces(text, per)
  const number = scanNumber(source, start)
  if (number && (number.ambiguous || number.value === 0)) stop(source, 'units.notANumber', number)
  const bottom = scanTerm(source, number ? skipSpaces(text, number.end) : start)
  if (!bottom) return stop(source, 'units.missingUnit', { at: per, end: Math.min(per + 1, text.length) })
  const span = { at: top.at, end: bottom.end }
  const unit = pairUnits(singled(source, top), singled(source, bottom), number?.value ?? 1)
  if (typeof unit === 'string') return { pair: unit, ...span }
  return { unit, spelling: `${top.spelling}/${bottom.spelling}`, ...span }
}

const wantsVolume: readonly Dimension[] = ['volume', 'volumeShare', 'coverage', 'volumeRate']
const bareOunces: readonly string[] = ['oz', 'ozs', 'ounce', 'ounces']

/** A bare `oz` is a volume to one and a weight to another, and a cloth weight over one of two areas. */
const refuseOunces = (source: Source, term: Term, readings: readonly string[]): void => {
  if (bareOunces.includes(term.spelling.toLowerCase())) stopAmbiguous(source, term, readings)
}

const singled = (source: Source, { units, at, end }: Term): Unit => {
  if (units.length > 1 && units.every(({ kind }) => kind === units[0]?.kind)) {
    stopAmbiguous(
      source,
      { at, end },
      units.map(({ id }) => id),
    )
  }
  return units[0] as Unit
}

/** Refuses a spelling that stands for several units, naming the whole text with each in its place. */
export const stopAmbiguous = (source: Source, { at, end }: Span, ids: readonly string[]): never => {
  const { text } = source
  const gap = isSpace(text[at - 1]) || at === 0 ? '' : ' '
  const readings = ids.map((id) => `${text.slice(0, at)}${gap}${id}${text.slice(end)}`.trim())
  return stop(source, 'units.ambiguous', { at, end }, { readings: quoted(readings) })
}

const endOfPer = (text: string, at: number): number | undefined => {
  const start = skipSpaces(text, at)
  if (isSlash(text[start])) return start + 1
  const word = scanWord(text, start)
  return word?.word.toLowerCase() === 'per' ? word.end : undefined
}

/** The longest run of words that spells a unit, with its exponent. */
const scanTerm = (source: Source, at: number): Term | undefined => {
  const words = scanWords(source.text, at)
  if (words.length === 0) return undefined
  for (let count = words.length; count > 0; count--) {
    const spelling = words
      .slice(0, count)
      .map(({ word }) => word)
      .join(' ')
    const { end } = words[count - 1] as Word
    const term = raised(source.text, { units: unitsSpelled(spelling), spelling, at, end })
    if (term.units.length > 0) {
      if (wantsVolume.includes(source.dimension)) refuseOunces(source, term, ['fl oz', 'oz av'])
      return term
    }
  }
  const { word, end } = words[0] as Word
  if (currenciesSpelled(word).length > 0) stop(source, 'units.wrongDimension', { at, end }, { got: 'money' })
  const nearest = nearestUnit(word, source.dimension)
  return stop(source, 'units.unknownUnit', { at, end }, nearest === undefined ? {} : { nearest })
}

const scanWords = (text: string, at: number): readonly Word[] => {
  const words: Word[] = []
  let next = at
  while (words.length < mostWords) {
    const word = scanWord(text, next)
    if (!word) break
    words.push(word)
    next = isMinus(text[word.end]) ? word.end + 1 : skipSpaces(text, word.end)
  }
  return words
}

/** One word of a unit: letters with a dot after them, or one sign (`°`, `%`, `'`, `"`). */
const scanWord = (text: string, at: number): Word | undefined => {
  const sign = scanSign(text, at)
  if (sign) return sign
  let end = at
  while (isLetter(text[end])) end++
  if (end === at) return undefined
  const word = text.slice(at, end).replaceAll('\u03bc', 'µ')
  return { word, end: text[end] === '.' && !isDigit(text[end + 1]) ? end + 1 : end }
}

const scanSign = (text: string, at: number): Word | undefined => {
  const c = text[at]
  if (c === undefined) return undefined
  if (isDegree(c)) return { word: '°', end: at + 1 }
  if (isDoubleQuote(c)) return { word: '"', end: at + 1 }
  if (isSingleQuote(c)) {
    return isSingleQuote(text[at + 1]) ? { word: '"', end: at + 2 } : { word: "'", end: at + 1 }
  }
  return '%‰℃℉'.includes(c) || /^\p{Sc}$/u.test(c) ? { word: c, end: at + 1 } : undefined
}

/** The unit squared or cubed when an exponent follows: `m²`, `m2`, `m^2`; the term itself when none does. */
const raised = (text: string, term: Term): Term => {
  const end = endOfExponent(text, term.end)
  if (end === term.end || term.units.length === 0) return term
  const power = '2²'.includes(text[end - 1] as string) ? '²' : '³'
  const units = term.units.flatMap(({ id }) => unitsSpelled(id + power))
  return { ...term, units, spelling: term.spelling + power, end }
}

const endOfExponent = (text: string, at: number): number => {
  const c = text[at]
  if (c === '²' || c === '³') return at + 1
  const digit = c === '^' ? at + 1 : at
  if (text[digit] !== '2' && text[digit] !== '3') return at
  return endsThere(text, digit + 1) ? digit + 1 : at
}

/** A digit glued to a unit is its exponent only when no number or word goes on from it (`5ft3/4in`, `5ft2in`). */
const endsThere = (text: string, at: number): boolean => {
  const c = text[at]
  const goesOn = c === '.' || c === ',' || isSlash(c)
  return (
    !isDigit(c) &&
    !isLetter(c) &&
    !isSingleQuote(c) &&
    !isDoubleQuote(c) &&
    !(goesOn && isDigit(text[at + 1]))
  )
}
