/** A typical year laid over real dates: each hour takes what the same hour of the typical year has. */
import { type HourlyColumn, type HourlySeries, hourMs, optionalColumns } from './series.ts'

export const hoursOfYear = 8760

/**
 * Weather for a stretch of real hours out of a typical year.
 * @param series.typicalYear the hours of 365 days; where it is not set, the very same series comes back.
 * @param span.fromMs from the hour in which this moment falls, ms since 1970 UTC. @param span.hours how many hours.
 * @returns a series of these dates. Month, day and hour in UTC are kept; 29 February takes 28 February once more.
 */
export function overDates(
  series: HourlySeries,
  { fromMs, hours }: { readonly fromMs: number; readonly hours: number },
): HourlySeries {
  if (!isTypicalYear(series)) return series
  const beatMs = series.startMs % hourMs
  return laidFrom(series, { startMs: Math.floor((fromMs - beatMs) / hourMs) * hourMs + beatMs, hours })
}

/** A whole typical year: 8760 hours that `overDates` lays over any dates. */
export const isTypicalYear = ({ typicalYear, hours }: HourlySeries): boolean =>
  typicalYear === true && hours === hoursOfYear

/** The same with the beat of other weather: hours that begin elsewhere take the nearest hour of the typical year. */
export function laidFrom(
  series: HourlySeries,
  { startMs, hours }: { readonly startMs: number; readonly hours: number },
): HourlySeries {
  const { typicalYear: _, ...dated } = series
  const hourOf = hourOfYear(series.startMs)
  const from = Int32Array.from({ length: hours }, (_, hour) => hourOf(startMs + hour * hourMs))
  const laid = (column: HourlyColumn) => Float64Array.from(from, (hour) => column[hour]!)
  const optional = optionalColumns.flatMap((key) => {
    const column = series[key]
    return column === undefined ? [] : [[key, laid(column)] as const]
  })
  return {
    ...dated,
    startMs,
    hours,
    airC: laid(series.airC),
    humidityShare: laid(series.humidityShare),
    ...Object.fromEntries(optional),
    gaps: gapsAmong(from, series.gaps),
  }
}

/** Index into a typical year of the hour that begins at a moment, ms since 1970 UTC. */
export function hourOfYear(yearStartMs: number): (atMs: number) => number {
  // East of Greenwich the first hour still falls into the old year of UTC.
  const nominal = new Date(yearStartMs + 24 * hourMs).getUTCFullYear()
  return (atMs) => {
    const at = new Date(atMs)
    const [month, day] = [at.getUTCMonth(), at.getUTCDate()]
    const sinceMidnight = atMs - Date.UTC(at.getUTCFullYear(), month, day)
    const sameDay = Date.UTC(nominal, month, month === 1 && day === 29 ? 28 : day)
    const hour = Math.round((sameDay + sinceMidnight - yearStartMs) / hourMs)
    return ((hour % hoursOfYear) + hoursOfYear) % hoursOfYear
  }
}

function gapsAmong(from: Int32Array, gaps: HourlySeries['gaps']): HourlySeries['gaps'] {
  const inGap = (hour: number) =>
    gaps.some(({ fromHour, hours }) => hour >= fromHour && hour < fromHour + hours)
  const found: { fromHour: number; hours: number }[] = []
  if (gaps.length === 0) return found
  from.forEach((hour, index) => {
    if (!inGap(hour)) return
    const last = found.at(-1)
    if (last !== undefined && last.fromHour + last.hours === index) last.hours++
    else found.push({ fromHour: index, hours: 1 })
  })
  return found
}
