/** Reads a number and its unit, or several that add up (`25 ft 4 in`), for every dimension that has units. */

import type { Found, Task } from './checked.ts'
import { dimensionRules } from './dimension.ts'
import { clockParts } from './read-colon.ts'
import { numberAt, type Part, scanParts } from './scan-parts.ts'
import { scanSign } from './scan-sign.ts'
import { type Source, stop } from './unit-error.ts'

export const readMeasure = (task: Task): Found => {
  const { source, span } = task
  const sign = scanSign(source.text, span.at)
  const colon = source.dimension === 'time' ? clockParts(source, { at: sign.end, end: span.end }) : undefined
  if (colon) return { value: sign.factor * colon.value, unit: colon.unit }
  const number = numberAt(task, sign.end)
  const bare = dimensionRules[source.dimension].bare && number.end === span.end
  if (bare) return { value: sign.factor * number.value, unit: '' }
  const parts = scanParts(task, number)
  const value = toSi(source, parts, sign.factor) ?? stop(source, 'units.outOfRange', span)
  return { value, unit: (parts[0] as Part).unit.id }
}

/**
 * Parts are added in the smallest unit, where the sizes are whole multiples, so that no digit is lost.
 * Undefined when something too small for the machine has turned into nothing.
 */
const toSi = (source: Source, parts: readonly Part[], sign: 1 | -1): number | undefined => {
  const { unit, number } = parts.at(-1) as Part
  const amount =
    parts.length === 1 ? number.value : parts.reduce((sum, part) => sum + inUnitOf(unit, part), 0)
  const zero = source.dimension === 'temperature' ? unit.zero : 0
  const value = (shifted(sign * amount, zero) * unit.times) / unit.over
  if (value === 0 && amount !== zero) return undefined
  return dimensionRules[source.dimension].inverse === unit.kind ? 1 / value : value
}

const inUnitOf = (smallest: Part['unit'], { number, unit }: Part): number =>
  (number.value * unit.times * smallest.over) / (unit.over * smallest.times)

/** To a thousand millionth of a degree: 289 K is 15.85 °C and not 15.850000000000023 °C. */
const shifted = (amount: number, zero: number): number =>
  zero === 0 ? amount : Number((amount - zero).toFixed(9))
