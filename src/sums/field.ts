/** One input of a quick sum: what it is, in what, and within which bounds. */
import type { Dimension } from '#units'

/** Bounds in the unit of the dimension; `over` excludes its own value. */
export type SumLimits = { readonly over?: number; readonly atLeast?: number; readonly atMost?: number }

export type SumField = {
  /** camelCase; the flag is the same in kebab case. */
  readonly name: string
  /** `text` is read by the sum itself. */
  readonly dimension: Dimension | 'text'
  readonly required: boolean
  /** As a person would write it; left out where an empty field means that part of the answer is left out too. */
  readonly default?: string
  readonly limits: SumLimits
  readonly doc: string
  readonly example: string
}

export type SumValue = number | string

/** SI numbers by input name, texts for inputs of dimension `text`; an input may be left out. */
export type SumValues = Readonly<Record<string, SumValue | undefined>>
