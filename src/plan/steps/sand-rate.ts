/** How long a square metre is sanded with a grit. */
import type { Rates } from '../known.ts'
import type { Sure } from '../types.ts'

/** Person-hours; a grit without a rate of its own goes by that of P220. */
export function sandRate({ sandHoursPerM2: rates }: Rates, grit: string): Sure<number> {
  return rates[grit.replace(/\D/g, '')] ?? rates['220'] ?? { value: 0.12, certainty: 'assumed' }
}
