/** One line of an EPW file: its stamp and its fields. */
import { addProblem, oneLine, type ProblemList } from '../problem.ts'
import { mostLineLength } from './weather-rows.ts'

/** The shortest row that says what every year must: up to the cloud. Older files end before the rain. */
const fewestFields = 23

export type EpwRow = {
  readonly line: number
  readonly fields: readonly string[]
  readonly year: number
  readonly month: number
  readonly day: number
  /** The hour that ends, 1 to 24, local standard time. */
  readonly hour: number
}

export function readEpwRow(
  { line, row, last }: { readonly line: number; readonly row: string; readonly last: boolean },
  errors: ProblemList,
): EpwRow | undefined {
  const fault = (code: string, data: Readonly<Record<string, string | number>>): undefined => {
    addProblem(errors, { code, severity: 'error', line, data })
    return undefined
  }
  if (row.length > mostLineLength)
    return fault('intake.lineTooLong', { length: row.length, most: mostLineLength })
  const fields = row.split(',')
  if (fields.length < fewestFields) {
    const data = { found: fields.length, expected: 35 }
    return fault(last ? 'intake.endsMidRow' : 'intake.fieldCount', data)
  }
  const [year, month, day, hour, minute] = fields.slice(0, 5).map(Number) as [
    number,
    number,
    number,
    number,
    number,
  ]
  // Both ways to write a whole hour are in use.
  if (minute !== 0 && minute !== 60) return fault('intake.epwMinutes', { found: oneLine(fields[4]!, 40) })
  const date = new Date(Date.UTC(year, month - 1, day))
  const real = date.getUTCMonth() === month - 1 && date.getUTCDate() === day && year >= 1800 && year < 2200
  // A typical year may write 29 February of a year that has none.
  if ((!real && !(month === 2 && day === 29)) || !(Number.isInteger(hour) && hour >= 1 && hour <= 24))
    return fault('intake.timeNotRead', { found: oneLine(fields.slice(0, 4).join('-'), 40) })
  return { line, fields, year, month, day, hour }
}
