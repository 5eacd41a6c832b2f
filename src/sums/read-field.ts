/** One input read from what a person typed, within the input's limits. */
import { type Quantity, type ReadOptions, read } from '#units'
import type { SumField, SumLimits, SumValue } from './field.ts'
import { SumError } from './sum-error.ts'

/** The value in SI, or the text itself for an input of dimension `text`. Throws a SumError. */
export function readField(field: SumField, text: string): SumValue {
  if (field.dimension === 'text') return text
  const reading = read(text, field.dimension, optionsOf(field.limits))
  if (reading.ok) return ofTwoParts(field, reading.quantity)
  const { code, data } = reading.fault
  throw new SumError(
    code,
    { field: field.name, ...data },
    `${field.name}: ${code}, got "${data.text}", expected for example ${field.example}`,
  )
}

function optionsOf({ over, atLeast, atMost }: SumLimits): ReadOptions {
  return {
    ...(over === 0 ? { sign: 'positive' as const } : {}),
    ...(atLeast === undefined ? {} : { atLeast }),
    ...(atMost === undefined ? {} : { atMost }),
  }
}

/** The value of `4:1:1` forgets its third part, so a ratio of more than two is refused. */
function ofTwoParts({ name }: SumField, { value, parts, text }: Quantity): number {
  if (parts === undefined || parts.length <= 2) return value
  throw new SumError(
    'sums.tooManyParts',
    { field: name, text, parts: parts.length },
    `${name}: too many parts, got "${text}", expected two such as 2:1`,
  )
}
