/** A time by temperature, as data sheets print it: dry, recoat, sand, tape, pot life. */
import { CureError } from './cure-error.ts'

export type CurePoint = { readonly airC: number; readonly hours: number }

/** Points by rising temperature, no temperature twice, every time over zero; made by `cureTable`. */
export type CureTable = readonly CurePoint[]

/**
 * Puts the rows of a sheet in order and checks them.
 * @param points temperature °C and time h, in any order; one is enough.
 * @returns the same rows by rising temperature.
 * @throws CureError when there is no row, a temperature stands twice or a time is not over zero.
 */
export function cureTable(points: readonly CurePoint[]): CureTable {
  const sorted = [...points].sort((one, other) => one.airC - other.airC)
  if (sorted.length === 0)
    throw new CureError('cure.tableEmpty', {}, 'cure table: empty, got 0 rows, expected 1 or more')
  let last = Number.NEGATIVE_INFINITY
  for (const point of sorted) {
    checkPoint(point, last)
    last = point.airC
  }
  return sorted
}

function checkPoint({ airC, hours }: CurePoint, lastC: number): void {
  if (!Number.isFinite(airC))
    throw new CureError(
      'cure.airNotFinite',
      { airC, hours },
      `cure table: bad temperature, got ${airC}, expected °C`,
    )
  if (!(hours > 0 && Number.isFinite(hours)))
    throw new CureError(
      'cure.hoursNotPositive',
      { airC, hours },
      `cure table: bad time, got ${hours}, expected hours over 0`,
    )
  if (airC === lastC)
    throw new CureError(
      'cure.airTwice',
      { airC },
      `cure table: temperature twice, got ${airC}, expected one row each`,
    )
}
