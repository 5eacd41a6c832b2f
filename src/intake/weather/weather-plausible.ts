/** Whether figures can be what their column says: range by range, and whole columns in the wrong unit. */
import type { Problem, ProblemList } from '../problem.ts'
import { addProblem, problemList } from '../problem.ts'
import type { WeatherColumn } from './weather-columns.ts'
import type { WeatherHeader } from './weather-header.ts'
import type { WeatherRow, WeatherRows } from './weather-rows.ts'

/** One column, in the unit of its file. */
export type Figures = Float64Array | readonly number[]

/** No place on earth is warmer than this in half of its hours, °C. */
const warmestMedianC = 45

/**
 * Columns in the wrong unit: air in °F, humidity or another share written 0 to 1 instead of 0 to 100.
 * A column that holds no figure at all is an error when it is required.
 */
export function wrongColumns(header: WeatherHeader, { rows, problems }: WeatherRows): readonly Problem[] {
  return header.columns.flatMap(({ column, at }, index) => {
    const figures = rows.map((row) => row.figures[index]!).filter((figure) => !Number.isNaN(figure))
    const wrong = wrongColumn(column, figures)
    // Where fields could not be read, the column is not empty, and the fields are told.
    const unread = wrong?.code === 'intake.columnEmpty' && problems.count > 0
    return wrong === undefined || unread ? [] : [{ ...wrong, severity: 'error' as const, column: at + 1 }]
  })
}

export function wrongColumn(
  column: WeatherColumn,
  figures: Figures,
): Pick<Problem, 'code' | 'data'> | undefined {
  const { name } = column
  if (figures.length === 0)
    return column.required ? { code: 'intake.columnEmpty', data: { name } } : undefined
  if (column.key === 'airC' && median(figures) > warmestMedianC)
    return { code: 'intake.airInFahrenheit', data: { name, median: median(figures) } }
  if (column.perUnit === 100 && inShares(column, figures))
    return { code: 'intake.shareNotPercent', data: { name, greatest: greatest(figures) } }
  return undefined
}

/**
 * Humidity is never 1 % throughout. Cloud and rain may well be 0 or next to nothing through a clear week: what is a share
 * shows a fraction, and something in more than a third of the hours.
 */
function inShares(column: WeatherColumn, figures: Figures): boolean {
  if (greatest(figures) > 1) return false
  if (column.required) return true
  let some = 0
  let fraction = false
  for (const figure of figures) {
    if (figure > 0) some++
    if (figure > 0 && figure < 1) fraction = true
  }
  return fraction && 3 * some > figures.length
}

function greatest(figures: Figures): number {
  let most = Number.NEGATIVE_INFINITY
  for (const figure of figures) most = Math.max(most, figure)
  return most
}

function median(figures: Figures): number {
  return Float64Array.from(figures).sort()[Math.floor(figures.length / 2)]!
}

/** Every figure out of its plausible range, columns apart that are wrong as a whole. */
export function outOfRange(
  header: WeatherHeader,
  rows: readonly WeatherRow[],
  wrong: readonly Problem[],
): ProblemList {
  const problems = problemList()
  const wholly = new Set(wrong.map((problem) => problem.column))
  for (const { line, figures } of rows) {
    header.columns.forEach(({ column, at }, index) => {
      const found = figures[index]!
      const { name, least, most } = column
      if (wholly.has(at + 1) || !(found < least || found > most)) return
      const data = { name, found, least, most }
      addProblem(problems, { code: 'intake.outOfRange', severity: 'error', line, column: at + 1, data })
    })
  }
  return problems
}
