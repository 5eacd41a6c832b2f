/** What a time by temperature comes to at a temperature between and beyond its rows. */

import { CureError } from './cure-error.ts'
import type { CurePoint, CureTable } from './cure-table.ts'

/**
 * `least`: a wait that must have passed (least recoat, sand, tape, tread, cure).
 * `most`: a limit that must not pass (greatest recoat, pot life).
 */
export type CureSense = 'least' | 'most'

/** How a time was found: on a row, between rows, beyond them, or from the only row by the factor of two. */
export type CureFound = 'row' | 'between' | 'above' | 'below' | 'one-point'

export type CureHours = {
  /** Infinity when the clock stands still. */
  readonly hours: number
  readonly found: CureFound
  /** True when it is too cold for the table and the clock of a least time does not run. */
  readonly stopped: boolean
}

/** ln 2 per 10 K: the rate doubles for each 10 °C. */
const doublingPerK = Math.LN2 / 10

/**
 * Time of a sheet's table at a temperature.
 * @param table made by `cureTable`. @param airC °C. @param sense whether the time is a `least` or a `most`.
 * @returns hours. Between rows linear in ln(hours) against temperature. Beyond them on the safe side: a least
 * time stops below the coldest row (Infinity) and gets no shorter above the warmest; a most time gets no
 * longer below the coldest and above the warmest goes on shortening, at least halved per 10 °C. A table of one
 * row goes by a factor of two per 10 °C both ways.
 * @throws CureError for an empty table or a temperature that is not a number.
 * Source: shop practice (outside the table); the factor of two from a chandler's page and a US government
 * specification for pot life. Two-part paints' own sheets give 1.3 to 2.4 per 10 °C.
 */
export function hoursAt(table: CureTable, airC: number, sense: CureSense): CureHours {
  const found = foundAt(table, airC)
  const hours = hoursOf({ table, sense }, airC, found)
  return { hours, found, stopped: found === 'below' && sense === 'least' }
}

/** How `hoursAt` finds a time. Apart from it, since a clock asks both of thousands of hours and keeps neither. */
export function foundAt(table: CureTable, airC: number): CureFound {
  if (table.length === 0 || Number.isNaN(airC)) throw unreadable(table, airC)
  const row = rowFrom(table, airC)
  if (table[row]?.airC === airC) return 'row'
  if (table.length === 1) return 'one-point'
  if (row === table.length) return 'above'
  return row === 0 ? 'below' : 'between'
}

/** The first row at the temperature or above it. */
function rowFrom(table: CureTable, airC: number): number {
  let row = 0
  while (row < table.length && table[row]!.airC < airC) row++
  return row
}

type Asked = { readonly table: CureTable; readonly sense: CureSense }

/** The hours of `hoursAt`, from how they are found. */
export function hoursOf({ table, sense }: Asked, airC: number, found: CureFound): number {
  const row = rowFrom(table, airC)
  const last = table[table.length - 1]!
  switch (found) {
    case 'row':
      return table[row]!.hours
    case 'one-point':
      return scaled(last, airC, -doublingPerK)
    case 'below':
      return sense === 'least' ? Number.POSITIVE_INFINITY : table[0]!.hours
    case 'above':
      return sense === 'least' ? last.hours : scaled(last, airC, steepest(table))
    case 'between':
      return scaled(table[row - 1]!, airC, slope(table[row - 1]!, table[row]!))
  }
}

/** How fast a most time shortens above its last row, 1/K. */
const steepest = (table: CureTable): number =>
  Math.min(slope(table[table.length - 2]!, table[table.length - 1]!), -doublingPerK)

/** d ln(hours) / dT between two rows, 1/K. */
function slope(under: CurePoint, over: CurePoint): number {
  return Math.log(over.hours / under.hours) / (over.airC - under.airC)
}

function scaled(point: CurePoint, airC: number, perK: number): number {
  return point.hours * Math.exp(perK * (airC - point.airC))
}

function unreadable(table: CureTable, airC: number): CureError {
  return table.length === 0
    ? new CureError('cure.tableEmpty', {}, 'cure table: empty, got 0 rows, expected 1 or more')
    : new CureError('cure.airNotFinite', { airC }, `cure clock: bad temperature, got ${airC}, expected °C`)
}
