/** Columns of a weather file: names, what is plausible, and where each goes in a series. */
import type { HourlySeries, OptionalColumn } from '#core/climate'

export type WeatherColumn = {
  readonly name: string
  readonly key: 'airC' | 'humidityShare' | OptionalColumn
  readonly required: boolean
  /** Plausible values as written, both included. */
  readonly least: number
  readonly most: number
  /** One unit of the series in units of the file: 100 for per cent. */
  readonly perUnit: number
}

export const timeColumn = 'time'

/** Air: coldest and warmest on record rounded out. Rain: the most in an hour on record (305 mm, from memory). */
export const weatherColumns: readonly WeatherColumn[] = [
  { name: 'airC', key: 'airC', required: true, least: -60, most: 60, perUnit: 1 },
  { name: 'humidityPct', key: 'humidityShare', required: true, least: 0, most: 100, perUnit: 100 },
  { name: 'windMps', key: 'windMps', required: false, least: 0, most: 90, perUnit: 1 },
  { name: 'windFromDeg', key: 'windFromRad', required: false, least: 0, most: 360, perUnit: 180 / Math.PI },
  { name: 'rainMm', key: 'rainMm', required: false, least: 0, most: 305, perUnit: 1 },
  { name: 'cloudPct', key: 'cloudShare', required: false, least: 0, most: 100, perUnit: 100 },
  { name: 'rainChancePct', key: 'rainChanceShare', required: false, least: 0, most: 100, perUnit: 100 },
  { name: 'sunWm2', key: 'sunWm2', required: false, least: 0, most: 1500, perUnit: 1 },
]

/** Words people use for a column, small letters and digits only. */
export const columnHints: Readonly<Record<string, string>> = {
  date: timeColumn,
  datetime: timeColumn,
  timestamp: timeColumn,
  hour: timeColumn,
  air: 'airC',
  t: 'airC',
  temp: 'airC',
  tempc: 'airC',
  temperature: 'airC',
  temperaturec: 'airC',
  rh: 'humidityPct',
  humidity: 'humidityPct',
  relativehumidity: 'humidityPct',
  wind: 'windMps',
  windspeed: 'windMps',
  windms: 'windMps',
  winddirection: 'windFromDeg',
  winddir: 'windFromDeg',
  winddeg: 'windFromDeg',
  windfrom: 'windFromDeg',
  rain: 'rainMm',
  precipitation: 'rainMm',
  precip: 'rainMm',
  cloud: 'cloudPct',
  clouds: 'cloudPct',
  cloudcover: 'cloudPct',
  pop: 'rainChancePct',
  rainchance: 'rainChancePct',
  sun: 'sunWm2',
  solar: 'sunWm2',
  radiation: 'sunWm2',
}

/** Columns of the file that a series fills, in the order they are written. */
export function columnsOf(series: HourlySeries): readonly WeatherColumn[] {
  return weatherColumns.filter(({ key }) => series[key] !== undefined)
}
