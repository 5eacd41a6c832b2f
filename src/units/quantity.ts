/** What reading gives: the value in SI beside the text as it was written. */

import type { Sign } from './dimension.ts'
import type { UnitFault } from './unit-error.ts'

export type Quantity = {
  /** In the unit named at `Dimension`; never negative zero. */
  readonly value: number
  /** Exactly as written. */
  readonly text: string
  /** Written with `about`, `~`, `ca.` or a question mark at the end. */
  readonly about: boolean
  /** The parts of a ratio: `2:1` gives [2, 1]. */
  readonly parts?: readonly number[]
  /** Money only: the ISO 4217 code. */
  readonly currency?: string
  /** The unit seen, in its canonical spelling, the first one of `25 ft 4 in`; empty for a bare number. */
  readonly unit: string
}

export type Reading =
  | { readonly ok: true; readonly quantity: Quantity }
  | { readonly ok: false; readonly fault: UnitFault }

/** Left out, each follows from the dimension (`dimensionRules`). Bounds are in the unit of the result. */
export type ReadOptions = {
  readonly sign?: Sign
  readonly atLeast?: number
  readonly atMost?: number
  /** Money only: the currency of an amount written without one. */
  readonly currency?: string
}
