/** A sum worked from what stands in its boxes: the answer, or what is missing, or which boxes are wrong and why. */
import { runSum, type Sum, type SumAnswer, SumError, valuesFromText } from '#sums'
import type { TypedTexts } from './kept-sums.ts'

export type SumFault = { readonly code: string; readonly data: Readonly<Record<string, string | number>> }

export type WorkedSum = {
  readonly answer?: SumAnswer
  /** Names of required inputs that are empty. */
  readonly missing: readonly string[]
  /** By the name of the input. */
  readonly faults: Readonly<Record<string, SumFault>>
}

/** Boxes are judged one by one, so that two wrong ones both say so. */
export function workSum(sum: Sum, typed: TypedTexts): WorkedSum {
  const texts = Object.fromEntries(
    sum.inputs.flatMap(({ name }) => {
      const text = (typed[name] ?? '').trim()
      return text === '' ? [] : [[name, text]]
    }),
  )
  const missing = sum.inputs.filter(({ name, required }) => required && texts[name] === undefined)
  const faults = Object.fromEntries(
    sum.inputs.flatMap((field) => {
      const text = texts[field.name]
      const fault =
        text === undefined ? undefined : faultOf(() => valuesFromText([field], { [field.name]: text }))
      return fault === undefined ? [] : [[field.name, fault]]
    }),
  )
  const known = { missing: missing.map(({ name }) => name), faults }
  if (missing.length > 0 || Object.keys(faults).length > 0) return known
  let answer: SumAnswer | undefined
  const fault = faultOf(() => {
    answer = runSum(sum.id, texts)
  })
  if (fault !== undefined) return { ...known, faults: { [String(fault.data.field ?? '')]: fault } }
  return answer === undefined ? known : { ...known, answer }
}

function faultOf(work: () => unknown): SumFault | undefined {
  try {
    work()
    return undefined
  } catch (error) {
    if (error instanceof SumError) return { code: error.code, data: error.data }
    throw error
  }
}
