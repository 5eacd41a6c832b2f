/** A sum's values from what a person typed: each text read by the dimension of its input. */
import type { SumField, SumValue, SumValues } from './field.ts'
import { readField } from './read-field.ts'

export type SumTexts = Readonly<Record<string, string | undefined>>

/**
 * Values for `Sum.run` from texts by input name.
 * @throws SumError: the fault of `#units` with the field's name when a text cannot be read.
 * Names the sum does not know are passed on, for `run` to refuse.
 */
export function valuesFromText(fields: readonly SumField[], texts: SumTexts): SumValues {
  const values: Record<string, SumValue | undefined> = { ...texts }
  for (const field of fields) {
    const text = texts[field.name]
    if (text !== undefined) values[field.name] = readField(field, text)
  }
  return values
}
