/** Reads the numbers and units of one quantity, largest unit first: `25 ft 4 in`, `25'4`, `2h30`, `5 lb 4 oz`. */

import { isMinus, skipDigits, skipSpaces } from './chars.ts'
import type { Task } from './checked.ts'
import { dimensionRules } from './dimension.ts'
import { refuseBoth } from './refuse-both.ts'
import { type ScannedNumber, scanNumber } from './scan-number.ts'
import { type ScannedUnit, scanUnit } from './scan-unit.ts'
import { type Source, type Span, stop } from './unit-error.ts'
import { type Unit, unitTable } from './unit-table.ts'

export type Part = { readonly number: ScannedNumber; readonly unit: Unit; readonly spelling: string }

/** The number at `at`; throws when there is none or it has two readings. */
export const numberAt = ({ source, span }: Task, at: number): ScannedNumber => {
  const number = scanNumber(source, at)
  if (!number) return stop(source, 'units.notANumber', { at, end: span.end })
  return number.ambiguous ? refuseBoth(source, number, span.end) : number
}

/** All parts from the first number on; throws unless they reach the end of the text. */
export const scanParts = (task: Task, first: ScannedNumber): readonly Part[] => {
  const { source, span } = task
  const parts: Part[] = []
  let number = first
  for (;;) {
    const { part, end } = scanPart(task, number, parts.at(-1))
    parts.push(part)
    if (end >= span.end) return parts
    const next = mayFollow(source, part) ? scanNumber(source, skipLink(source.text, end, part)) : undefined
    if (!next) return stop(source, 'units.leftOver', { at: skipSpaces(source.text, end), end: span.end })
    number = numberAt(task, next.at)
  }
}

/** Only whole numbers of a simple unit take a smaller one after them. */
const mayFollow = (source: Source, { number, unit }: Part): boolean =>
  dimensionRules[source.dimension].parts && unit.simple && number.whole

/** Skips what people put between parts: a space, a comma, `and`; after feet a hyphen too (`25'-4"`). */
const skipLink = (text: string, at: number, { unit }: Part): number => {
  const gap = skipSpaces(text, at)
  const hyphen = unit.id === 'ft' && isMinus(text[gap])
  if (hyphen || text[gap] === ',' || text[gap] === '+') return skipSpaces(text, gap + 1)
  return text.slice(gap, gap + 4).toLowerCase() === 'and ' ? skipSpaces(text, gap + 4) : gap
}

const scanPart = (task: Task, number: ScannedNumber, before: Part | undefined) => {
  const { source, span } = task
  const scanned = impliedUnit(task, number, before) ?? scanUnit(source, number.end)
  if (!scanned || scanned.at >= span.end) return noUnit(task, number)
  if ('pair' in scanned) return wrong(source, scanned, scanned.pair)
  const { unit, spelling, end } = scanned
  const { kinds, inverse } = dimensionRules[source.dimension]
  if (!kinds.includes(unit.kind) && inverse !== unit.kind) return wrong(source, scanned, unit.kind)
  if (before && !isSmaller(unit, before.unit)) {
    return stop(source, 'units.leftOver', { at: number.at, end: span.end })
  }
  return { part: { number, unit, spelling }, end }
}

const isSmaller = (unit: Unit, than: Unit): boolean =>
  unit.simple && unit.kind === than.kind && unit.times / unit.over < than.times / than.over

const wrong = (source: Source, span: Span, got: string): never =>
  stop(source, 'units.wrongDimension', span, { got })

const noUnit = ({ source, span }: Task, number: ScannedNumber): never => {
  const at = skipSpaces(source.text, number.end)
  return at >= span.end
    ? stop(source, 'units.missingUnit', { at: number.at, end: number.end })
    : stop(source, 'units.leftOver', { at, end: span.end })
}

/**
 * Inches after feet and minutes after hours need no unit (`25'4`, `8ft6`, `2h30`), and `m` is minutes there. After the
 * word for feet only what is less than a foot can be inches.
 */
const impliedUnit = (
  task: Task,
  number: ScannedNumber,
  before: Part | undefined,
): ScannedUnit | undefined => {
  const { text, dimension } = task.source
  const at = skipSpaces(text, number.end)
  const last = at >= task.span.end
  const inches = before?.spelling === "'" || (before?.unit.id === 'ft' && number.value < 12)
  if (dimension === 'length' && inches && last) return implied('in', number.end)
  if (dimension !== 'time' || before?.unit.id !== 'h') return undefined
  if (last && skipDigits(text, number.at) === number.at + 2) return implied('min', number.end)
  return text[at] === 'm' && at + 1 >= task.span.end ? implied('min', at + 1) : undefined
}

const implied = (id: string, end: number): ScannedUnit => {
  const unit = unitTable.find((candidate) => candidate.id === id) as Unit
  return { unit, at: end - 1, end, spelling: id }
}
