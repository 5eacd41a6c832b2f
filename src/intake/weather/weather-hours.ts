/** Rows of a weather file set in order, one an hour: what is double, out of order, off the hour or missing. */
import { type Gap, hourMs } from '#core/climate'
import type { ProblemList } from '../problem.ts'
import { addProblem, problemList } from '../problem.ts'
import { mostHours } from './weather-grid.ts'
import type { WeatherRow } from './weather-rows.ts'

export type WeatherHours = {
  /** The rows in order of time, none at the same hour. */
  readonly rows: readonly WeatherRow[]
  readonly gaps: readonly Gap[]
  readonly errors: ProblemList
  readonly notes: ProblemList
}

/**
 * Orders rows by time and looks at the steps between them.
 * @param rows in the order of the file.
 */
export function orderHours(rows: readonly WeatherRow[]): WeatherHours {
  const errors = problemList()
  const notes = problemList()
  noteDisorder(rows, notes)
  const onTheHour = rows.filter((row) => keepsStep(row, rows[0]!, errors))
  const sorted = [...onTheHour].sort((a, b) => a.atMs - b.atMs || a.line - b.line)
  const single = withoutDoubles(sorted, { errors, notes })
  checkSpan(single, errors)
  return { rows: single, gaps: findGaps(single, notes), errors, notes }
}

/** A few rows centuries apart would ask for more hours than a machine holds. */
function checkSpan(rows: readonly WeatherRow[], errors: ProblemList): void {
  const [fromAtMs, toAtMs] = [rows[0]?.atMs ?? 0, rows.at(-1)?.atMs ?? 0]
  const hours = (toAtMs - fromAtMs) / hourMs + 1
  const data = { hours, mostHours, fromAtMs, toAtMs }
  if (hours > mostHours) addProblem(errors, { code: 'intake.spanTooLong', severity: 'error', data })
}

function noteDisorder(rows: readonly WeatherRow[], notes: ProblemList): void {
  const early = rows.filter((row, index) => index > 0 && row.atMs < rows[index - 1]!.atMs)
  if (early.length === 0) return
  const data = { count: early.length }
  addProblem(notes, { code: 'intake.rowsSorted', severity: 'note', line: early[0]!.line, data })
}

/** Rows must lie whole hours apart; the first row sets the beat. */
function keepsStep(row: WeatherRow, first: WeatherRow, errors: ProblemList): boolean {
  const offMs = (row.atMs - first.atMs) % hourMs
  if (offMs === 0) return true
  const data = { foundAtMs: row.atMs, offMinutes: Math.abs(offMs) / 60_000 }
  addProblem(errors, { code: 'intake.notHourly', severity: 'error', line: row.line, data })
  return false
}

function withoutDoubles(
  sorted: readonly WeatherRow[],
  lists: { readonly errors: ProblemList; readonly notes: ProblemList },
): readonly WeatherRow[] {
  const single: WeatherRow[] = []
  const twice: { readonly row: WeatherRow; readonly kept: WeatherRow }[] = []
  for (const row of sorted) {
    const kept = single.at(-1)
    if (kept?.atMs === row.atMs) twice.push({ row, kept })
    else single.push(row)
  }
  for (const { row, kept } of twice.sort((a, b) => a.row.line - b.row.line)) {
    const same = row.figures.every((figure, index) => Object.is(figure, kept.figures[index]))
    const data = { foundAtMs: row.atMs, firstLine: kept.line }
    if (same) addProblem(lists.notes, { code: 'intake.hourRepeated', severity: 'note', line: row.line, data })
    else addProblem(lists.errors, { code: 'intake.hourTwice', severity: 'error', line: row.line, data })
  }
  return single
}

function findGaps(rows: readonly WeatherRow[], notes: ProblemList): readonly Gap[] {
  const gaps: Gap[] = []
  rows.forEach((row, index) => {
    const before = rows[index - 1]
    const hours = before === undefined ? 0 : (row.atMs - before.atMs) / hourMs - 1
    if (before === undefined || hours === 0) return
    gaps.push({ fromHour: (before.atMs - rows[0]!.atMs) / hourMs + 1, hours })
    const data = { fromAtMs: before.atMs + hourMs, toAtMs: row.atMs, hours }
    addProblem(notes, { code: 'intake.gap', severity: 'note', line: row.line, data })
  })
  return gaps
}
