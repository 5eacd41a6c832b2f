/** Reads a time of day: `07:30`, `7:30 am`, `7 pm`, `24:00`; the value is hours since midnight. */

import { isDigit, skipDigits, skipSpaces } from './chars.ts'
import type { Found, Task } from './checked.ts'
import { colonNumbers } from './read-colon.ts'
import { stop } from './unit-error.ts'

export const readClock = (task: Task): Found => {
  const { source, span } = task
  const { text } = source
  if (!isDigit(text[span.at])) return stop(source, 'units.notANumber', span)
  const digits = skipDigits(text, span.at)
  const colon = colonNumbers(text, span.at)
  const [hour = 0, minute = 0, second = 0] = colon
    ? colon.parts.map(({ value }) => value)
    : [Number(text.slice(span.at, digits))]
  const end = colon?.end ?? digits
  const half = halfOfDay(text.slice(skipSpaces(text, end), span.end))
  if (half === 'other') return stop(source, 'units.leftOver', { at: end, end: span.end })
  if (!colon && half === 'none') return stop(source, 'units.missingUnit', span)
  const wellFormed =
    !colon || (colon.parts.length <= 3 && colon.parts.slice(1).every((part) => part.digits === 2))
  if (!wellFormed) return stop(source, 'units.notANumber', span)
  const inDay = half === 'none' ? hour <= 24 : hour >= 1 && hour <= 12
  if (!inDay || minute >= 60 || second >= 60) return stop(source, 'units.outOfRange', span, { atMost: 24 })
  const base = half === 'none' ? hour : (hour % 12) + (half === 'pm' ? 12 : 0)
  return { value: (base * 3600 + minute * 60 + second) / 3600, unit: 'h' }
}

const halfOfDay = (text: string): 'am' | 'pm' | 'none' | 'other' => {
  const plain = text.replaceAll('.', '').toLowerCase()
  if (plain === '') return 'none'
  return plain === 'am' || plain === 'pm' ? plain : 'other'
}
