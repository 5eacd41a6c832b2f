/** The head of a weather file: lines of remarks, then the names of the columns. */
import type { HourlySeries } from '#core/climate'
import { nearestName } from '../nearest-name.ts'
import type { Problem } from '../problem.ts'
import { oneLine, shown } from '../problem.ts'
import type { WeatherColumn } from './weather-columns.ts'
import { columnHints, timeColumn, weatherColumns } from './weather-columns.ts'

export type WeatherHeader = {
  /** Field index of the time and of each column that is there. */
  readonly timeAt: number
  readonly columns: readonly { readonly column: WeatherColumn; readonly at: number }[]
  readonly fields: number
  readonly problems: readonly Problem[]
}

/** Remarks that say something of the whole file. */
export type Remarks = {
  readonly source: string
  readonly licence: string
  readonly typicalYear: boolean
  readonly spot?: NonNullable<HourlySeries['spot']>
}

/** `# source: …`, `# licence: …`, `# typical year: yes` and `# place: 59.3, 18.1`; other remarks are passed over. */
export function readRemark(line: string): Partial<Remarks> {
  if (/^#\s*typical year\s*:\s*yes\s*$/i.test(line)) return { typicalYear: true }
  const place = /^#\s*place\s*:\s*(-?\d{1,3}(?:\.\d+)?)\s*,\s*(-?\d{1,3}(?:\.\d+)?)\s*$/i.exec(line)
  if (place !== null) return spotAt(Number(place[1]), Number(place[2]))
  const found = /^#\s*(source|licen[cs]e)\s*:\s*(.*)$/i.exec(line)
  if (found === null) return {}
  const key = found[1]!.toLowerCase() === 'source' ? 'source' : 'licence'
  return { [key]: oneLine(found[2]!, mostRemark) }
}

const radian = Math.PI / 180

/** Degrees north and east; nothing where they are on no globe. */
export function spotAt(latitude: number, longitude: number): Pick<HourlySeries, 'spot'> {
  if (!(Math.abs(latitude) <= 90 && Math.abs(longitude) <= 180)) return {}
  return { spot: { latitude: latitude * radian, longitude: longitude * radian } }
}

/** Longest source or licence line, letters. */
export const mostRemark = 200

/** The delimiter of a file: the one of comma, semicolon and tab that its header holds most of. */
export function delimiterOf(header: string): ',' | ';' | '\t' {
  const count = (delimiter: string) => header.split(delimiter).length
  if (count(';') > count(',') && count(';') >= count('\t')) return ';'
  return count('\t') > count(',') ? '\t' : ','
}

/**
 * Finds each column by its name.
 * Every unknown name is a problem with the nearest known one, every required column that is missing too.
 */
export function readHeader(names: readonly string[], line: number): WeatherHeader {
  const at = new Map<string, number>()
  const problems: Problem[] = []
  const known = [timeColumn, ...weatherColumns.map((column) => column.name)]
  names.forEach((raw, index) => {
    const typed = raw.trim()
    const name = known.find((one) => one.toLowerCase() === typed.toLowerCase())
    const place = { severity: 'error', line, column: index + 1 } as const
    if (name === undefined) problems.push({ ...place, ...unknownColumn(typed, known) })
    else if (at.has(name)) problems.push({ ...place, code: 'intake.columnTwice', data: { name } })
    else at.set(name, index)
  })
  problems.push(...missingColumns(at, line))
  const columns = weatherColumns.flatMap((column) => {
    const index = at.get(column.name)
    return index === undefined ? [] : [{ column, at: index }]
  })
  return { timeAt: at.get(timeColumn) ?? -1, columns, fields: names.length, problems }
}

function unknownColumn(typed: string, known: readonly string[]): Pick<Problem, 'code' | 'data'> {
  const letters = typed.toLowerCase().replace(/[^a-z0-9]/g, '')
  const hint = Object.hasOwn(columnHints, letters) ? columnHints[letters] : nearestName(typed, known)
  const data = { name: shown(typed), known: known.join(', ') }
  return hint === undefined
    ? { code: 'intake.columnUnknown', data }
    : { code: 'intake.columnUnknownNear', data: { ...data, nearest: hint } }
}

function missingColumns(at: ReadonlyMap<string, number>, line: number): readonly Problem[] {
  const required = [timeColumn, ...weatherColumns.filter((one) => one.required).map((one) => one.name)]
  return required
    .filter((name) => !at.has(name))
    .map((name) => ({ code: 'intake.columnMissing', severity: 'error', line, data: { name } }))
}
