/** The lines of a weather file under its header: fields to times and numbers, each problem with its place. */
import type { Problem, ProblemData, ProblemList } from '../problem.ts'
import { addProblem, problemList, shown } from '../problem.ts'
import { splitQuoted } from './quoted-line.ts'
import type { WeatherHeader } from './weather-header.ts'
import { readTime } from './weather-time.ts'

/** One line that was read: its moment and one figure for each column of the header, NaN where it is empty. */
export type WeatherRow = {
  readonly line: number
  readonly atMs: number
  readonly figures: readonly number[]
}

export type WeatherRows = {
  readonly rows: readonly WeatherRow[]
  readonly problems: ProblemList
  /** Set when the file goes on after the most rows. */
  readonly tooMany?: Problem
}

/** Longest line that is read at all, characters: a hundred times a long one. */
export const mostLineLength = 4096

/** Most lines with figures: eleven years of hours. */
export const mostRows = 100_000

export type Delimiter = ',' | ';' | '\t'

/** Splits one line into fields; undefined when its quotes do not close. */
export function splitLine(line: string, delimiter: Delimiter): readonly string[] | undefined {
  return line.includes('"') ? splitQuoted(line, delimiter) : line.split(delimiter)
}

/** Lines of a text from one place on, with their numbers from 1, without making a list of them all. */
export function* linesOf(
  text: string,
): Generator<{ readonly line: number; readonly text: string; readonly last: boolean }> {
  let line = 0
  for (let from = 0; from < text.length; ) {
    const end = text.indexOf('\n', from)
    const last = end < 0
    const to = last ? text.length : end
    line++
    yield { line, text: text.slice(from, to), last }
    from = to + 1
  }
}

/**
 * Reads the lines after the header.
 * @param file.lines what is left of the file. @param file.header where each column stands. @param file.delimiter
 * what parts the fields. Reading stops at the most rows.
 */
export function readRows(file: {
  readonly lines: Iterable<{ readonly line: number; readonly text: string; readonly last: boolean }>
  readonly header: WeatherHeader
  readonly delimiter: Delimiter
}): WeatherRows {
  const rows: WeatherRow[] = []
  const problems = problemList()
  let seen = 0
  for (const { line, text, last } of file.lines) {
    if (text.trim() === '') continue
    if (++seen > mostRows) return { rows, problems, tooMany }
    const fault = faultyAt(problems, line)
    const fields = fieldsOf({ text, last }, file, fault)
    const row = fields && readRow(fields, file.header, { line, fault })
    if (row !== undefined) rows.push(row)
  }
  return { rows, problems }
}

const tooMany: Problem = { code: 'intake.tooManyRows', severity: 'error', data: { most: mostRows } }

type Fault = (code: string, data: ProblemData, column?: number) => void

function faultyAt(problems: ProblemList, line: number): Fault {
  return (code, data, column) =>
    addProblem(problems, {
      code,
      severity: 'error',
      line,
      ...(column === undefined ? {} : { column }),
      data,
    })
}

function fieldsOf(
  found: { readonly text: string; readonly last: boolean },
  file: { readonly header: WeatherHeader; readonly delimiter: Delimiter },
  fault: Fault,
): readonly string[] | undefined {
  const { text, last } = found
  const expected = file.header.fields
  if (text.length > mostLineLength) fault('intake.lineTooLong', { length: text.length, most: mostLineLength })
  else {
    const fields = splitLine(text, file.delimiter)
    if (fields === undefined) fault('intake.quotesOpen', {})
    else if (fields.length === expected) return fields
    else if (last && fields.length < expected) fault('intake.endsMidRow', { found: fields.length, expected })
    else fault('intake.fieldCount', { found: fields.length, expected })
  }
  return undefined
}

function readRow(
  fields: readonly string[],
  header: WeatherHeader,
  at: { readonly line: number; readonly fault: Fault },
): WeatherRow | undefined {
  const figures = header.columns.map(({ column, at: index }) =>
    readFigure(fields[index]!.trim(), (code, data) =>
      at.fault(code, { name: column.name, ...data }, index + 1),
    ),
  )
  const written = fields[header.timeAt]!.trim()
  const time = readTime(written)
  if (time.ok) return { line: at.line, atMs: time.atMs, figures }
  const code = time.why === 'offset' ? 'intake.timeWithoutOffset' : 'intake.timeNotRead'
  at.fault(code, { found: shown(written) }, header.timeAt + 1)
  return undefined
}

const number = /^[+-]?(?:\d+\.?\d*|\.\d+)(?:e[+-]?\d{1,3})?$/i

/** A number with a decimal point; empty is unknown, NaN. */
function readFigure(written: string, fault: (code: string, data: ProblemData) => void): number {
  if (written === '') return Number.NaN
  const plain = written.replace('\u2212', '-')
  if (number.test(plain)) return Number(plain)
  const comma = /^[+-]?\d+,\d+$/.test(plain)
  fault(comma ? 'intake.decimalComma' : 'intake.numberNotRead', { found: shown(written) })
  return Number.NaN
}
