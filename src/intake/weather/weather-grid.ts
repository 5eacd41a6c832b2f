/** Figures hour by hour before they are judged: what every reader but that of plain CSV fills, and what is made of it. */
import { type Gap, type HourlySeries, hourMs, type OptionalColumn, relativeHumidity } from '#core/climate'
import { addProblem, type Problem, type ProblemList, problemList, tellProblems } from '../problem.ts'
import { type WeatherColumn, weatherColumns } from './weather-columns.ts'
import { swapped, tooDamp, wrongColumn } from './weather-plausible.ts'
import type { WeatherRead } from './weather-read.ts'

/** Longest series, h: eleven years. */
export const mostHours = 100_000

export type ColumnKey = WeatherColumn['key']

export type WeatherGrid = {
  /** Start of the first hour, ms since 1970 UTC. */
  readonly startMs: number
  readonly hours: number
  /** In the unit of the series; NaN is unknown. */
  readonly columns: Partial<Record<ColumnKey, Float64Array>>
  /** 1 for each hour of which the source speaks at all. */
  readonly told: Uint8Array
}

export function weatherGrid(startMs: number, hours: number): WeatherGrid {
  return { startMs, hours, columns: {}, told: new Uint8Array(hours) }
}

/**
 * An empty grid from the first of the moments to the hour that begins at the last. What is refused instead: no moment at
 * all, unless there are errors to tell, and a span that is longer than any series.
 */
export function gridOver(momentsMs: readonly number[], errors: ProblemList): WeatherGrid | WeatherRead {
  if (momentsMs.length === 0) return errors.count > 0 ? weatherGrid(0, 0) : refuseWeather('intake.noRows')
  const fromMs = momentsMs.reduce((a, b) => Math.min(a, b))
  const toMs = momentsMs.reduce((a, b) => Math.max(a, b)) + hourMs
  const hours = (toMs - fromMs) / hourMs
  if (hours > mostHours)
    return refuseWeather('intake.spanTooLong', { fromAtMs: fromMs, toAtMs: toMs, mostHours })
  return weatherGrid(fromMs, hours)
}

/** Column of a grid, made when it is first asked for. */
export function gridColumn(grid: WeatherGrid, key: ColumnKey): Float64Array {
  const made = grid.columns[key] ?? new Float64Array(grid.hours).fill(Number.NaN)
  grid.columns[key] = made
  return made
}

/** Puts a figure at a moment; what is outside the grid is passed over. */
export function putAt(grid: WeatherGrid, key: ColumnKey, atMs: number, value: number): void {
  const hour = Math.floor((atMs - grid.startMs) / hourMs)
  if (hour >= 0 && hour < grid.hours && !Number.isNaN(value)) gridColumn(grid, key)[hour] = value
}

type Column = { readonly column: WeatherColumn; readonly values: Float64Array }

export type GridOrigin = {
  readonly source: string
  readonly licence: string
  readonly typicalYear?: true
  readonly spot?: NonNullable<HourlySeries['spot']>
  /** What the reader itself has to tell. */
  readonly errors?: ProblemList
  readonly notes?: ProblemList
}

/**
 * The series of a grid, or what cannot be right in it.
 * Humidity that is not known is worked out where air and dew point are. Figures out of their range are errors.
 */
export function seriesOfGrid(grid: WeatherGrid, origin: GridOrigin): WeatherRead {
  const errors = origin.errors ?? problemList()
  const notes = origin.notes ?? problemList()
  humidityFromDew(grid, notes)
  const there = weatherColumns.flatMap((column) => {
    const values = grid.columns[column.key]
    return values === undefined && !column.required ? [] : [{ column, values: values ?? new Float64Array(0) }]
  })
  const gaps = gapsOf(grid, notes)
  judgeColumns(grid, there, errors)
  noteUnknown(grid, there, notes)
  const told = tellProblems([notes], { code: 'intake.moreNotes', severity: 'note' })
  if (errors.count > 0) {
    return {
      ok: false,
      problems: [...tellProblems([errors], { code: 'intake.moreErrors', severity: 'error' }), ...told],
    }
  }
  return { ok: true, series: { ...seriesFrom(grid, gaps), ...labels(origin) }, problems: told }
}

const labels = ({ source, licence, typicalYear, spot }: GridOrigin) => ({
  ...(typicalYear ? { typicalYear } : {}),
  ...(spot ? { spot } : {}),
  source,
  licence,
})

