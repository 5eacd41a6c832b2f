/**
 * EPW, a year of hours at a station: eight lines of head, then 35 fields an hour. A whole year is taken as typical,
 * for its months are as a rule from different years.
 */
import { hourMs } from '#core/climate'
import { addProblem, oneLine, type ProblemList, problemList } from '../problem.ts'
import { type EpwRow, epwFields, readEpwRow } from './epw-row.ts'
import {
  type GridOrigin,
  gridColumn,
  refuseWeather,
  seriesOfGrid,
  type WeatherGrid,
  weatherGrid,
} from './weather-grid.ts'
import { mostRemark, spotAt } from './weather-header.ts'
import type { WeatherRead } from './weather-read.ts'
import { linesOf, mostLineLength } from './weather-rows.ts'

const headLines = 8
const hoursOfYear = 8760
/** A year of 365 days that stands for all: the hours of a typical year begin in it. */
const nominalYear = 2001
const mostRowsRead = 10 * hoursOfYear

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

type Station = Pick<GridOrigin, 'source' | 'spot'> & { readonly offsetHours: number }

/** The offset from UTC and the words for the source; undefined when the head is none. */
function readHead(head: readonly string[]): Station | undefined {
  const [city = '', state = '', country = '', kind = '', number = '', north = '', east = '', offset = ''] = (
    head[0] ?? ''
  )
    .split(',')
    .slice(1)
    .map((field) => field.trim())
  const offsetHours = offset === '' ? Number.NaN : Number(offset)
  if (!(Math.abs(offsetHours) <= 14) || !Number.isInteger(offsetHours * 4)) return undefined
  const degrees = (text: string) => (text === '' ? Number.NaN : Number(text))
  const comment = /^COMMENTS 1,(.*)$/i.exec(head[5] ?? '')?.[1] ?? ''
  const named = [city, state, country, kind, number].filter((field) => field !== '' && field !== '-')
  return {
    offsetHours,
    ...spotAt(degrees(north), degrees(east)),
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
function typicalYear(rows: readonly EpwRow[], { offsetHours, ...station }: Station): WeatherRead {
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
  fill(grid, stamped, { ring: true, notes })
  return seriesOfGrid(grid, { ...station, licence: '', typicalYear: true, errors, notes })
}

/** Rows of one stretch of real hours. */
function partYear(rows: readonly EpwRow[], { offsetHours, ...station }: Station): WeatherRead {
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
  fill(grid, stamped, { ring: false, notes })
  return seriesOfGrid(grid, { ...station, licence: '', errors, notes })
}

function noteTwice(
  row: EpwRow,
  { first, atMs, errors }: { readonly first: number; readonly atMs: number; readonly errors: ProblemList },
): void {
  const data = { foundAtMs: atMs, firstLine: first }
  addProblem(errors, { code: 'intake.hourTwice', severity: 'error', line: row.line, data })
}

type Stamped = { readonly row: EpwRow; readonly hour: number }

type Filling = { readonly ring: boolean; readonly notes: ProblemList }

/** Of `epwFields` the first are measured at the stamp, the others fell in the hour before it; the last is the rain. */
const firstTotal = epwFields.findIndex(({ key }) => key === 'skyHeatWm2')
const rainAt = epwFields.findIndex(({ key }) => key === 'rainMm')

/** An hour of the grid begins at the stamp of its row: totals, which end there, belong to the hour before. */
function fill(grid: WeatherGrid, rows: readonly Stamped[], { ring, notes }: Filling): void {
  const { hours } = grid
  const before = (hour: number, by: number) => (ring ? (hour - by + hours) % hours : hour - by)
  for (const { hour } of rows) grid.told[hour] = 1
  epwFields.forEach(({ key }, index) => {
    if (index === rainAt || rows.every(({ row }) => Number.isNaN(row.figures[index]!))) return
    const column = gridColumn(grid, key)
    for (const { row, hour } of rows) {
      const at = index < firstTotal ? hour : before(hour, 1)
      const value = row.figures[index]!
      // Nought is calm; from the north is 360.
      if (at >= 0 && !(key === 'windFromRad' && value === 0)) column[at] = value
    }
  })
  fillRain(grid, rows, { before, notes })
}

function fillRain(
  grid: WeatherGrid,
  rows: readonly Stamped[],
  { before, notes }: { readonly before: (hour: number, by: number) => number; readonly notes: ProblemList },
): void {
  let seen = 0
  for (const { row, hour } of rows) {
    const mm = row.figures[rainAt]!
    const measured = !Number.isNaN(mm)
    if (!measured && row.sawRain === undefined) continue
    if (!measured && row.sawRain) seen++
    const column = gridColumn(grid, 'rainMm')
    const over = measured ? row.rainHours : 1
    for (let by = over; by >= 1; by--) {
      const at = before(hour, by)
      // A total over many hours does not unsay what single hours know.
      if (at < 0 || (over > 1 && !Number.isNaN(column[at]!))) continue
      column[at] = (measured ? mm : row.sawRain ? seenRainMm : 0) / over
    }
  }
  if (seen > 0)
    addProblem(notes, {
      code: 'intake.rainSeenOnly',
      severity: 'note',
      data: { count: seen, rainMm: seenRainMm },
    })
}
