/** Reads a number and its unit, or several that add up (`25 ft 4 in`), for every dimension that has units. */

import { isMinus, skipDigits, skipSpaces } from './chars.ts'
import type { Found, Task } from './checked.ts'
import { dimensionRules } from './dimension.ts'
import { clockParts } from './read-colon.ts'
import { refuseBoth } from './refuse-both.ts'
import { type ScannedNumber, scanNumber } from './scan-number.ts'
import { scanSign } from './scan-sign.ts'
import { type ScannedUnit, scanUnit } from './scan-unit.ts'
import { type Source, stop } from './unit-error.ts'
import { type Unit, unitTable } from './unit-table.ts'

export type Part = { readonly number: ScannedNumber; readonly unit: Unit; readonly spelling: string }

export const readMeasure = (task: Task): Found => {
  const { source, span } = task
  const sign = scanSign(source.text, span.at)
  const colon = source.dimension === 'time' ? clockParts(source, { at: sign.end, end: span.end }) : undefined
  if (colon) return { value: sign.factor * colon.value, unit: colon.unit }
  const number = numberAt(task, sign.end)
  const bare = dimensionRules[source.dimension].bare && number.end === span.end
  if (bare) return { value: sign.factor * number.value, unit: '' }
  const parts = partsFrom(task, number)
  const unit = (parts[0] as Part).unit
  return { value: toSi(source, parts, sign.factor), unit: unit.id }
}

const numberAt = ({ source, span }: Task, at: number): ScannedNumber => {
  const number = scanNumber(source, at)
  if (!number) return stop(source, 'units.notANumber', { at, end: span.end })
  if (number.ambiguous) refuseBoth(source, number, span.end)
  return number
}

const partsFrom = (task: Task, first: ScannedNumber): readonly Part[] => {
  const { source, span } = task
  const parts: Part[] = []
  let number = first
  for (;;) {
    const { part, end } = partAt(task, number, parts.at(-1))
    parts.push(part)
    const next = nextPart(source.text, end)
    if (end >= span.end) return parts
    if (!mayFollow(task, part))
      return stop(source, 'units.leftOver', { at: skipSpaces(source.text, end), end: span.end })
    const following = scanNumber(source, next)
    if (!following) return stop(source, 'units.leftOver', { at: skipSpaces(source.text, end), end: span.end })
    number = numberAt(task, next)
  }
}

const mayFollow = ({ source }: Task, { number, unit }: Part): boolean =>
  dimensionRules[source.dimension].parts && unit.simple && number.whole

/** Skips what people put between feet and inches: a space, a comma, a hyphen, `and`. */
const nextPart = (text: string, at: number): number => {
  const gap = skipSpaces(text, at)
  if (text[gap] === ',' || text[gap] === '+' || isMinus(text[gap])) return skipSpaces(text, gap + 1)
  return text.slice(gap, gap + 4).toLowerCase() === 'and ' ? skipSpaces(text, gap + 4) : gap
}

const partAt = (task: Task, number: ScannedNumber, before: Part | undefined) => {
  const { source, span } = task
  const scanned = impliedUnit(task, number, before) ?? scanUnit(source, number.end)
  if (!scanned || scanned.at >= span.end) return noUnit(task, number)
  if ('pair' in scanned) return wrong(source, scanned, scanned.pair)
  const { kind } = scanned.unit
  const rule = dimensionRules[source.dimension]
  if (!rule.kinds.includes(kind) && rule.inverse !== kind) return wrong(source, scanned, kind)
  const smaller =
    !before || (before.unit.kind === kind && scanned.unit.simple && isSmaller(scanned.unit, before.unit))
  if (!smaller) return stop(source, 'units.leftOver', { at: number.at, end: span.end })
  return { part: { number, unit: scanned.unit, spelling: scanned.spelling }, end: scanned.end }
}

const isSmaller = (unit: Unit, than: Unit): boolean => unit.times / unit.over < than.times / than.over

const wrong = (source: Source, span: { at: number; end: number }, kind: string): never =>
  stop(source, 'units.wrongDimension', span, { got: kind })

const noUnit = ({ source, span }: Task, number: ScannedNumber): never => {
  const at = skipSpaces(source.text, number.end)
  return at >= span.end
    ? stop(source, 'units.missingUnit', { at: number.at, end: number.end })
    : stop(source, 'units.leftOver', { at, end: span.end })
}

/** Inches after a foot mark and minutes after hours need no unit (`25'4`, `2h30`), and `m` is minutes there. */
const impliedUnit = (
  { source, span }: Task,
  number: ScannedNumber,
  before: Part | undefined,
): ScannedUnit | undefined => {
  const { text, dimension } = source
  const after = before?.spelling
  const at = skipSpaces(text, number.end)
  if (dimension === 'length' && after === "'" && at >= span.end) return implied('in', number.end)
  if (dimension !== 'time' || before?.unit.id !== 'h') return undefined
  if (at >= span.end && skipDigits(text, number.at) === number.at + 2) return implied('min', number.end)
  return text[at] === 'm' && at + 1 >= span.end ? implied('min', at + 1) : undefined
}

const implied = (id: string, end: number): ScannedUnit => {
  const unit = unitTable.find((candidate) => candidate.id === id) as Unit
  return { unit, at: end - 1, end, spelling: id }
}

/** Parts are added in the smallest unit, where the sizes are whole multiples, so that no digit is lost. */
const toSi = (source: Source, parts: readonly Part[], sign: 1 | -1): number => {
  const { unit: smallest } = parts.at(-1) as Part
  const sum = parts.reduce(
    (total, { number, unit }) =>
      total + (number.value * unit.times * smallest.over) / (unit.over * smallest.times),
    0,
  )
  const amount = parts.length === 1 ? (parts[0] as Part).number.value : sum
  const zero = source.dimension === 'temperature' ? smallest.zero : 0
  const value = ((sign * amount - zero) * smallest.times) / smallest.over
  const vanished = value === 0 && amount !== zero
  if (vanished) return Number.NaN
  return dimensionRules[source.dimension].inverse === smallest.kind ? 1 / value : value
}