function seriesFrom(
  { startMs, hours, columns }: WeatherGrid,
  gaps: readonly Gap[],
): Omit<HourlySeries, 'source' | 'licence'> {
  const optional: Partial<Record<OptionalColumn, Float64Array>> = {}
  for (const { key } of weatherColumns) {
    const values = columns[key]
    if (values !== undefined && key !== 'airC' && key !== 'humidityShare') optional[key] = values
  }
  const unknown = new Float64Array(hours).fill(Number.NaN)
  const { airC = unknown, humidityShare = unknown } = columns
  return { kind: 'hourlySeries', startMs, hours, airC, humidityShare, ...optional, gaps }
}

function humidityFromDew({ columns, hours }: WeatherGrid, notes: ProblemList): void {
  const { airC, dewC } = columns
  if (airC === undefined || dewC === undefined) return
  const humidityShare = columns.humidityShare ?? new Float64Array(hours).fill(Number.NaN)
  let count = 0
  for (let hour = 0; hour < hours; hour++) {
    const air = { airC: airC[hour]!, dewC: dewC[hour]! }
    if (!Number.isNaN(humidityShare[hour]!) || Number.isNaN(air.airC + air.dewC)) continue
    humidityShare[hour] = Math.min(1, relativeHumidity(air))
    count++
  }
  if (count === 0) return
  columns.humidityShare = humidityShare
  addProblem(notes, { code: 'intake.humidityFromDew', severity: 'note', data: { count } })
}

function gapsOf({ told, startMs, hours }: WeatherGrid, notes: ProblemList): readonly Gap[] {
  const gaps: Gap[] = []
  for (let from = told.indexOf(0); from >= 0 && from < hours; from = told.indexOf(0, from)) {
    const next = told.indexOf(1, from)
    const to = next < 0 ? hours : next
    gaps.push({ fromHour: from, hours: to - from })
    const data = { fromAtMs: startMs + from * hourMs, toAtMs: startMs + to * hourMs, hours: to - from }
    addProblem(notes, { code: 'intake.gap', severity: 'note', data })
    from = to
  }
  return gaps
}

function judgeColumns(grid: WeatherGrid, there: readonly Column[], errors: ProblemList): void {
  const { airC = [], humidityShare = [] } = grid.columns
  const pair = { airC, humidityPct: Float64Array.from(humidityShare, (share) => 100 * share) }
  const crossed = swapped(pair)
  if (crossed === undefined) for (const column of there) judgeColumn(grid, { ...column, errors })
  const wrong = crossed ?? (errors.count === 0 ? tooDamp(pair) : undefined)
  if (wrong !== undefined) addProblem(errors, { ...wrong, severity: 'error' })
}

/** Columns that are wrong as a whole, else their figures that cannot be. */
function judgeColumn(
  { startMs }: WeatherGrid,
  { column, values, errors }: Column & { readonly errors: ProblemList },
): void {
  const { name, perUnit, least, most } = column
  const known = new Float64Array(values.length)
  let count = 0
  for (const value of values) if (!Number.isNaN(value)) known[count++] = value * perUnit
  const wholly = wrongColumn(column, known.subarray(0, count))
  // Where rows could not be read, the columns are not empty, and the rows are told.
  if (wholly?.code === 'intake.columnEmpty' && errors.count > 0) return
  if (wholly !== undefined) {
    addProblem(errors, { ...wholly, severity: 'error' })
    return
  }
  values.forEach((value, hour) => {
    const exact = value * perUnit
    if (Number.isNaN(value) || (exact >= least && exact <= most)) return
    const found = Math.round(exact * 1e6) / 1e6
    if (found >= least && found <= most) return
    const data = { name, found, least, most, foundAtMs: startMs + hour * hourMs }
    addProblem(errors, { code: 'intake.hourOutOfRange', severity: 'error', data })
  })
}

/** Columns that lack as many figures are told together: most often they lack the same hours. */
function noteUnknown({ told, columns }: WeatherGrid, there: readonly Column[], notes: ProblemList): void {
  const rows = told.reduce((all, one) => all + one, 0)
  const names = new Map<number, string[]>()
  for (const { column, values } of there) {
    const unknown = (value: number, hour: number) =>
      // A calm comes from nowhere.
      told[hour] === 1 &&
      Number.isNaN(value) &&
      !(column.key === 'windFromRad' && columns.windMps?.[hour] === 0)
    let count = 0
    values.forEach((value, hour) => {
      if (unknown(value, hour)) count++
    })
    if (count > 0) names.set(count, [...(names.get(count) ?? []), column.name])
  }
  for (const [count, list] of names) {
    const data = { name: list.join(', '), count, rows }
    addProblem(notes, { code: 'intake.figuresUnknown', severity: 'note', data })
  }
}

/** One problem as a whole answer. */
export function refuseWeather(code: string, data: Problem['data'] = {}): WeatherRead {
  return { ok: false, problems: [{ code, severity: 'error', data }] }
}
