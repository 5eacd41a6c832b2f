/** Reads times with a colon: `2:30 h`, `2:30 min`, `2:30:15`; a bare `2:30` may be hours or minutes. */

import { isDigit, skipDigits, skipSpaces } from './chars.ts'
import { scanUnit } from './scan-unit.ts'
import { quoted, type Source, type Span, stop } from './unit-error.ts'

/** Hours, and the unit that the first number counts; undefined when the text has no colon in that place. */
export const clockParts = (
  source: Source,
  { at, end }: Span,
): { value: number; unit: string } | undefined => {
  const { text } = source
  const numbers = colonNumbers(text, at)
  if (!numbers) return undefined
  const { parts, end: after } = numbers
  const span = { at, end: after }
  if (parts.length > 3 || parts.slice(1).some(({ digits, value }) => digits !== 2 || value >= 60)) {
    return stop(source, 'units.notANumber', span)
  }
  const unit = unitOf(source, span, end) ?? (parts.length === 3 ? 'h' : undefined)
  if (unit === undefined)
    return refuseColon(
      source,
      { at, end },
      parts.map(({ value }) => value),
    )
  if (unit === 'min' && parts.length === 3) return stop(source, 'units.notANumber', span)
  const minutes = parts.reduce((total, { value }) => total * 60 + value, 0)
  const perHour = unit === 'h' ? 60 ** (parts.length - 1) : 3600
  return { value: minutes / perHour, unit }
}

const unitOf = (source: Source, { at, end }: Span, textEnd: number): 'h' | 'min' | undefined => {
  if (skipSpaces(source.text, end) >= textEnd) return undefined
  const scanned = scanUnit(source, end)
  if (!scanned || scanned.end < textEnd) return stop(source, 'units.leftOver', { at: end, end: textEnd })
  if ('pair' in scanned) return stop(source, 'units.wrongDimension', scanned, { got: scanned.pair })
  if (scanned.unit.kind !== 'time')
    return stop(source, 'units.wrongDimension', scanned, { got: scanned.unit.kind })
  const { id } = scanned.unit
  return id === 'h' || id === 'min' ? id : stop(source, 'units.notANumber', { at, end })
}

const refuseColon = (source: Source, span: Span, [first, second]: readonly number[]): never =>
  stop(source, 'units.ambiguous', span, {
    readings: quoted([`${first} h ${second} min`, `${first} min ${second} s`]),
  })

type Piece = { readonly value: number; readonly digits: number }

/** Whole numbers with colons between them; undefined when there is no colon. */
export const colonNumbers = (
  text: string,
  at: number,
): { readonly parts: readonly Piece[]; readonly end: number } | undefined => {
  const parts: Piece[] = []
  let start = at
  for (;;) {
    const end = skipDigits(text, start)
    if (end === start) return undefined
    parts.push({ value: Number(text.slice(start, end)), digits: end - start })
    if (text[end] !== ':' || !isDigit(text[end + 1])) return parts.length > 1 ? { parts, end } : undefined
    start = end + 1
  }
}
