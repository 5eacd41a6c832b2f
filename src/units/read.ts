/** Reads a quantity as a person wrote it, or says what is wrong with it and where. */

import { checked, type Found, limitsOf, type Task } from './checked.ts'
import type { Dimension } from './dimension.ts'
import type { Quantity, Reading, ReadOptions } from './quantity.ts'
import { readClock } from './read-clock.ts'
import { readCount } from './read-count.ts'
import { readMeasure } from './read-measure.ts'
import { readMoney } from './read-money.ts'
import { readRatio } from './read-ratio.ts'
import { trimAbout } from './scan-about.ts'
import { stop, UnitError } from './unit-error.ts'

/** No quantity that a person writes is longer; anything longer is refused before it is looked at. */
export const longestText = 200

const readers: Readonly<Partial<Record<Dimension, (task: Task) => Found>>> = {
  ratio: readRatio,
  money: readMoney,
  clock: readClock,
  count: readCount,
  number: readCount,
}

/**
 * Reads `text` as a quantity of `dimension`.
 * The value is in the unit named at `Dimension`. A unit is required except for share, ratio, count and number.
 * Nothing is guessed: a text with two readings is a fault that names both.
 */
export const read = (text: string, dimension: Dimension, options: ReadOptions = {}): Reading => {
  try {
    return { ok: true, quantity: readOrThrow(text, dimension, options) }
  } catch (error) {
    if (!(error instanceof UnitError)) throw error
    return { ok: false, fault: { code: error.code, data: error.data } }
  }
}

/** As `read`, but throws a `UnitError` for a fault. */
export const readOrThrow = (text: string, dimension: Dimension, options: ReadOptions = {}): Quantity => {
  const source = { text, dimension }
  if (text.length > longestText) return stop(source, 'units.tooLong', { at: longestText, end: text.length })
  const { at, end, about } = trimAbout(text)
  if (at >= end) return stop(source, 'units.empty', { at: 0, end: text.length })
  const task: Task = { source, span: { at, end }, limits: limitsOf(dimension, options) }
  const reader = readers[dimension] ?? readMeasure
  return { ...checked(task, reader(task)), text, about }
}
