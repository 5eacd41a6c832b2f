/**
 * Weather hour by hour, as every climate function takes it: plain columns over an unbroken run of hours.
 * What nobody measured or forecast is NaN, never zero.
 */

/** One value an hour; NaN is unknown. */
export type HourlyColumn = Float64Array | readonly number[]

/** A stretch inside a series for which the source gave no row at all; the first and the last hour have one. */
export type Gap = {
  /** Index of the first hour without a row. */
  readonly fromHour: number
  readonly hours: number
}

export type HourlySeries = {
  readonly kind: 'hourlySeries'
  /** Start of the first hour, milliseconds since 1970-01-01T00:00Z. Hour `i` starts `i` hours later. */
  readonly startMs: number
  /** Length of every column. */
  readonly hours: number
  /** Dry-bulb air temperature at the start of the hour, °C. */
  readonly airC: HourlyColumn
  /** Relative humidity over water at the start of the hour, 0..1. */
  readonly humidityShare: HourlyColumn
  /** Wind speed 10 m up, m/s. */
  readonly windMps?: HourlyColumn
  /** Where the wind comes from, rad clockwise from true north, 0 to 2π. */
  readonly windFromRad?: HourlyColumn
  /** Liquid that falls within the hour, mm. */
  readonly rainMm?: HourlyColumn
  /** Chance of rain within the hour, 0..1. */
  readonly rainChanceShare?: HourlyColumn
  /** Sky covered by cloud, 0..1. */
  readonly cloudShare?: HourlyColumn
  /** Sun and sky on a level surface, mean over the hour, W/m². */
  readonly sunWm2?: HourlyColumn
  /** The sun alone on a surface that faces it, mean over the hour, W/m². */
  readonly sunBeamWm2?: HourlyColumn
  /** The sky alone, without the sun, on a level surface, mean over the hour, W/m². */
  readonly sunDiffuseWm2?: HourlyColumn
  /** Heat that sky and clouds send down on a level surface, mean over the hour, W/m². */
  readonly skyHeatWm2?: HourlyColumn
  /** Dew point at the start of the hour as the source has it, °C; what is planned goes by `humidityShare`. */
  readonly dewC?: HourlyColumn
  /** The hours of a typical year: month, day and hour of the day count, the year does not. See `overDates`. */
  readonly typicalYear?: true
  /** Where it was measured, rad, north and east are plus; left out when the file did not say. */
  readonly spot?: { readonly latitude: number; readonly longitude: number }
  readonly gaps: readonly Gap[]
  /** Where the weather is from, in one line; empty when the file did not say. */
  readonly source: string
  /** On what terms it may be passed on, in one line; empty when the file did not say. */
  readonly licence: string
}

/** Columns a series may leave out. */
export const optionalColumns = [
  'windMps',
  'windFromRad',
  'rainMm',
  'rainChanceShare',
  'cloudShare',
  'sunWm2',
  'sunBeamWm2',
  'sunDiffuseWm2',
  'skyHeatWm2',
  'dewC',
] as const
export type OptionalColumn = (typeof optionalColumns)[number]

export const hourMs = 3_600_000

/** Start of an hour of the series, ms since 1970 UTC; hours before or after the series extrapolate. */
export function startOfHour(series: HourlySeries, hour: number): number {
  return series.startMs + hour * hourMs
}

/** Index of the hour in which a moment (ms since 1970 UTC) falls; undefined outside the series. */
export function hourAt(series: HourlySeries, momentMs: number): number | undefined {
  const hour = Math.floor((momentMs - series.startMs) / hourMs)
  return hour >= 0 && hour < series.hours ? hour : undefined
}

/** Value of a column at an hour; NaN where the column is left out or the hour is outside it. */
export function valueAt(column: HourlyColumn | undefined, hour: number): number {
  const value = column?.[hour]
  return value === undefined ? Number.NaN : value
}
