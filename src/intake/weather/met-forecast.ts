/**
 * The location forecast of MET Norway: figures at a moment, and rain for the hours after it. It begins hour by hour and
 * goes on in steps of six.
 */
import { hourMs } from '#core/climate'
import { addProblem, oneLine, type ProblemList, problemList, shown } from '../problem.ts'
import { isMap, type JsonMap, listIn, mapIn, numberOf, tellTwice, textIn } from './json-file.ts'
import { columnOf } from './weather-columns.ts'
import { type ColumnKey, gridOver, mostHours, putAt, seriesOfGrid, type WeatherGrid } from './weather-grid.ts'
import { mostRemark } from './weather-header.ts'
import type { WeatherRead } from './weather-read.ts'
import { readTime } from './weather-time.ts'
import { type UnitStep, unitStep } from './weather-units.ts'

/** Steps longer than this leave hours of which the forecast does not speak. */
const longestStepHours = 12

/** SOURCE: the service's data model. */
const instants: readonly (readonly [string, ColumnKey])[] = [
  ['air_temperature', 'airC'],
  ['relative_humidity', 'humidityShare'],
  ['dew_point_temperature', 'dewC'],
  ['wind_speed', 'windMps'],
  ['wind_from_direction', 'windFromRad'],
  ['cloud_area_fraction', 'cloudShare'],
]
const spans = [1, 6, 12] as const

export const looksLikeMet = (file: JsonMap): boolean => Array.isArray(mapIn(file, 'properties').timeseries)

type Moment = { readonly atMs: number; readonly data: JsonMap; readonly at: string }

export function readMet(file: JsonMap): WeatherRead {
  const errors = problemList()
  const notes = problemList()
  const properties = mapIn(file, 'properties')
  const meta = mapIn(properties, 'meta')
  const moments = momentsOf(properties, { errors, notes })
  const grid = gridOver(
    moments.map(({ atMs }) => atMs),
    errors,
  )
  if ('ok' in grid) return grid
  const units = unitsOf(mapIn(meta, 'units'), errors)
  tellHours(grid, moments, notes)
  for (const moment of moments) fillInstant(grid, moment, { units, errors })
  for (const moment of moments) {
    // Of the spans that begin at a moment the shortest knows best.
    const span = spans.find((hours) => isMap(mapIn(moment.data, `next_${hours}_hours`).details))
    if (span !== undefined) fillSpan(grid, moment, { span, units, errors })
  }
  return seriesOfGrid(grid, {
    source: oneLine(`MET Norway, location forecast, ${textIn(meta, 'updated_at')}`, mostRemark),
    licence: 'CC BY 4.0, Norwegian Meteorological Institute',
    errors,
    notes,
  })
}

/** In order of time, one a moment. */
function momentsOf(
  properties: JsonMap,
  lists: { readonly errors: ProblemList; readonly notes: ProblemList },
): readonly Moment[] {
  const { errors } = lists
  const read = listIn(properties, 'timeseries')
    .slice(0, mostHours)
    .flatMap((entry, index): readonly Moment[] => {
      const at = `properties.timeseries[${index}]`
      const written = isMap(entry) ? textIn(entry, 'time') : ''
      const time = readTime(written)
      if (isMap(entry) && time.ok && time.atMs % hourMs === 0)
        return [{ atMs: time.atMs, data: mapIn(entry, 'data'), at: `${at}.data` }]
      addProblem(errors, {
        code: 'intake.jsonTime',
        severity: 'error',
        data: { at: `${at}.time`, found: shown(written) },
      })
      return []
    })
  const sorted = [...read].sort((a, b) => a.atMs - b.atMs)
  const single: Moment[] = []
  for (const moment of sorted) {
    const kept = single.at(-1)
    if (kept?.atMs !== moment.atMs) single.push(moment)
    else {
      const same = JSON.stringify(kept.data) === JSON.stringify(moment.data)
      tellTwice({ at: moment.at.replace(/\.data$/, ''), atMs: moment.atMs, same }, lists)
    }
  }
  return single
}

type Units = ReadonlyMap<string, UnitStep>

function unitsOf(written: JsonMap, errors: ProblemList): Units {
  const named = [
    ...instants,
    ['precipitation_amount', 'rainMm'],
    ['probability_of_precipitation', 'rainChanceShare'],
  ] as const
  return new Map(
    named.flatMap(([name, key]) => {
      const unit = textIn(written, name)
      const step = unitStep(columnOf(key).quantity, unit)
      if (step === undefined && unit !== '')
        addProblem(errors, {
          code: 'intake.unitUnknown',
          severity: 'error',
          data: { name, found: shown(unit) },
        })
      return step === undefined ? [] : [[name, step] as const]
    }),
  )
}

/** Between two moments a few hours apart the forecast speaks of the hours, though not of each. */
function tellHours(grid: WeatherGrid, moments: readonly Moment[], notes: ProblemList): void {
  let wideFrom: number | undefined
  let widest = 1
  moments.forEach(({ atMs }, index) => {
    const next = moments[index + 1]?.atMs ?? atMs + hourMs
    const step = (next - atMs) / hourMs
    const first = (atMs - grid.startMs) / hourMs
    grid.told.fill(1, first, first + (step > longestStepHours ? 1 : step))
    if (step > 1 && step <= longestStepHours) {
      wideFrom ??= atMs
      widest = Math.max(widest, step)
    }
  })
  if (wideFrom === undefined) return
  addProblem(notes, {
    code: 'intake.forecastThins',
    severity: 'note',
    data: { fromAtMs: wideFrom, stepHours: widest },
  })
}

type How = { readonly units: Units; readonly errors: ProblemList }

function fillInstant(grid: WeatherGrid, { atMs, data, at }: Moment, how: How): void {
  const details = mapIn(mapIn(data, 'instant'), 'details')
  for (const [name, key] of instants)
    putAt(grid, key, atMs, figureOf(details, { name, key, at: `${at}.instant.details.${name}`, ...how }))
}

function fillSpan(grid: WeatherGrid, { atMs, data, at }: Moment, how: How & { readonly span: number }): void {
  const { span } = how
  const name = `next_${span}_hours`
  const details = mapIn(mapIn(data, name), 'details')
  const place = `${at}.${name}.details`
  const amount = { name: 'precipitation_amount', key: 'rainMm', ...how } as const
  const chance = { name: 'probability_of_precipitation', key: 'rainChanceShare', ...how } as const
  const rainMm = figureOf(details, { ...amount, at: `${place}.${amount.name}` }) / span
  const rainChanceShare = figureOf(details, { ...chance, at: `${place}.${chance.name}` })
  for (let hour = 0; hour < span; hour++) {
    fillEmpty(grid, 'rainMm', atMs + hour * hourMs, rainMm)
    fillEmpty(grid, 'rainChanceShare', atMs + hour * hourMs, rainChanceShare)
  }
}

function fillEmpty(grid: WeatherGrid, key: ColumnKey, atMs: number, value: number): void {
  const there = grid.columns[key]?.[(atMs - grid.startMs) / hourMs]
  if (there === undefined || Number.isNaN(there)) putAt(grid, key, atMs, value)
}

function figureOf(
  details: JsonMap,
  {
    name,
    key,
    at,
    units,
    errors,
  }: How & { readonly name: string; readonly key: ColumnKey; readonly at: string },
): number {
  const step = units.get(name)
  const value = numberOf(details[name], at, errors)
  return step === undefined ? Number.NaN : (value * step.factor + step.step) / columnOf(key).perUnit
}
