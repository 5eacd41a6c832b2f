/** The last step of every reading: sign, bounds, and the finished quantity. */

import { type Dimension, dimensionRules, type Sign } from './dimension.ts'
import type { Quantity, ReadOptions } from './quantity.ts'
import { type Source, type Span, stop } from './unit-error.ts'

/** Options with nothing left out. */
export type Limits = {
  readonly sign: Sign
  readonly atLeast: number
  readonly atMost: number
  readonly currency: string | undefined
}

export const limitsOf = (dimension: Dimension, options: ReadOptions): Limits => {
  const rule = dimensionRules[dimension]
  return {
    sign: options.sign ?? rule.sign,
    atLeast: options.atLeast ?? rule.atLeast ?? Number.NEGATIVE_INFINITY,
    atMost: options.atMost ?? rule.atMost ?? Number.POSITIVE_INFINITY,
    currency: options.currency,
  }
}

export type Found = Pick<Quantity, 'value' | 'unit' | 'parts' | 'currency'>

/** What a reader of one dimension is given: the text, where the quantity stands in it, and the bounds. */
export type Task = { readonly source: Source; readonly span: Span; readonly limits: Limits }

export const checked = ({ source, span, limits }: Task, found: Found): Found => {
  const value = found.value === 0 ? 0 : found.value
  const { sign, atLeast, atMost } = limits
  if (!Number.isFinite(value)) stop(source, 'units.outOfRange', span)
  if (value < 0 && sign !== 'any') stop(source, 'units.negative', span)
  if (value === 0 && sign === 'positive') stop(source, 'units.outOfRange', span, { above: 0 })
  if (value < atLeast) stop(source, 'units.outOfRange', span, { atLeast })
  if (value > atMost) stop(source, 'units.outOfRange', span, { atMost })
  return { ...found, value }
}
