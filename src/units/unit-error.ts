/** Why a text could not be read: a code, the place in the text and what would have been accepted. */

import { type Dimension, dimensionRules } from './dimension.ts'

export type UnitFaultCode =
  | 'units.empty'
  | 'units.tooLong'
  | 'units.notANumber'
  | 'units.notWhole'
  | 'units.unknownUnit'
  | 'units.wrongDimension'
  | 'units.ambiguous'
  | 'units.negative'
  | 'units.missingUnit'
  | 'units.outOfRange'
  | 'units.tooFine'
  | 'units.leftOver'

/**
 * `dimension`, `text`, `at` (offset of the offending piece), `length` (of that piece), `got` (the piece, or the
 * dimension found), `accepted` (quoted examples); `readings` when ambiguous, `nearest` when a unit is nearly
 * right, `atLeast` or `atMost` when out of range, `decimals` when a coin is split too far.
 */
export type UnitFaultData = Readonly<Record<string, string | number>>

export type UnitFault = { readonly code: UnitFaultCode; readonly data: UnitFaultData }

const problems: Readonly<Record<UnitFaultCode, string>> = {
  'units.empty': 'nothing written',
  'units.tooLong': 'text too long',
  'units.notANumber': 'not a number',
  'units.notWhole': 'not a whole number',
  'units.unknownUnit': 'unknown unit',
  'units.wrongDimension': 'wrong kind of unit',
  'units.ambiguous': 'more than one reading',
  'units.negative': 'negative',
  'units.missingUnit': 'missing unit',
  'units.outOfRange': 'out of range',
  'units.tooFine': 'finer than the smallest coin',
  'units.leftOver': 'something left over',
}

const messageOf = ({ code, data }: UnitFault): string => {
  const expected = data.readings ? `either ${data.readings}` : `for example ${data.accepted}`
  const found = code === 'units.wrongDimension' ? ` (${data.got})` : ''
  return `${data.dimension}: ${problems[code]}, got "${data.text}"${found} at ${data.at}, expected ${expected}`
}

export class UnitError extends Error {
  readonly code: UnitFaultCode
  readonly data: UnitFaultData

  constructor(fault: UnitFault) {
    super(messageOf(fault))
    this.name = 'UnitError'
    this.code = fault.code
    this.data = fault.data
  }
}

/** The text being read and what it is read as; every fault names both. */
export type Source = { readonly text: string; readonly dimension: Dimension }

export type Span = { readonly at: number; readonly end: number }

const longestQuote = 40

/** `["a", "b"]` as one string of quoted pieces, because fault data holds only strings and numbers. */
export const quoted = (texts: readonly string[]): string => texts.map((text) => `"${text}"`).join(', ')

/** Throws the fault at a place in the text. */
export const stop = (
  { text, dimension }: Source,
  code: UnitFaultCode,
  span: Span,
  extra: Readonly<Record<string, string | number>> = {},
): never => {
  const { end } = span
  const at = Math.min(span.at, end)
  throw new UnitError({
    code,
    data: {
      dimension,
      text: text.length > 200 ? `${text.slice(0, longestQuote)}…` : text,
      at,
      length: end - at,
      got: text.slice(at, Math.min(end, at + longestQuote)),
      accepted: quoted(dimensionRules[dimension].examples),
      ...extra,
    },
  })
}
