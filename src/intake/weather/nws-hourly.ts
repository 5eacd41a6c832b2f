/** The hourly forecast of the National Weather Service: one entry an hour, each figure in a form of its own. */
import { hourMs } from '#core/climate'
import { addProblem, oneLine, type ProblemList, problemList, shown } from '../problem.ts'
import { isMap, type JsonMap, listIn, mapIn, numberOf, tellTwice, textIn } from './json-file.ts'
import { nwsLicence } from './nws-grid.ts'
import { columnOf } from './weather-columns.ts'
import { type ColumnKey, gridOver, mostHours, putAt, seriesOfGrid } from './weather-grid.ts'
import { mostRemark } from './weather-header.ts'
import type { WeatherRead } from './weather-read.ts'
import { readTime } from './weather-time.ts'
import { unitStep } from './weather-units.ts'

export const looksLikeNwsHourly = (file: JsonMap): boolean => {
  const [first] = listIn(mapIn(file, 'properties'), 'periods')
  return isMap(first) && typeof first.startTime === 'string'
}

export function readNwsHourly(file: JsonMap): WeatherRead {
  const errors = problemList()
  const properties = mapIn(file, 'properties')
  const periods = listIn(properties, 'periods').slice(0, mostHours)
  const timed = periods.flatMap((period, index) => {
    const at = `properties.periods[${index}]`
    const time = readTime(isMap(period) ? textIn(period, 'startTime') : '')
    if (isMap(period) && time.ok && time.atMs % hourMs === 0) return [{ period, at, atMs: time.atMs }]
    const data = { at: `${at}.startTime`, found: shown(isMap(period) ? textIn(period, 'startTime') : '') }
    addProblem(errors, { code: 'intake.jsonTime', severity: 'error', data })
    return []
  })
  const grid = gridOver(
    timed.map(({ atMs }) => atMs),
    errors,
  )
  if ('ok' in grid) return grid
  const notes = problemList()
  const seen = new Map<number, JsonMap>()
  for (const { period, at, atMs } of timed) {
    const first = seen.get(atMs)
    if (first !== undefined) {
      tellTwice({ at, atMs, same: figuresAsText(first) === figuresAsText(period) }, { errors, notes })
      continue
    }
    seen.set(atMs, period)
    grid.told[(atMs - grid.startMs) / hourMs] = 1
    for (const { key, value } of figuresOf(period, at, errors)) putAt(grid, key, atMs, value)
  }
  return seriesOfGrid(grid, {
    source: oneLine(
      `National Weather Service, hourly forecast, ${textIn(properties, 'updateTime')}`,
      mostRemark,
    ),
    licence: nwsLicence,
    errors,
    notes,
  })
}

/** Entries are numbered, so that no two are alike as they stand. */
const figuresAsText = (period: JsonMap): string => JSON.stringify({ ...period, number: 0 })

type Figure = { readonly key: ColumnKey; readonly value: number }

/** Rain is given as a chance alone: how much falls is unknown. */
function figuresOf(period: JsonMap, at: string, errors: ProblemList): readonly Figure[] {
  const given: readonly (readonly [ColumnKey, string, unknown, string])[] = [
    ['airC', 'temperature', period.temperature, textIn(period, 'temperatureUnit')],
    ...measured(period, 'dewC', 'dewpoint'),
    ...measured(period, 'humidityShare', 'relativeHumidity'),
    ...measured(period, 'rainChanceShare', 'probabilityOfPrecipitation'),
  ]
  const figures = given.map(([key, name, written, unit]) => {
    const { quantity, perUnit } = columnOf(key)
    const step = unitStep(quantity, unit)
    const value = numberOf(written, `${at}.${name}`, errors)
    if (step === undefined && !Number.isNaN(value))
      addProblem(errors, {
        code: 'intake.unitUnknown',
        severity: 'error',
        data: { name, found: shown(unit) },
      })
    return { key, value: step === undefined ? Number.NaN : (value * step.factor + step.step) / perUnit }
  })
  return [...figures, ...windOf(period, at, errors)]
}

function measured(
  period: JsonMap,
  key: ColumnKey,
  name: string,
): readonly (readonly [ColumnKey, string, unknown, string])[] {
  const { value, unitCode } = mapIn(period, name)
  return typeof unitCode === 'string' ? [[key, name, value, unitCode]] : []
}

const points = [
  'N',
  'NNE',
  'NE',
  'ENE',
  'E',
  'ESE',
  'SE',
  'SSE',
  'S',
  'SSW',
  'SW',
  'WSW',
  'W',
  'WNW',
  'NW',
  'NNW',
]

/** `5 to 10 mph` from `SSW`: the stronger figure counts. */
function windOf(period: JsonMap, at: string, errors: ProblemList): readonly Figure[] {
  const written = textIn(period, 'windSpeed')
  const parts = /^(?:\d{1,3} to )?(\d{1,3}) ([a-z/]{1,6})$/i.exec(written)
  const step = parts === null ? undefined : unitStep('speed', parts[2]!)
  if (written !== '' && step === undefined) {
    const data = { at: `${at}.windSpeed`, found: shown(written) }
    addProblem(errors, { code: 'intake.jsonNumber', severity: 'error', data })
  }
  const point = points.indexOf(textIn(period, 'windDirection'))
  return [
    { key: 'windMps', value: step === undefined ? Number.NaN : Number(parts![1]) * step.factor },
    // From the north is a whole turn, as nought is calm elsewhere.
    { key: 'windFromRad', value: point < 0 ? Number.NaN : ((point === 0 ? 16 : point) * Math.PI) / 8 },
  ]
}
