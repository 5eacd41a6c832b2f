/** Weather from a table of any make: a shed logger's, or one that somebody kept. What it does not say is asked for. */
import { hourMs } from '#core/climate'
import { addProblem, oneLine, type Problem, type ProblemList, problemList, shown } from '../../problem.ts'
import { type WeatherColumn, weatherColumns } from '../weather-columns.ts'
import { gridColumn, mostHours, refuseWeather, seriesOfGrid, weatherGrid } from '../weather-grid.ts'
import { mostRemark } from '../weather-header.ts'
import type { WeatherRead } from '../weather-read.ts'
import { linesOf, mostLineLength, splitLine } from '../weather-rows.ts'
import { type UnitStep, unitStep } from '../weather-units.ts'
import { type LocalClock, localClock } from './local-clock.ts'
import { type LookedAt, timeText } from './look-at-table.ts'
import type { DateOrder, TableHints } from './table-mapping.ts'
import { readNumber } from './table-numbers.ts'
import { asUtc, readWritten } from './table-time.ts'
import { type TableReading, thinToHours } from './thin-to-hours.ts'

/** A year of readings every five minutes, and half as many again. */
const mostReadings = 160_000

/** A column that is used: where it stands and how its figures go over into the series. */
export type UsedColumn = { readonly column: WeatherColumn; readonly at: number; readonly step: UnitStep }

/**
 * Reads a table by what it says of itself and what a person says of it.
 * Rain, chance and sun are of the time before their reading; of the others the reading nearest to each full hour counts.
 * @returns the series, or what has to be said first, with the look of the table beside it.
 */
export function readTable(text: string, looked: LookedAt, hints: TableHints): WeatherRead {
  const { look } = looked
  const questions = problemList()
  const used = usedColumns(looked, questions)
  const zone = hints.zone ?? ''
  const clock = look.zoned ? undefined : localClock(zone)
  const ask = (code: string, data: Problem['data'] = {}) =>
    addProblem(questions, { code, severity: 'error', data })
  if (!look.zoned && zone === '') ask('intake.zoneAsked')
  else if (!look.zoned && clock === undefined) ask('intake.zoneUnknown', { found: shown(zone) })
  const written = look.samples[0] ? timeText(look.samples[0], look.columns) : ''
  if (look.dates === undefined && written !== '') ask('intake.datesAsked', { found: shown(written) })
  if (questions.count > 0) return { ok: false, problems: questions.first, table: look }
  const errors = problemList()
  const read = readRows(text, { looked, used, order: look.dates ?? 'ymd', errors })
  if (read === undefined) return refuseWeather('intake.tooManyRows', { most: mostReadings })
  if (read.length === 0 && errors.count === 0) return refuseWeather('intake.noRows')
  const placed = placeInTime(read, { clock, zone, errors })
  const result = series(placed, { used, looked, errors, zone: look.zoned ? '' : zone })
  return result.ok ? result : { ...result, table: look }
}

function usedColumns({ look }: LookedAt, questions: ProblemList): readonly UsedColumn[] {
  const used = weatherColumns.flatMap((column): readonly UsedColumn[] => {
    const at = look.columns.findIndex(({ to }) => to === column.name)
    if (at < 0) return []
    const { name, unit } = look.columns[at]!
    const step = unitStep(column.quantity, unit)
    if (step !== undefined && (unit !== '' || column.quantity === 'angle')) return [{ column, at, step }]
    const code = unit === '' ? 'intake.unitAsked' : 'intake.unitNotOfColumn'
    addProblem(questions, {
      code,
      severity: 'error',
      column: at + 1,
      data: { name: shown(name), found: shown(unit), as: column.name },
    })
    return []
  })
  const has = (name: string) => look.columns.some(({ to }) => to === name)
  const lacks = [
    ...(has('airC') ? [] : ['airC']),
    ...(has('humidityPct') || has('dewC') ? [] : ['humidityPct']),
    ...(has('time') || (has('date') && has('clock')) ? [] : ['time']),
  ]
  for (const as of lacks)
    addProblem(questions, { code: 'intake.columnAsked', severity: 'error', data: { as } })
  return used
}

type LocalReading = Omit<TableReading, 'atMs'> & {
  readonly localMs: number
  readonly offset: number | undefined
}

function readRows(
  text: string,
  how: {
    readonly looked: LookedAt
    readonly used: readonly UsedColumn[]
    readonly order: DateOrder
    readonly errors: ProblemList
  },
): readonly LocalReading[] | undefined {
  const { head, look } = how.looked
  const readings: LocalReading[] = []
  for (const { line, text: row, last } of linesOf(text)) {
    if (line <= head.line || row.trim() === '') continue
    if (readings.length + how.errors.count >= mostReadings) return undefined
    const fault = (code: string, data: Problem['data'], at?: number) =>
      addProblem(how.errors, {
        code,
        severity: 'error',
        line,
        ...(at === undefined ? {} : { column: at + 1 }),
        data,
      })
    const fields = fieldsOf(row, { head, last, fault })
    if (fields === undefined) continue
    const written = timeText(fields, look.columns)
    const time = readWritten(written)
    const localMs = time && asUtc(time, how.order)
    if (time === undefined || localMs === undefined) {
      fault('intake.dateNotRead', { found: shown(written) })
      continue
    }
    const figures = how.used.map(({ column, at, step }) => {
      const number = readNumber(fields[at] ?? '')
      if (number === undefined)
        fault(
          'intake.numberNotRead',
          { found: shown(fields[at] ?? ''), name: shown(look.columns[at]!.name) },
          at,
        )
      return ((number?.value ?? Number.NaN) * step.factor + step.step) / column.perUnit
    })
    readings.push({ line, localMs, offset: time.offset, figures })
  }
  return readings
}

