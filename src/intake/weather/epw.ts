/**
 * EPW, a year of hours at a station: eight lines of head, then 35 fields an hour. A whole year is taken as typical,
 * for its months are as a rule from different years.
 */
import { hourMs } from '#core/climate'
import { addProblem, oneLine, type ProblemList, problemList } from '../problem.ts'
import { type EpwRow, readEpwRow } from './epw-row.ts'
import {
  type ColumnKey,
  putAt,
  refuseWeather,
  seriesOfGrid,
  type WeatherGrid,
  weatherGrid,
} from './weather-grid.ts'
import { mostRemark } from './weather-header.ts'
import type { WeatherRead } from './weather-read.ts'
import { linesOf, mostLineLength } from './weather-rows.ts'

const headLines = 8
const hoursOfYear = 8760
/** A year of 365 days that stands for all: the hours of a typical year begin in it. */
const nominalYear = 2001
const mostRowsRead = 10 * hoursOfYear

type Field = {
  readonly at: number
  readonly key: ColumnKey
  /** From here on the figure is missing. */
  readonly missing: number
  readonly perUnit: number
  readonly most?: number
}

/** SOURCE: data dictionary of the EPW format: place in the row, and from which code on the figure is missing. */
const instants: readonly Field[] = [
  { at: 6, key: 'airC', missing: 99.9, perUnit: 1 },
  { at: 7, key: 'dewC', missing: 99.9, perUnit: 1 },
  // Up to 110 % is valid; over 100 % the air is saturated all the same.
  { at: 8, key: 'humidityShare', missing: 999, perUnit: 100, most: 1 },
  { at: 21, key: 'windMps', missing: 999, perUnit: 1 },
  { at: 22, key: 'cloudShare', missing: 99, perUnit: 10 },
]
/** Totals for the hour that ends at the stamp. */
const totals: readonly Field[] = [
  { at: 12, key: 'skyHeatWm2', missing: 9999, perUnit: 1 },
  { at: 13, key: 'sunWm2', missing: 9999, perUnit: 1 },
  { at: 14, key: 'sunBeamWm2', missing: 9999, perUnit: 1 },
  { at: 15, key: 'sunDiffuseWm2', missing: 9999, perUnit: 1 },
]
const windFrom = { at: 20, missing: 999 } as const
const observed = { at: 26, codes: 27 } as const
const rain = { at: 33, missing: 999, periodAt: 34, longestHours: 24 } as const
/** What rain that was seen and not measured counts for, mm in the hour; assumed: the least a gauge shows. */
const seenRainMm = 0.2

export const looksLikeEpw = (text: string): boolean => /^LOCATION,/i.test(text)

/** Reads the text of an EPW file. */
export function readEpw(text: string): WeatherRead {
  const errors = problemList()
  const head: string[] = []
  const rows: EpwRow[] = []
  for (const { line, text: row, last } of linesOf(text)) {
    if (line <= headLines) head.push(row.slice(0, mostLineLength))
    else if (row !== '') {
      if (rows.length + errors.count >= mostRowsRead)
        return refuseWeather('intake.tooManyRows', { most: mostRowsRead })
      const read = readEpwRow({ line, row, last }, errors)
      if (read !== undefined) rows.push(read)
    }
  }
  const station = readHead(head)
  if (station === undefined) return refuseWeather('intake.epwHead')
  if (errors.count > 0)
    return seriesOfGrid(weatherGrid(0, 0), { source: '', licence: '', errors, notes: problemList() })
  if (rows.length === 0) return refuseWeather('intake.noRows')
  return wholeYear(rows) ? typicalYear(rows, station) : partYear(rows, station)
}

type Station = { readonly offsetHours: number; readonly source: string }

