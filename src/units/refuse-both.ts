/** Refuses a number whose comma may be decimal or grouping, naming both readings. */

import type { ScannedNumber } from './scan-number.ts'
import { quoted, type Source, stop } from './unit-error.ts'

/** `1,250 m` may be 1250 m or 1.250 m. */
export const refuseBoth = (source: Source, number: ScannedNumber, end: number): never => {
  const rest = source.text.slice(number.end, end)
  const written = source.text.slice(number.at, number.end).replace(',', '.')
  const readings = quoted([`${number.grouped}${rest}`, `${written}${rest}`])
  return stop(source, 'units.ambiguous', number, { readings })
}
