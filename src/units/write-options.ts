/** How a quantity is to be written, and the same with nothing left out. */

import { type Dimension, dimensionRules } from './dimension.ts'
import type { NumberStyle } from './write-number.ts'
import type { UnitSystem } from './write-scale.ts'

export type WriteOptions = {
  readonly system: UnitSystem
  /** BCP 47, for example `sv-SE`; decides the decimal sign, and where a currency stands. */
  readonly locale: string
  /** Significant digits, 3 when left out (temperatures: one decimal); whole digits are never rounded away. */
  readonly digits?: number
  /** Exactly so many digits after the decimal sign, zeros kept: for columns of figures. */
  readonly decimals?: number
  /** Money only: ISO 4217 code. */
  readonly currency?: string
}

const usualDigits = 3

export const styleOf = (
  dimension: Dimension,
  { locale, digits, decimals }: Omit<WriteOptions, 'system'>,
): NumberStyle => {
  const thermal = dimensionRules[dimension].kinds.includes('temperature')
  const atMostDecimals = thermal && digits === undefined ? 1 : undefined
  return { locale, digits: digits ?? usualDigits, decimals, atMostDecimals }
}