/** The offset from UTC and the words for the source; undefined when the head is none. */
function readHead(head: readonly string[]): Station | undefined {
  const [city = '', state = '', country = '', kind = '', number = '', , , offset = ''] = (head[0] ?? '')
    .split(',')
    .slice(1)
    .map((field) => field.trim())
  const offsetHours = offset === '' ? Number.NaN : Number(offset)
  if (!(Math.abs(offsetHours) <= 14) || !Number.isInteger(offsetHours * 4)) return undefined
  const comment = /^COMMENTS 1,(.*)$/i.exec(head[5] ?? '')?.[1] ?? ''
  const named = [city, state, country, kind, number].filter((field) => field !== '' && field !== '-')
  return {
    offsetHours,
    source: oneLine([named.join(' '), comment].filter((one) => one !== '').join('; '), mostRemark),
  }
}

/** Hours since the new year of a year of 365 days; the stamp of a row, 1 to 8760. NaN on 29 February. */
function stampOfYear({ month, day, hour }: EpwRow): number {
  if (month === 2 && day === 29) return Number.NaN
  return (Date.UTC(nominalYear, month - 1, day) - Date.UTC(nominalYear, 0, 1)) / hourMs + hour
}

const wholeYear = (rows: readonly EpwRow[]): boolean =>
  rows.length >= hoursOfYear && stampOfYear(rows[0]!) === 1 && stampOfYear(rows.at(-1)!) === hoursOfYear

/** Month, day and hour count, the year does not: the last hour of December borders on the first of January. */
function typicalYear(rows: readonly EpwRow[], { offsetHours, source }: Station): WeatherRead {
  const firstStampMs = Date.UTC(nominalYear, 0, 1, 1) - offsetHours * hourMs
  const grid = weatherGrid(firstStampMs, hoursOfYear)
  const [errors, notes] = [problemList(), problemList()]
  const seen = new Map<number, number>()
  let leapRows = 0
  const stamped = rows.flatMap((row) => {
    const stamp = stampOfYear(row)
    if (Number.isNaN(stamp)) leapRows++
    else if (seen.has(stamp))
      noteTwice(row, { first: seen.get(stamp)!, atMs: firstStampMs + (stamp - 1) * hourMs, errors })
    else {
      seen.set(stamp, row.line)
      return [{ row, hour: stamp - 1 }]
    }
    return []
  })
  if (leapRows > 0)
    addProblem(notes, { code: 'intake.leapDayLeftOut', severity: 'note', data: { count: leapRows } })
  const years = new Set(rows.map(({ year }) => year))
  const data = { count: years.size, firstYear: Math.min(...years), lastYear: Math.max(...years) }
  addProblem(notes, { code: 'intake.typicalYear', severity: 'note', data })
  fill(grid, stamped, { ring: true, notes, errors })
  return seriesOfGrid(grid, { source, licence: '', typicalYear: true, errors, notes })
}

/** Rows of one stretch of real hours. */
function partYear(rows: readonly EpwRow[], { offsetHours, source }: Station): WeatherRead {
  const atMs = ({ year, month, day, hour }: EpwRow) =>
    Date.UTC(year, month - 1, day, hour) - offsetHours * hourMs
  const moments = rows.map(atMs)
  const firstMs = moments.reduce((a, b) => Math.min(a, b))
  const hours = (moments.reduce((a, b) => Math.max(a, b)) - firstMs) / hourMs + 1
  if (hours > 2 * rows.length)
    return refuseWeather('intake.epwPartYear', { rows: rows.length, yearRows: hoursOfYear })
  const grid = weatherGrid(firstMs, hours)
  const [errors, notes] = [problemList(), problemList()]
  const seen = new Map<number, number>()
  const stamped = rows.flatMap((row, index) => {
    const hour = (moments[index]! - firstMs) / hourMs
    if (!seen.has(hour)) {
      seen.set(hour, row.line)
      return [{ row, hour }]
    }
    noteTwice(row, { first: seen.get(hour)!, atMs: moments[index]!, errors })
    return []
  })
  fill(grid, stamped, { ring: false, notes, errors })
  return seriesOfGrid(grid, { source, licence: '', errors, notes })
}

