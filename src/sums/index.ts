/** The ten quick sums: on SI values with `sum.run`, on texts as people write them with `runSum`. */
import { bevel } from './bevel.ts'
import { catalyst } from './catalyst.ts'
import { cure } from './cure.ts'
import { dew } from './dew.ts'
import { type SumTexts, valuesFromText } from './from-text.ts'
import { mix } from './mix.ts'
import { ply } from './ply.ts'
import { spread } from './spread.ts'
import type { Sum, SumAnswer, SumId } from './sum.ts'
import { SumError } from './sum-error.ts'
import { sun } from './sun.ts'
import { vent } from './vent.ts'
import { wet } from './wet.ts'

export type { SumField, SumLimits, SumValue, SumValues } from './field.ts'
export type { SumTexts } from './from-text.ts'
export { valuesFromText } from './from-text.ts'
export type {
  HowLine,
  Sum,
  SumAnswer,
  SumId,
  SumResult,
  SumResultValue,
} from './sum.ts'
export type { SumErrorData } from './sum-error.ts'
export { SumError } from './sum-error.ts'

export const sums: Readonly<Record<SumId, Sum>> = {
  dew,
  spread,
  wet,
  mix,
  catalyst,
  ply,
  bevel,
  vent,
  sun,
  cure,
}

/** A sum by its name. Throws a SumError for an unknown one. */
export function sumNamed(name: string): Sum {
  if (Object.hasOwn(sums, name)) return sums[name as SumId]
  const known = Object.keys(sums).join(', ')
  throw new SumError(
    'sums.unknownSum',
    { text: name, known },
    `sum: unknown, got "${name}", expected one of ${known}`,
  )
}

/** Reads the texts by the sum's inputs and works it. Throws a SumError for what cannot be read or worked. */
export function runSum(name: string, texts: SumTexts): SumAnswer {
  const sum = sumNamed(name)
  return sum.run(valuesFromText(sum.inputs, texts))
}
