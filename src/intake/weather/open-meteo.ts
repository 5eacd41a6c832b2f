/** The forecast of Open-Meteo: lists side by side, local time with one offset for all. */
import { hourMs } from '#core/climate'
import { addProblem, type ProblemList, problemList, shown } from '../problem.ts'
import { isMap, type JsonMap, listIn, mapIn, numberOf, tellTwice, textIn } from './json-file.ts'
import { columnOf } from './weather-columns.ts'
import { type ColumnKey, gridColumn, gridOver, mostHours, putAt, seriesOfGrid } from './weather-grid.ts'
import type { WeatherRead } from './weather-read.ts'
import { isInReach, readTime } from './weather-time.ts'
import { unitStep } from './weather-units.ts'

/** SOURCE: the service's own description of its variables, older names included. */
const variables: readonly (readonly [ColumnKey, readonly string[]])[] = [
  ['airC', ['temperature_2m']],
  ['humidityShare', ['relative_humidity_2m', 'relativehumidity_2m']],
  ['dewC', ['dew_point_2m', 'dewpoint_2m']],
  ['windMps', ['wind_speed_10m', 'windspeed_10m']],
  ['windFromRad', ['wind_direction_10m', 'winddirection_10m']],
  ['cloudShare', ['cloud_cover', 'cloudcover']],
  // These are of the hour before the stamp.
  ['rainMm', ['precipitation']],
  ['rainChanceShare', ['precipitation_probability']],
  ['sunWm2', ['shortwave_radiation']],
  ['sunBeamWm2', ['direct_normal_irradiance']],
  ['sunDiffuseWm2', ['diffuse_radiation']],
]

export const looksLikeOpenMeteo = (file: JsonMap): boolean =>
  isMap(file.hourly) && isMap(file.hourly_units) && Array.isArray(file.hourly.time)

export function readOpenMeteo(file: JsonMap): WeatherRead {
  const errors = problemList()
  const hourly = mapIn(file, 'hourly')
  const units = mapIn(file, 'hourly_units')
  const moments = momentsOf(file, listIn(hourly, 'time'), errors)
  const notes = problemList()
  withoutDoubles(moments, hourly, { errors, notes })
  const known = moments.filter((atMs) => !Number.isNaN(atMs))
  const grid = gridOver(known, errors)
  if ('ok' in grid) return grid
  for (const atMs of known) grid.told[(atMs - grid.startMs) / hourMs] = 1
  for (const [key, names] of variables) {
    const name = names.find((one) => Array.isArray(hourly[one]))
    if (name === undefined) continue
    const values = listIn(hourly, name)
    const { quantity, perUnit, overHour } = columnOf(key)
    const unit = unitStep(quantity, textIn(units, name))
    if (values.length !== moments.length || unit === undefined) {
      addProblem(
        errors,
        faultOf({
          name,
          unit: textIn(units, name),
          hasUnit: unit !== undefined,
          found: values.length,
          expected: moments.length,
        }),
      )
      continue
    }
    gridColumn(grid, key)
    values.forEach((value, index) => {
      const figure = numberOf(value, `hourly.${name}[${index}]`, errors)
      const atMs = moments[index]! - (overHour ? hourMs : 0)
      putAt(grid, key, atMs, (figure * unit.factor + unit.step) / perUnit)
    })
  }
  return seriesOfGrid(grid, {
    source: 'Open-Meteo forecast',
    licence: 'CC BY 4.0, Open-Meteo and the weather services named there',
    errors,
    notes,
  })
}

/** An hour that stands there again is taken once: its second moment becomes none. */
function withoutDoubles(
  moments: number[],
  hourly: JsonMap,
  lists: { readonly errors: ProblemList; readonly notes: ProblemList },
): void {
  const seen = new Map<number, number>()
  const given = Object.values(hourly).filter((list): list is unknown[] => Array.isArray(list))
  moments.forEach((atMs, index) => {
    const first = seen.get(atMs)
    if (Number.isNaN(atMs)) return
    if (first === undefined) {
      seen.set(atMs, index)
      return
    }
    const same = given.every((list) => JSON.stringify(list[index]) === JSON.stringify(list[first]))
    tellTwice({ at: `hourly.time[${index}]`, atMs, same }, lists)
    moments[index] = Number.NaN
  })
}

function faultOf(of: {
  readonly name: string
  readonly unit: string
  readonly hasUnit: boolean
  readonly found: number
  readonly expected: number
}) {
  const { name, unit, hasUnit, found, expected } = of
  if (!hasUnit)
    return { code: 'intake.unitUnknown', severity: 'error', data: { name, found: shown(unit) } } as const
  return { code: 'intake.jsonLengths', severity: 'error', data: { name, found, expected } } as const
}

/** Moments in UTC, NaN where one does not read; the clock of the file runs at one offset throughout. */
function momentsOf(file: JsonMap, times: readonly unknown[], errors: ProblemList): number[] {
  const offset = file.utc_offset_seconds
  if (typeof offset !== 'number' || !Number.isInteger(offset) || Math.abs(offset) > 14 * 3600) {
    addProblem(errors, { code: 'intake.jsonOffset', severity: 'error', data: { at: 'utc_offset_seconds' } })
    return []
  }
  let firstMs: number | undefined
  return times.slice(0, mostHours).map((written, index) => {
    const atMs = momentOf(written, offset)
    firstMs ??= atMs
    if (atMs !== undefined && (atMs - firstMs!) % hourMs === 0) return atMs
    const found = shown(typeof written === 'string' ? written : (JSON.stringify(written) ?? ''))
    addProblem(errors, {
      code: 'intake.jsonTime',
      severity: 'error',
      data: { at: `hourly.time[${index}]`, found },
    })
    return Number.NaN
  })
}

/** Local text without an offset, or seconds since 1970 UTC. */
function momentOf(written: unknown, offsetSeconds: number): number | undefined {
  if (typeof written === 'number' && Number.isInteger(written) && written > 0 && written < 7e9)
    return written * 1000
  const time = readTime(typeof written === 'string' ? `${written}Z` : '')
  const atMs = time.ok ? time.atMs - offsetSeconds * 1000 : Number.NaN
  return isInReach(atMs) ? atMs : undefined
}
