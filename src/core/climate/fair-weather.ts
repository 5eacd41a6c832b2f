/** Small series for tests: the same weather every hour, with some columns written out. */
import type { HourlySeries } from './series.ts'

/** 20 °C, 50 %, still and dry, from 2027-06-01T00:00Z; dew point 9.3 °C. */
export function fairWeather(hours: number, columns: Partial<HourlySeries> = {}): HourlySeries {
  const every = (value: number) => new Float64Array(hours).fill(value)
  return {
    kind: 'hourlySeries',
    startMs: Date.UTC(2027, 5, 1),
    hours,
    airC: every(20),
    humidityShare: every(0.5),
    windMps: every(1),
    rainMm: every(0),
    gaps: [],
    source: 'invented',
    licence: 'invented',
    ...columns,
  }
}

/** A column without the given key. */
export function without(series: HourlySeries, key: 'windMps' | 'rainMm'): HourlySeries {
  const { [key]: _left, ...rest } = series
  return rest
}
