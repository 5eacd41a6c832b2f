/** The unit a bare number is meant in, where the box holds a value with a unit of its own. */
import type { QuantityField } from '#job'
import { read } from '#units'
import { unitHint, withUnit } from './unit-hint.ts'

/**
 * Of the unit that is written there and the one people usually write, that in which the number is nearer to the value:
 * 1.1 after 1200 mm means metres, 1100 means millimetres.
 */
export function bareUnit(
  text: string,
  {
    value,
    field,
    system,
  }: { readonly value: string; readonly field: QuantityField; readonly system: 'metric' | 'us' },
): string | undefined {
  const usual = unitHint(field, system)
  const before = read(value, field.dimension)
  if (!before.ok || before.quantity.unit === '') return usual
  const own = before.quantity.unit
  const farFrom = (unit: string): number => {
    const now = read(withUnit(text, unit), field.dimension)
    if (!now.ok) return Number.POSITIVE_INFINITY
    return Math.abs(Math.log(Math.abs(now.quantity.value / before.quantity.value)))
  }
  return usual !== undefined && farFrom(usual) < farFrom(own) ? usual : own
}
