/** Reads a number that stands for itself: a count of coats, or a plain figure. */

import type { Found, Task } from './checked.ts'
import { refuseBoth } from './refuse-both.ts'
import { scanNumber } from './scan-number.ts'
import { scanSign } from './scan-sign.ts'
import { stop } from './unit-error.ts'

export const readCount = ({ source, span }: Task): Found => {
  const sign = scanSign(source.text, span.at)
  const number = scanNumber(source, sign.end)
  if (!number) return stop(source, 'units.notANumber', { at: sign.end, end: span.end })
  if (number.ambiguous) return refuseBoth(source, number, span.end)
  if (number.end < span.end) return stop(source, 'units.leftOver', { at: number.end, end: span.end })
  const whole = source.dimension !== 'count' || Number.isInteger(number.value)
  if (!whole) return stop(source, 'units.notWhole', number)
  return { value: sign.factor * number.value, unit: '' }
}
