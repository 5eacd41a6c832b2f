/** Writes a quantity in the unit that suits its size and system, or in a named one. */

import { inUnit, unitNamed } from './convert.ts'
import { type Dimension, dimensionRules } from './dimension.ts'
import { stop } from './unit-error.ts'
import type { Unit } from './unit-table.ts'
import { suitsFeet, writeFeet } from './write-feet.ts'
import { writeMoney } from './write-money.ts'
import { type NumberStyle, roundedNumber, writeNumber } from './write-number.ts'
import { finite, styleOf, type WriteOptions } from './write-options.ts'
import { hasScale, type Step, scaleOf, type UnitSystem } from './write-scale.ts'
import { writeTime } from './write-time.ts'

const thin = '\u2009'

/**
 * Writes `value`, in the unit named at `Dimension`, as text that `read` accepts again.
 * A thin space stands between number and unit, the minus is a true minus. Throws a `UnitError` when not finite.
 */
export const write = (value: number, dimension: Dimension, options: WriteOptions): string => {
  finite(value, dimension)
  const style = styleOf(dimension, options)
  const { system } = options
  if (dimension === 'money') return moneyText(value, options)
  if (dimension === 'time') return writeTime(value, style)
  if (dimension === 'ratio') return ratioText(value, style)
  if (dimension === 'clock') return clockText(value, system)
  if (dimension === 'length' && system === 'us' && suitsFeet(value)) return writeFeet(value, style)
  if (!hasScale(dimension)) return writeNumber(value, style)
  const unit = unitFor(value, { dimension, style, steps: scaleOf(dimension, system) })
  return withUnit(inUnit(value, unit, dimension), unit.id, style)
}

export type WriteAsOptions = Omit<WriteOptions, 'system'> & {
  /** Only where the unit leaves it open: `°F` is a temperature unless this says a difference. */
  readonly dimension?: Dimension
}

/** Writes `value` in the named unit: `writeAs(0.0000508, 'mil', …)` is `2 mil`. Throws when it is unknown. */
export const writeAs = (value: number, unitName: string, options: WriteAsOptions): string => {
  const open: Dimension = options.dimension ?? 'number'
  const unit = unitNamed(unitName, open)
  const dimension = options.dimension ?? dimensionOf(unit, unitName)
  finite(value, dimension)
  return withUnit(inUnit(value, unit, dimension), unit.id, styleOf(dimension, options))
}

/** Writes the parts of a ratio: [100, 45] is `100:45`. */
export const writeRatio = (parts: readonly number[], options: Omit<WriteOptions, 'system'>): string =>
  parts.map((part) => writeNumber(part, styleOf('ratio', options))).join(':')

const dimensionOf = (unit: Unit, text: string): Dimension => {
  const { kind } = unit
  if (kind in dimensionRules) return kind as Dimension
  const span = { at: 0, end: text.length }
  return kind === 'massShare'
    ? 'share'
    : stop({ text, dimension: 'coverage' }, 'units.wrongDimension', span, { got: kind })
}

const withUnit = (amount: number, id: string, style: NumberStyle): string =>
  `${writeNumber(amount, style)}${id === '°' ? '' : thin}${id}`

type Choice = { readonly dimension: Dimension; readonly style: NumberStyle; readonly steps: readonly Step[] }

/** The largest unit that the value reaches once rounded, so that 999.9 mm is written as 1 m. */
const unitFor = (value: number, { dimension, style, steps }: Choice): Unit => {
  const reached = steps.find(({ unit, from }) => {
    const candidate = unitNamed(unit, dimension)
    const rounded = roundedNumber(inUnit(Math.abs(value), candidate, dimension), style)
    return (rounded * candidate.times) / candidate.over >= from * (1 - 1e-12)
  })
  return unitNamed((reached ?? (steps.at(-1) as Step)).unit, dimension)
}

const moneyText = (value: number, { currency, locale }: WriteOptions): string => {
  const text = String(value)
  if (currency === undefined)
    return stop({ text, dimension: 'money' }, 'units.missingUnit', { at: 0, end: text.length })
  return writeMoney(value, currency, locale)
}

const ratioText = (value: number, style: NumberStyle): string =>
  value >= 1 || value <= 0 ? `${writeNumber(value, style)}:1` : `1:${writeNumber(1 / value, style)}`

const clockText = (hours: number, system: UnitSystem): string => {
  const minutes = Math.round(hours * 60)
  const hour = Math.floor(minutes / 60)
  const minute = String(minutes - hour * 60).padStart(2, '0')
  if (system === 'metric') return `${String(hour).padStart(2, '0')}:${minute}`
  return `${hour % 12 || 12}:${minute}${thin}${hour % 24 < 12 ? 'am' : 'pm'}`
}
