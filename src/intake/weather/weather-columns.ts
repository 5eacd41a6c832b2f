/** Columns of a weather file: names, what is plausible, and where each goes in a series. */
import type { HourlySeries, OptionalColumn } from '#core/climate'
import type { Quantity } from './weather-units.ts'

export type WeatherColumn = {
  readonly name: string
  readonly key: 'airC' | 'humidityShare' | OptionalColumn
  readonly required: boolean
  /** Plausible values as written, both included. */
  readonly least: number
  readonly most: number
  /** One unit of the series in units of the file: 100 for per cent. */
  readonly perUnit: number
  /** What is measured, for units that are not the column's own. */
  readonly quantity: Quantity
  /** Over the hour, and not at its start. */
  readonly overHour: boolean
}

export const timeColumn = 'time'

/**
 * Air: coldest and warmest on record rounded out; dew point likewise (35 °C). Rain: the most in an hour on record
 * (305 mm). All from memory.
 */
export const weatherColumns: readonly WeatherColumn[] = [
  column('airC', 'airC', { least: -60, most: 60, perUnit: 1, quantity: 'temperature', overHour: false }),
  column('humidityPct', 'humidityShare', {
    least: 0,
    most: 100,
    perUnit: 100,
    quantity: 'share',
    overHour: false,
  }),
  column('windMps', 'windMps', { least: 0, most: 90, perUnit: 1, quantity: 'speed', overHour: false }),
  column('windFromDeg', 'windFromRad', {
    least: 0,
    most: 360,
    perUnit: 180 / Math.PI,
    quantity: 'angle',
    overHour: false,
  }),
  column('rainMm', 'rainMm', { least: 0, most: 305, perUnit: 1, quantity: 'depth', overHour: true }),
  column('cloudPct', 'cloudShare', { least: 0, most: 100, perUnit: 100, quantity: 'share', overHour: false }),
  column('rainChancePct', 'rainChanceShare', {
    least: 0,
    most: 100,
    perUnit: 100,
    quantity: 'share',
    overHour: true,
  }),
  column('sunWm2', 'sunWm2', { least: 0, most: 1500, perUnit: 1, quantity: 'power', overHour: true }),
  column('sunBeamWm2', 'sunBeamWm2', { least: 0, most: 1500, perUnit: 1, quantity: 'power', overHour: true }),
  column('sunDiffuseWm2', 'sunDiffuseWm2', {
    least: 0,
    most: 1500,
    perUnit: 1,
    quantity: 'power',
    overHour: true,
  }),
  column('skyHeatWm2', 'skyHeatWm2', { least: 0, most: 700, perUnit: 1, quantity: 'power', overHour: true }),
  column('dewC', 'dewC', { least: -100, most: 40, perUnit: 1, quantity: 'temperature', overHour: false }),
]

function column(
  name: string,
  key: WeatherColumn['key'],
  rest: Omit<WeatherColumn, 'name' | 'key' | 'required'>,
): WeatherColumn {
  return { name, key, required: key === 'airC' || key === 'humidityShare', ...rest }
}

/** The column of a key of the series. */
export function columnOf(key: WeatherColumn['key']): WeatherColumn {
  return weatherColumns.find((one) => one.key === key)!
}

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
  dew: 'dewC',
  dewpoint: 'dewC',
  dewpointc: 'dewC',
  sun: 'sunWm2',
  solar: 'sunWm2',
  radiation: 'sunWm2',
}

/** Columns of the file that a series fills, in the order they are written. */
export function columnsOf(series: HourlySeries): readonly WeatherColumn[] {
  return weatherColumns.filter(({ key }) => series[key] !== undefined)
}
