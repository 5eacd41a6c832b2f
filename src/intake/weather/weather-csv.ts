/** Reads an hourly weather file of our own plain form: hostile bytes to a series, bounded, every problem placed. */
import { type HourlySeries, hourMs, type OptionalColumn } from '#core/climate'
import { decodeText } from '../decode-text.ts'
import type { Problem, ProblemList } from '../problem.ts'
import { addProblem, problemList, tellProblems } from '../problem.ts'
import { timeColumn } from './weather-columns.ts'
import type { Remarks, WeatherHeader } from './weather-header.ts'
import { delimiterOf, readHeader, readRemark } from './weather-header.ts'
import type { WeatherHours } from './weather-hours.ts'
import { orderHours } from './weather-hours.ts'
import { outOfRange, wrongColumns } from './weather-plausible.ts'
import { mostWeatherBytes, type WeatherRead } from './weather-read.ts'
import { linesOf, mostLineLength, readRows, splitLine } from './weather-rows.ts'

/**
 * Reads hourly weather from CSV.
 *
 * Lines beginning with `#` may stand first (`# source: …`, `# licence: …`, `# typical year: yes`,
 * `# place: 59.3, 18.1`), then a header with `time`, `airC`,
 * `humidityPct` and, if there, `windMps`, `windFromDeg`, `rainMm`, `cloudPct`, `rainChancePct`, `sunWm2`, in any
 * order, parted by commas, semicolons or tabs. Times are ISO 8601 with offset or `Z` and lie whole hours apart; an
 * empty field is unknown. Rows out of order are sorted, hours without a row are gaps, both with a note.
 * @param bytes the file as it came. At most 20 MB, 100,000 rows, and 100,000 hours from first to last.
 * @returns the series with notes, or the errors: the first fifty with line and field, then how many more.
 * Nothing is guessed or dropped: with an error there is no series.
 */
export function readWeatherCsv(bytes: Uint8Array): WeatherRead {
  const decoded = decodeText({ bytes, mostBytes: mostWeatherBytes })
  return decoded.ok ? readWeatherText(decoded.text) : { ok: false, problems: [decoded.problem] }
}

/** Whether the head of a table has at least two of the three names that our own form must have. */
export function isOwnForm(text: string): boolean {
  for (const { line, text: row } of linesOf(text)) {
    if (line > mostLinesBefore || row.length > mostLineLength) return false
    if (row.trim() === '' || row.startsWith('#')) continue
    const names = row
      .toLowerCase()
      .split(/[,;\t]/)
      .map((name) => name.replace(/["\ufeff]/g, '').trim())
    return [timeColumn, 'airc', 'humiditypct'].filter((name) => names.includes(name)).length >= 2
  }
  return false
}

/** The same from text that is decoded. */
export function readWeatherText(text: string): WeatherRead {
  const lines = linesOf(text)
  const head = readHead(lines)
  if (head === undefined) return refuse({ code: 'intake.noHeader', severity: 'error', data: {} })
  const { header } = head
  if (header.problems.length > 0) return { ok: false, problems: told([listOf(header.problems)]) }
  const read = readRows({ ...head, lines })
  const { rows, problems, tooMany } = read
  if (rows.length === 0 && problems.count === 0)
    return refuse({ code: 'intake.noRows', severity: 'error', data: {} })
  const wrong = wrongColumns(header, read)
  const hours = orderHours(rows)
  const wholeFile = listOf(tooMany === undefined ? wrong : [tooMany, ...wrong])
  const errors = told([wholeFile, problems, outOfRange(header, rows, wrong), hours.errors])
  const notes = tellProblems([hours.notes, unknownFigures(header, hours)], moreNotes)
  if (errors.length > 0) return { ok: false, problems: [...errors, ...notes] }
  return { ok: true, series: seriesOf(head, hours), problems: notes }
}

const moreNotes = { code: 'intake.moreNotes', severity: 'note' } as const

function told(lists: readonly ProblemList[]): readonly Problem[] {
  return tellProblems(lists, { code: 'intake.moreErrors', severity: 'error' })
}

function refuse(problem: Problem): WeatherRead {
  return { ok: false, problems: [problem] }
}

function listOf(problems: readonly Problem[]): ProblemList {
  const list = problemList()
  for (const problem of problems) addProblem(list, problem)
  return list
}

type Head = {
  readonly header: WeatherHeader
  readonly delimiter: ReturnType<typeof delimiterOf>
} & Remarks

/** A file with more lines than this before its header has none. */
const mostLinesBefore = 1000

/** Takes lines up to and with the header; undefined when there is none. */
function readHead(lines: ReturnType<typeof linesOf>): Head | undefined {
  let remarks: Remarks = { source: '', licence: '', typicalYear: false }
  for (let next = lines.next(); !next.done; next = lines.next()) {
    const { line, text } = next.value
    if (line > mostLinesBefore) return undefined
    if (text.trim() === '') continue
    if (!text.startsWith('#')) return { ...remarks, ...headerOf(text, line) }
    remarks = { ...remarks, ...readRemark(text) }
  }
  return undefined
}

function headerOf(text: string, line: number): Pick<Head, 'header' | 'delimiter'> {
  const delimiter = delimiterOf(text.slice(0, mostLineLength))
  const names = text.length > mostLineLength ? undefined : splitLine(text, delimiter)
  if (names !== undefined) return { delimiter, header: readHeader(names, line) }
  const tooLong = { code: 'intake.lineTooLong', data: { length: text.length, most: mostLineLength } }
  const open = { code: 'intake.quotesOpen', data: {} }
  const fault = text.length > mostLineLength ? tooLong : open
  const problems: Problem[] = [{ ...fault, severity: 'error', line }]
  return { delimiter, header: { timeAt: -1, columns: [], fields: 0, problems } }
}

/** Says of each column how many of its fields are empty. */
function unknownFigures(header: WeatherHeader, { rows }: WeatherHours): ProblemList {
  const notes = problemList()
  header.columns.forEach(({ column, at }, index) => {
    const count = rows.filter((row) => Number.isNaN(row.figures[index]!)).length
    const data = { name: column.name, count, rows: rows.length }
    if (count > 0)
      addProblem(notes, { code: 'intake.figuresUnknown', severity: 'note', column: at + 1, data })
  })
  return notes
}

function seriesOf(
  { header, source, licence, typicalYear, spot }: Head,
  { rows, gaps }: WeatherHours,
): HourlySeries {
  const startMs = rows[0]!.atMs
  const hours = (rows.at(-1)!.atMs - startMs) / hourMs + 1
  const optional: Partial<Record<OptionalColumn, Float64Array>> = {}
  const required = { airC: new Float64Array(0), humidityShare: new Float64Array(0) }
  header.columns.forEach(({ column }, index) => {
    const filled = new Float64Array(hours).fill(Number.NaN)
    for (const row of rows) filled[(row.atMs - startMs) / hourMs] = row.figures[index]! / column.perUnit
    if (column.key === 'airC' || column.key === 'humidityShare') required[column.key] = filled
    else optional[column.key] = filled
  })
  return {
    kind: 'hourlySeries',
    startMs,
    hours,
    ...required,
    ...optional,
    gaps,
    source,
    licence,
    ...(typicalYear && hours === 8760 ? { typicalYear } : {}),
    ...(spot ? { spot } : {}),
  }
}
