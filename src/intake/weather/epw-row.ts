/** One line of an EPW file: its stamp, and its figures in the units of a series. */
import { addProblem, oneLine, type ProblemList } from '../problem.ts'
import type { ColumnKey } from './weather-grid.ts'
import { mostLineLength } from './weather-rows.ts'

type Field = {
  readonly key: ColumnKey
  /** Place in the row, from 0. */
  readonly at: number
  /** From here on the figure is missing. */
  readonly missing: number
  readonly perUnit: number
  readonly most: number
}

/** SOURCE: data dictionary of the EPW format: place in the row, and from which code on the figure is missing. */
export const epwFields = [
  field('airC', 6, 99.9),
  field('dewC', 7, 99.9),
  // Up to 110 % is valid; over 100 % the air is saturated all the same.
  field('humidityShare', 8, 999, { perUnit: 100, most: 1 }),
  field('windMps', 21, 999),
  field('windFromRad', 20, 999, { perUnit: 180 / Math.PI, most: Number.POSITIVE_INFINITY }),
  field('cloudShare', 22, 99, { perUnit: 10, most: Number.POSITIVE_INFINITY }),
  // From here on totals for the hour that ends at the stamp.
  field('skyHeatWm2', 12, 9999),
  field('sunWm2', 13, 9999),
  field('sunBeamWm2', 14, 9999),
  field('sunDiffuseWm2', 15, 9999),
  field('rainMm', 33, 999),
] as const

function field(
  key: ColumnKey,
  at: number,
  missing: number,
  rest: Pick<Field, 'perUnit' | 'most'> = { perUnit: 1, most: Number.POSITIVE_INFINITY },
): Field {
  return { key, at, missing, ...rest }
}

const observedAt = 26
const codesAt = 27
const periodAt = 34
const fieldsOfRow = 35
/** The shortest row that says what every year must: up to the cloud. Older files end before the rain. */
const fewestFields = 23
/** Longest total of rain that is parted among its hours, h. */
const longestRain = 24

export type EpwRow = {
  readonly line: number
  readonly year: number
  readonly month: number
  readonly day: number
  /** The hour that ends, 1 to 24, local standard time. */
  readonly hour: number
  /** One for each of `epwFields`, NaN where it is missing. */
  readonly figures: readonly number[]
  /** Over how many hours the rain fell. */
  readonly rainHours: number
  /** What somebody saw: rain or none; undefined when nobody looked. */
  readonly sawRain: boolean | undefined
}

export function readEpwRow(
  { line, row, last }: { readonly line: number; readonly row: string; readonly last: boolean },
  errors: ProblemList,
): EpwRow | undefined {
  const fault = (code: string, data: Readonly<Record<string, string | number>>, at?: number): undefined => {
    addProblem(errors, {
      code,
      severity: 'error',
      line,
      ...(at === undefined ? {} : { column: at + 1 }),
      data,
    })
    return undefined
  }
  if (row.length > mostLineLength)
    return fault('intake.lineTooLong', { length: row.length, most: mostLineLength })
  const ends = endsOf(row)
  if (ends.length < fewestFields) {
    const data = { found: ends.length, expected: fieldsOfRow }
    return fault(last ? 'intake.endsMidRow' : 'intake.fieldCount', data)
  }
  const text = (at: number) => (at < ends.length ? row.slice(at === 0 ? 0 : ends[at - 1]! + 1, ends[at]) : '')
  const [year, month, day, hour, minute] = [0, 1, 2, 3, 4].map((at) => Number(text(at))) as [
    number,
    number,
    number,
    number,
    number,
  ]
  // Both ways to write a whole hour are in use.
  if (minute !== 0 && minute !== 60) return fault('intake.epwMinutes', { found: oneLine(text(4), 40) })
  if (!isStamp({ year, month, day, hour })) {
    const found = oneLine([0, 1, 2, 3].map(text).join('-'), 40)
    return fault('intake.timeNotRead', { found })
  }
  const figures = epwFields.map(({ key, at, missing, perUnit, most }) => {
    const written = text(at)
    const value = written === '' ? Number.NaN : Number(written)
    if (Number.isNaN(value) && written.trim() !== '')
      fault('intake.numberNotRead', { found: oneLine(written, 40), name: key }, at)
    return value >= missing ? Number.NaN : Math.min(value / perUnit, most)
  })
  const period = Number(text(periodAt))
  const rainHours = Number.isInteger(period) && period >= 1 && period <= longestRain ? period : 1
  const sawRain = Number(text(observedAt)) === 0 ? seen(text(codesAt)) : undefined
  return { line, year, month, day, hour, figures, rainHours, sawRain }
}

/** Where each field ends. */
function endsOf(row: string): readonly number[] {
  const ends: number[] = []
  for (let at = row.indexOf(','); at >= 0 && ends.length < fieldsOfRow; at = row.indexOf(',', at + 1))
    ends.push(at)
  if (ends.length < fieldsOfRow) ends.push(row.length)
  return ends
}

/** Days of each month; a typical year may write 29 February of a year that has none. */
const daysOfMonth = [31, 29, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31]

function isStamp({ year, month, day, hour }: Pick<EpwRow, 'year' | 'month' | 'day' | 'hour'>): boolean {
  const whole = Number.isInteger(year) && Number.isInteger(day) && Number.isInteger(hour)
  const days = daysOfMonth[month - 1]
  return (
    whole &&
    days !== undefined &&
    // A day within what can be written, whatever the clock.
    year > 1900 &&
    year < 2199 &&
    day >= 1 &&
    day <= days &&
    hour >= 1 &&
    hour <= 24
  )
}

/** SOURCE: the same: of nine digits the second tells of rain, the third of drizzle; 9 is none. */
function seen(written: string): boolean | undefined {
  const codes = written.trim().padStart(9, '0')
  return /^\d{9}$/.test(codes) ? codes[1] !== '9' || codes[2] !== '9' : undefined
}