function noteTwice(
  row: EpwRow,
  { first, atMs, errors }: { readonly first: number; readonly atMs: number; readonly errors: ProblemList },
): void {
  const data = { foundAtMs: atMs, firstLine: first }
  addProblem(errors, { code: 'intake.hourTwice', severity: 'error', line: row.line, data })
}

type Stamped = { readonly row: EpwRow; readonly hour: number }
type Filling = { readonly ring: boolean; readonly notes: ProblemList; readonly errors: ProblemList }

/** An hour of the grid begins at the stamp of its row: totals, which end there, belong to the hour before. */
function fill(grid: WeatherGrid, rows: readonly Stamped[], { ring, notes, errors }: Filling): void {
  const { startMs, hours } = grid
  const before = (hour: number, by: number) => (ring ? (hour - by + hours) % hours : hour - by)
  const figure = figureOf(errors)
  let seen = 0
  for (const { row, hour } of rows) {
    grid.told[hour] = 1
    const atMs = startMs + hour * hourMs
    for (const field of instants) putAt(grid, field.key, atMs, figure(row, field))
    const from = figure(row, { ...windFrom, key: 'windFromRad', perUnit: 180 / Math.PI })
    // Nought is calm; from the north is 360.
    if (from > 0) putAt(grid, 'windFromRad', atMs, from)
    for (const field of totals) putAt(grid, field.key, startMs + before(hour, 1) * hourMs, figure(row, field))
  }
  for (const { row, hour } of rows) {
    const fell = rainOf(row, figure)
    if (fell === undefined) continue
    if (fell.seen) seen++
    for (let by = fell.hours; by >= 1; by--) {
      const at = before(hour, by)
      // A total over many hours does not unsay what single hours know.
      if (fell.hours === 1 || Number.isNaN(grid.columns.rainMm?.[at] ?? Number.NaN))
        putAt(grid, 'rainMm', startMs + at * hourMs, fell.mm / fell.hours)
    }
  }
  if (seen > 0)
    addProblem(notes, {
      code: 'intake.rainSeenOnly',
      severity: 'note',
      data: { count: seen, rainMm: seenRainMm },
    })
}

type FigureOf = (row: EpwRow, field: Field) => number

/** A figure in the unit of the series; NaN when it is missing. */
const figureOf =
  (errors: ProblemList): FigureOf =>
  ({ fields, line }, { at, missing, perUnit, most, key }) => {
    const written = fields[at]
    if (written === undefined || written.trim() === '') return Number.NaN
    const value = Number(written)
    if (Number.isNaN(value)) {
      const data = { found: oneLine(written, 40), name: key }
      addProblem(errors, { code: 'intake.numberNotRead', severity: 'error', line, column: at + 1, data })
    }
    if (value >= missing) return Number.NaN
    return Math.min(value / perUnit, most ?? Number.POSITIVE_INFINITY)
  }

/** Rain that ended at the stamp of a row; undefined when nobody measured or watched. */
function rainOf(
  row: EpwRow,
  figure: FigureOf,
): { readonly mm: number; readonly hours: number; readonly seen: boolean } | undefined {
  const mm = figure(row, { at: rain.at, key: 'rainMm', missing: rain.missing, perUnit: 1 })
  if (!Number.isNaN(mm)) {
    const period = Number(row.fields[rain.periodAt])
    const hours = Number.isInteger(period) && period >= 1 && period <= rain.longestHours ? period : 1
    return { mm, hours, seen: false }
  }
  const codes = row.fields[observed.codes]?.trim().padStart(9, '0') ?? ''
  if (Number(row.fields[observed.at]) !== 0 || !/^\d{9}$/.test(codes)) return undefined
  // SOURCE: the same: of nine digits the second tells of rain, the third of drizzle; 9 is none.
  const falls = codes[1] !== '9' || codes[2] !== '9'
  return { mm: falls ? seenRainMm : 0, hours: 1, seen: falls }
}
