/** A sheet's times by temperature in one line: `5C:24h, 15C:10h, 25C:6h`. */
import { CureError, type CurePoint, type CureTable, cureTable } from '#core/cure'
import { read } from '#units'
import { SumError } from './sum-error.ts'

/** Warmer or colder rows than any data sheet has are taken for slips, °C. */
const rowLimits = { atLeast: -40, atMost: 150 }

/**
 * Reads rows `temperature:time`, parted by commas, or by semicolons where the figures have decimal commas.
 * @throws SumError naming the row that is not one; faults of the table as a whole keep their `cure.…` code.
 */
export function readTimeTable(field: string, text: string): CureTable {
  const separator = text.includes(';') ? ';' : ','
  const points = text.split(separator).map((part) => readRow({ field, text, part: part.trim() }))
  try {
    return cureTable(points)
  } catch (error) {
    if (!(error instanceof CureError)) throw error
    throw new SumError(error.code, { field, ...error.data }, `${field}: ${error.message}`)
  }
}

type Row = { readonly field: string; readonly text: string; readonly part: string }

function readRow(row: Row): CurePoint {
  const at = row.part.indexOf(':')
  const air = read(row.part.slice(0, Math.max(at, 0)), 'temperature', rowLimits)
  const time = read(row.part.slice(at + 1), 'time', { sign: 'positive' })
  if (at > 0 && air.ok && time.ok) return { airC: air.quantity.value, hours: time.quantity.value }
  throw new SumError(
    'sums.badTable',
    row,
    `${row.field}: not a row, got "${row.part}", expected a temperature and a time such as 15C:10h`,
  )
}
