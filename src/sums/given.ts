/** The values a sum was given, checked once against its inputs: nothing missing, nothing unknown, all in range. */
import { longestText } from '#units'
import type { SumField, SumValue, SumValues } from './field.ts'
import { readField } from './read-field.ts'
import { SumError } from './sum-error.ts'

export type Given = {
  /** A required number, or one that has a default. */
  readonly number: (name: string) => number
  /** A number that may have been left out. */
  readonly optional: (name: string) => number | undefined
  readonly text: (name: string) => string
  /** False when the value is the input's default. */
  readonly stated: (name: string) => boolean
}

/** Left-out inputs take their default. Throws a SumError for a missing, unknown or impossible value. */
export function given(fields: readonly SumField[], stated: SumValues): Given {
  refuseUnknown(fields, stated)
  const values = withDefaults(fields, stated)
  for (const field of fields) checkField(field, values[field.name])
  const number = (name: string) => {
    const value = values[name]
    if (typeof value !== 'number') throw missing(name)
    return value
  }
  const text = (name: string) => {
    const value = values[name]
    if (typeof value !== 'string') throw missing(name)
    return value
  }
  return {
    number,
    text,
    optional: (name) => (values[name] === undefined ? undefined : number(name)),
    stated: (name) => stated[name] !== undefined,
  }
}

function withDefaults(fields: readonly SumField[], stated: SumValues): SumValues {
  const values: Record<string, SumValue | undefined> = { ...stated }
  for (const field of fields)
    if (values[field.name] === undefined && field.default !== undefined)
      values[field.name] = readField(field, field.default)
  return values
}

function refuseUnknown(fields: readonly SumField[], values: SumValues): void {
  const known = fields.map((field) => field.name)
  const stranger = Object.keys(values).find((name) => !known.includes(name))
  if (stranger === undefined) return
  throw new SumError(
    'sums.unknownInput',
    { field: stranger, known: known.join(', ') },
    `sum input: unknown, got ${stranger}, expected one of ${known.join(', ')}`,
  )
}

function checkField(field: SumField, value: SumValue | undefined): void {
  if (value === undefined) {
    if (field.required) throw missing(field.name)
  } else if (field.dimension === 'text') checkText(field, value)
  else checkNumber(field, value)
}

function missing(name: string): SumError {
  return new SumError('sums.missing', { field: name }, `${name}: missing, got nothing, expected a value`)
}

function checkText({ name }: SumField, value: SumValue): void {
  if (typeof value !== 'string')
    throw new SumError('sums.notText', { field: name }, `${name}: not text, got ${value}, expected text`)
  if (value.length > longestText)
    throw new SumError(
      'sums.tooLong',
      { field: name, length: value.length, atMost: longestText },
      `${name}: too long, got ${value.length} characters, expected ${longestText} at most`,
    )
}

function checkNumber(field: SumField, value: SumValue): void {
  const { name, dimension, limits } = field
  if (typeof value !== 'number' || !Number.isFinite(value))
    throw new SumError(
      'sums.notANumber',
      { field: name },
      `${name}: not a number, got ${value}, expected one`,
    )
  const { over, atLeast, atMost } = limits
  const low = (over !== undefined && value <= over) || (atLeast !== undefined && value < atLeast)
  const high = atMost !== undefined && value > atMost
  const whole = dimension !== 'count' || Number.isInteger(value)
  if (!low && !high && whole) return
  const bounds = JSON.stringify(limits)
  throw new SumError(
    'sums.outOfRange',
    { field: name, value, dimension, ...limits },
    `${name}: out of range, got ${value}, expected ${bounds}`,
  )
}