function fieldsOf(
  row: string,
  {
    head,
    last,
    fault,
  }: {
    readonly head: LookedAt['head']
    readonly last: boolean
    readonly fault: (code: string, data: Problem['data']) => void
  },
): readonly string[] | undefined {
  if (row.length > mostLineLength) {
    fault('intake.lineTooLong', { length: row.length, most: mostLineLength })
    return undefined
  }
  const fields = splitLine(row, head.delimiter)
  const expected = head.columns.length
  if (fields === undefined) fault('intake.quotesOpen', {})
  // Some loggers end each line, but not the head, with a delimiter.
  else if (
    fields.length === expected ||
    (fields.length > expected && fields.slice(expected).every((one) => one.trim() === ''))
  )
    return fields
  else if (last && fields.length < expected) fault('intake.endsMidRow', { found: fields.length, expected })
  else if (fields.length > expected && head.delimiter === ',')
    fault('intake.commasClash', { found: fields.length, expected })
  else fault('intake.fieldCount', { found: fields.length, expected })
  return undefined
}

/** Readings in order of time; a file that begins with the newest is turned round first. */
function placeInTime(
  read: readonly LocalReading[],
  {
    clock,
    zone,
    errors,
  }: { readonly clock: LocalClock | undefined; readonly zone: string; readonly errors: ProblemList },
): readonly TableReading[] {
  const falling = read.length > 1 && read[0]!.localMs > read.at(-1)!.localMs
  let afterMs = Number.NEGATIVE_INFINITY
  const placed = (falling ? [...read].reverse() : read).flatMap(({ line, localMs, offset, figures }) => {
    const atMs = offset === undefined ? clock?.toUtc(localMs, afterMs) : localMs - offset * 60_000
    if (atMs === undefined) {
      const found = new Date(localMs).toISOString().slice(0, 16).replace('T', ' ')
      addProblem(errors, {
        code: 'intake.clockSkips',
        severity: 'error',
        line,
        data: { found, zone: shown(zone) },
      })
      return []
    }
    afterMs = atMs
    return [{ line, atMs, figures }]
  })
  return placed.sort((a, b) => a.atMs - b.atMs || a.line - b.line)
}

function series(
  readings: readonly TableReading[],
  how: {
    readonly used: readonly UsedColumn[]
    readonly looked: LookedAt
    readonly errors: ProblemList
    readonly zone: string
  },
): WeatherRead {
  const { used, errors, zone, looked } = how
  const notes = problemList()
  const single = withoutDoubles(readings, { errors, notes })
  const firstMs = single[0]?.atMs ?? 0
  const lastMs = single.at(-1)?.atMs ?? 0
  if ((lastMs - firstMs) / hourMs > mostHours)
    return refuseWeather('intake.spanTooLong', { fromAtMs: firstMs, toAtMs: lastMs, mostHours })
  const thinned = thinToHours(
    single,
    used.map(({ column }) => gatheringOf(column)),
  )
  const grid = weatherGrid(thinned.startMs, thinned.hours)
  grid.told.set(thinned.told)
  used.forEach(({ column }, index) => {
    gridColumn(grid, column.key).set(thinned.columns[index]!)
  })
  noteReading(single, { ...how, hours: thinned.told.reduce((all, one) => all + one, 0), notes })
  const names = looked.look.columns.filter(({ to }) => to !== 'ignore').map(({ name }) => name)
  return seriesOfGrid(grid, {
    source: oneLine(`table with ${names.join(', ')}${zone === '' ? '' : `; clock of ${zone}`}`, mostRemark),
    licence: '',
    errors,
    notes,
  })
}

const gatheringOf = ({ overHour, quantity }: WeatherColumn): 'nearest' | 'sum' | 'mean' =>
  !overHour ? 'nearest' : quantity === 'depth' ? 'sum' : 'mean'

function noteReading(
  readings: readonly TableReading[],
  how: {
    readonly used: readonly UsedColumn[]
    readonly looked: LookedAt
    readonly zone: string
    readonly hours: number
    readonly notes: ProblemList
  },
): void {
  const { look } = how.looked
  const note = (code: string, data: Problem['data']) =>
    addProblem(how.notes, { code, severity: 'note', data })
  const taken = how.used.map(
    ({ column, at }) => `${shown(look.columns[at]!.name)} = ${column.name}, ${look.columns[at]!.unit}`,
  )
  note('intake.columnsTaken', {
    found: taken.join('; '),
    zone: how.zone === '' ? 'none' : shown(how.zone),
    dates: look.dates ?? 'none',
  })
  const ignored = look.columns.filter(({ to }) => to === 'ignore').map(({ name }) => shown(name))
  if (ignored.length > 0) note('intake.columnsIgnored', { found: oneLine(ignored.join(', '), 200) })
  if (how.used.some(({ column }) => column.overHour)) note('intake.totalsBefore', {})
  if (readings.length > how.hours) note('intake.thinned', { count: readings.length, hours: how.hours })
}

function withoutDoubles(
  sorted: readonly TableReading[],
  lists: { readonly errors: ProblemList; readonly notes: ProblemList },
): readonly TableReading[] {
  const single: TableReading[] = []
  for (const reading of sorted) {
    const kept = single.at(-1)
    if (kept?.atMs !== reading.atMs) {
      single.push(reading)
      continue
    }
    const same = reading.figures.every((figure, index) => Object.is(figure, kept.figures[index]))
    const data = { foundAtMs: reading.atMs, firstLine: kept.line }
    if (same)
      addProblem(lists.notes, { code: 'intake.hourRepeated', severity: 'note', line: reading.line, data })
    else
      addProblem(lists.errors, { code: 'intake.readingTwice', severity: 'error', line: reading.line, data })
  }
  return single
}
