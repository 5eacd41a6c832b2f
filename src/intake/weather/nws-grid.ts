/**
 * The gridpoint forecast of the National Weather Service: a list of intervals for each quantity, equal hours merged
 * into one.
 */
import { hourMs } from '#core/climate'
import { addProblem, oneLine, type ProblemList, problemList, shown } from '../problem.ts'
import { isMap, type JsonMap, listIn, mapIn, numberOf, tellTwice, textIn } from './json-file.ts'
import { columnOf } from './weather-columns.ts'
import { type ColumnKey, gridOver, putAt, seriesOfGrid } from './weather-grid.ts'
import { mostRemark } from './weather-header.ts'
import type { WeatherRead } from './weather-read.ts'
import { mostRows } from './weather-rows.ts'
import { readTime } from './weather-time.ts'
import { type UnitStep, unitStep } from './weather-units.ts'

export const nwsLicence = 'public domain (work of the United States government)'

/** SOURCE: documentation of the service's grid points; the wind is the strongest sustained one. */
const layers: readonly { readonly layer: string; readonly key: ColumnKey; readonly total: boolean }[] = [
  { layer: 'temperature', key: 'airC', total: false },
  { layer: 'dewpoint', key: 'dewC', total: false },
  { layer: 'relativeHumidity', key: 'humidityShare', total: false },
  { layer: 'windSpeed', key: 'windMps', total: false },
  { layer: 'windDirection', key: 'windFromRad', total: false },
  { layer: 'skyCover', key: 'cloudShare', total: false },
  { layer: 'probabilityOfPrecipitation', key: 'rainChanceShare', total: false },
  { layer: 'quantitativePrecipitation', key: 'rainMm', total: true },
]

export const looksLikeNwsGrid = (file: JsonMap): boolean => {
  const temperature = mapIn(mapIn(file, 'properties'), 'temperature')
  return Array.isArray(temperature.values)
}

type Interval = {
  readonly at: string
  readonly fromMs: number
  readonly hours: number
  readonly value: number
}

export function readNwsGrid(file: JsonMap): WeatherRead {
  const errors = problemList()
  const properties = mapIn(file, 'properties')
  const read = layers.map((layer) => ({ ...layer, intervals: intervalsOf(properties, layer, errors) }))
  const air = read[0]!.intervals
  const grid = gridOver(
    air.flatMap(({ fromMs, hours }) => [fromMs, fromMs + (hours - 1) * hourMs]),
    errors,
  )
  if ('ok' in grid) return grid
  const { startMs, hours } = grid
  const notes = problemList()
  for (const { key, total, intervals } of read) {
    /** By hour, the interval that holds it: of two that overlap the second is told, and not laid over the first. */
    const laid = new Map<number, Interval>()
    for (const interval of intervals) {
      const share = total ? interval.hours : 1
      const begins = (interval.fromMs - startMs) / hourMs
      const first = Math.max(0, begins)
      const end = Math.min(hours, begins + interval.hours)
      const value = interval.value / share
      for (let hour = first; hour < end; hour++) {
        const atMs = startMs + hour * hourMs
        const before = laid.get(hour)
        if (before !== undefined) {
          tellTwice({ at: interval.at, atMs, same: isSame(before, interval) }, { errors, notes })
          break
        }
        laid.set(hour, interval)
        grid.told[hour] = 1
        putAt(grid, key, atMs, value)
      }
    }
  }
  return seriesOfGrid(grid, {
    source: sourceOf(properties),
    licence: nwsLicence,
    errors,
    notes,
  })
}

const isSame = (a: Interval, b: Interval): boolean =>
  a.fromMs === b.fromMs && a.hours === b.hours && Object.is(a.value, b.value)

function sourceOf(properties: JsonMap): string {
  const place = [textIn(properties, 'gridId'), textIn(properties, 'gridX'), textIn(properties, 'gridY')]
  return oneLine(
    `National Weather Service, grid point ${place.filter((one) => one !== '').join(' ')}, ${textIn(properties, 'updateTime')}`,
    mostRemark,
  )
}

function intervalsOf(
  properties: JsonMap,
  { layer, key }: { readonly layer: string; readonly key: ColumnKey },
  errors: ProblemList,
): readonly Interval[] {
  const { uom } = mapIn(properties, layer)
  const values = listIn(mapIn(properties, layer), 'values')
  if (values.length === 0) return []
  const step = typeof uom === 'string' ? unitStep(columnOf(key).quantity, uom) : undefined
  if (step === undefined) {
    const data = { name: layer, found: shown(typeof uom === 'string' ? uom : '') }
    addProblem(errors, { code: 'intake.unitUnknown', severity: 'error', data })
    return []
  }
  return values.slice(0, mostRows).flatMap((value, index) => {
    const at = `properties.${layer}.values[${index}]`
    return intervalOf(isMap(value) ? value : {}, { at, step, perUnit: columnOf(key).perUnit, errors })
  })
}

function intervalOf(
  value: JsonMap,
  how: {
    readonly at: string
    readonly step: UnitStep
    readonly perUnit: number
    readonly errors: ProblemList
  },
): readonly Interval[] {
  const written = textIn(value, 'validTime')
  const [start = '', duration = ''] = written.split('/')
  const time = readTime(start)
  const hours = hoursOf(duration)
  if (!time.ok || hours === undefined || time.atMs % hourMs !== 0) {
    const data = { at: `${how.at}.validTime`, found: shown(written) }
    addProblem(how.errors, { code: 'intake.jsonTime', severity: 'error', data })
    return []
  }
  const figure = numberOf(value.value, `${how.at}.value`, how.errors)
  return [
    {
      at: `${how.at}.validTime`,
      fromMs: time.atMs,
      hours,
      value: (figure * how.step.factor + how.step.step) / how.perUnit,
    },
  ]
}

/** A duration of ISO 8601 in whole hours, at most half a year; undefined for any other. */
export function hoursOf(duration: string): number | undefined {
  const parts = /^P(?:(\d{1,2})W)?(?:(\d{1,3})D)?(?:T(\d{1,3})H)?$/.exec(duration)
  if (parts === null) return undefined
  const [weeks = 0, days = 0, hours = 0] = parts.slice(1).map((part) => Number(part ?? 0))
  const all = (weeks * 7 + days) * 24 + hours
  return all > 0 && all <= 4400 ? all : undefined
}
