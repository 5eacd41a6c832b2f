/** Reads a ratio: `2:1`, `100 : 45`, `4:1:1`, `2 to 1`; a bare number is itself, without parts. */

import { skipSpaces } from './chars.ts'
import type { Found, Task } from './checked.ts'
import { refuseBoth } from './refuse-both.ts'
import { type ScannedNumber, scanNumber } from './scan-number.ts'
import { scanSign } from './scan-sign.ts'
import { stop } from './unit-error.ts'

export const readRatio = (task: Task): Found => {
  const { source, span } = task
  const sign = scanSign(source.text, span.at)
  if (sign.factor < 0) return stop(source, 'units.negative', span)
  const numbers: ScannedNumber[] = []
  let next = sign.end
  for (;;) {
    const number = scanNumber(source, next)
    if (!number) return stop(source, 'units.notANumber', { at: next, end: span.end })
    if (number.ambiguous) return refuseBoth(source, number, span.end)
    numbers.push(number)
    if (number.end >= span.end) break
    const after = endOfTo(source.text, number.end)
    if (after === undefined) return stop(source, 'units.leftOver', { at: number.end, end: span.end })
    next = skipSpaces(source.text, after)
  }
  return ratioOf(
    task,
    numbers.map(({ value }) => value),
  )
}

const ratioOf = ({ source, span }: Task, parts: readonly number[]): Found => {
  const [first, second] = parts as [number, number | undefined]
  if (second === undefined) return { value: first, unit: '' }
  if (parts.some((part) => part === 0)) return stop(source, 'units.outOfRange', span, { above: 0 })
  return { value: first / second, parts, unit: ':' }
}

const endOfTo = (text: string, at: number): number | undefined => {
  const gap = skipSpaces(text, at)
  if (text[gap] === ':' || text[gap] === '∶') return gap + 1
  return gap > at && text.slice(gap, gap + 3).toLowerCase() === 'to ' ? gap + 3 : undefined
}
