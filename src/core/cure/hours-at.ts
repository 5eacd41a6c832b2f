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
  const upper = table.findIndex((point) => point.airC >= airC)
  const over = table[upper]
  if (over?.airC === airC) return { hours: over.hours, found: 'row', stopped: false }
  const first = table[0]
  const last = table[table.length - 1]
  if (first === undefined || last === undefined || Number.isNaN(airC)) throw unreadable(table, airC)
  if (first === last) return { hours: scaled(first, airC, -doublingPerK), found: 'one-point', stopped: false }
  if (over === undefined) return aboveTable(table, last, airC, sense)
  const under = table[upper - 1]
  if (under === undefined) return belowTable(first, sense)
  return { hours: scaled(under, airC, slope(under, over)), found: 'between', stopped: false }
}

function belowTable(first: CurePoint, sense: CureSense): CureHours {
  return sense === 'least'
    ? { hours: Number.POSITIVE_INFINITY, found: 'below', stopped: true }
    : { hours: first.hours, found: 'below', stopped: false }
}

function aboveTable(table: CureTable, last: CurePoint, airC: number, sense: CureSense): CureHours {
  const before = table[table.length - 2]
  if (sense === 'least' || before === undefined) return { hours: last.hours, found: 'above', stopped: false }
  const steepest = Math.min(slope(before, last), -doublingPerK)
  return { hours: scaled(last, airC, steepest), found: 'above', stopped: false }
}

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
