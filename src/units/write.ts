/** Writes a quantity in the unit that suits its size and system, or in a named one. */

import { dimensionOf, inUnit, unitNamed } from './convert.ts'
import { type Dimension, dimensionRules } from './dimension.ts'
import { stop, type UnitFaultCode } from './unit-error.ts'
import type { Unit } from './unit-table.ts'
import { suitsFeet, writeFeet } from './write-feet.ts'
import { writeMoney } from './write-money.ts'
import { type NumberStyle, roundedNumber, writeDigits, writeNumber } from './write-number.ts'
import { styleOf, type WriteOptions } from './write-options.ts'
import { hasScale, type Step, scaleOf, type UnitSystem } from './write-scale.ts'
import { writeTime } from './write-time.ts'

const thin = '\u2009'

/**
 * Writes `value`, in the unit named at `Dimension`, as text that `read` accepts again.
 * A thin space stands between number and unit, the minus is a true minus. Throws a `UnitError` when not finite.
 */
export const write = (value: number, dimension: Dimension, options: WriteOptions): string => {
  if (!Number.isFinite(value)) return refuse(value, dimension, 'units.notANumber')
  const style = styleOf(dimension, options)
  const { system } = options
  if (dimension === 'money') return moneyText(value, options)
  if (dimension === 'time') return writeTime(value, style)
  if (dimension === 'ratio') return ratioText(value, style)
  if (dimension === 'count') return countText(value, options.locale)
  if (dimension === 'clock') return clockText(value, system)
  if (dimension === 'length' && system === 'us' && suitsFeet(value, style)) return writeFeet(value, style)
  if (!hasScale(dimension)) return writeNumber(value, style)
  const chosen = choose(value, { dimension, style, steps: scaleOf(dimension, system) })
  return withUnit(inUnit(chosen.value, chosen.unit, dimension), chosen.unit.id, style)
}

export type WriteAsOptions = Omit<WriteOptions, 'system'> & {
  /** Only where the unit leaves it open: `°F` is a temperature unless this says a difference. */
  readonly dimension?: Dimension
}

/** Writes `value` in the named unit: `writeAs(0.0000508, 'mil', …)` is `2 mil`. Throws when it is unknown. */
export const writeAs = (value: number, unitName: string, options: WriteAsOptions): string => {
  const unit = unitNamed(unitName, options.dimension ?? 'number')
  const dimension = options.dimension ?? dimensionOf(unit) ?? 'number'
  const { kinds, inverse } = dimensionRules[dimension]
  const source = { text: unitName, dimension }
  const fits = kinds.includes(unit.kind) || inverse === unit.kind
  if (!fits) return stop(source, 'units.wrongDimension', { at: 0, end: unitName.length }, { got: unit.kind })
  if (!Number.isFinite(value)) return refuse(value, dimension, 'units.notANumber')
  return withUnit(inUnit(value, unit, dimension), unit.id, styleOf(dimension, options))
}

/** Writes the parts of a ratio: [100, 45] is `100:45`. */
export const writeRatio = (parts: readonly number[], options: Omit<WriteOptions, 'system'>): string =>
  parts.map((part) => writeNumber(part, styleOf('ratio', options))).join(':')

const withUnit = (amount: number, id: string, style: NumberStyle): string =>
  `${writeNumber(amount, style)}${id === '°' ? '' : thin}${id}`

type Choice = { readonly dimension: Dimension; readonly style: NumberStyle; readonly steps: readonly Step[] }

type Chosen = { readonly unit: Unit; readonly value: number }

/**
 * The largest unit that the value reaches once rounded. Where it reaches it only by rounding in the unit below
 * (59.97 min is 60 min), the rounded value goes with it, so that the text is 1 h and not 0.999 h.
 */
const choose = (value: number, { dimension, style, steps }: Choice): Chosen => {
  const units = steps.map(({ unit }) => unitNamed(unit, dimension))
  const rounded = units.map((unit) => {
    const amount = roundedNumber(inUnit(value, unit, dimension), style)
    return (amount * unit.times) / unit.over
  })
  const reaches = (index: number, from: number): boolean =>
    Math.abs(rounded[index] ?? 0) >= from * (1 - 1e-12)
  const at = steps.findIndex(({ from }, index) => reaches(index, from) || reaches(index + 1, from))
  const { from } = steps[at] as Step
  return { unit: units[at] as Unit, value: reaches(at, from) ? value : (rounded[at + 1] as number) }
}

const moneyText = (value: number, { currency, locale }: WriteOptions): string =>
  currency === undefined ? refuse(value, 'money', 'units.missingUnit') : writeMoney(value, currency, locale)

const refuse = (value: number, dimension: Dimension, code: UnitFaultCode): never => {
  const text = String(value)
  return stop({ text, dimension }, code, { at: 0, end: text.length })
}

const ratioText = (value: number, style: NumberStyle): string => {
  if (value <= 0) return refuse(value, 'ratio', 'units.outOfRange')
  return value >= 1 ? `${writeNumber(value, style)}:1` : `1:${writeNumber(1 / value, style)}`
}

const countText = (value: number, locale: string): string =>
  Number.isSafeInteger(value) && value >= 0
    ? writeDigits(String(value), locale)
    : refuse(value, 'count', 'units.notWhole')

/** Rounded to the minute; the end of the day is 24:00 in either system, for midnight would be its start. */
const clockText = (hours: number, system: UnitSystem): string => {
  if (hours < 0 || hours > 24) return refuse(hours, 'clock', 'units.outOfRange')
  const minutes = Math.round(hours * 60)
  const hour = Math.floor(minutes / 60)
  const minute = String(minutes - hour * 60).padStart(2, '0')
  if (system === 'metric' || hour === 24) return `${String(hour).padStart(2, '0')}:${minute}`
  return `${hour % 12 || 12}:${minute}${thin}${hour < 12 ? 'am' : 'pm'}`
}
