/** Readings at any minute to one figure an hour. */
import { hourMs } from '#core/climate'

export type TableReading = {
  readonly line: number
  readonly atMs: number
  /** One for each column that is used, in the unit of the series. */
  readonly figures: readonly number[]
}

/** How the figures of a column become one an hour. */
export type Gathering = 'nearest' | 'sum' | 'mean'

export type Thinned = {
  readonly startMs: number
  readonly hours: number
  /** 1 where a reading speaks for the hour. */
  readonly told: Uint8Array
  readonly columns: readonly Float64Array[]
}

/**
 * Of what is measured at a moment, the reading nearest to the full hour counts, if it lies within half an hour. What is
 * collected over time is put to the hour in which its reading ends, and added up or averaged there.
 * @param readings in order of time, no two at a moment. @param gathering one for each column.
 */
export function thinToHours(readings: readonly TableReading[], gathering: readonly Gathering[]): Thinned {
  const beatMs = commonBeat(readings)
  const hourOf = (atMs: number) => Math.round((atMs - beatMs) / hourMs)
  const first = readings.length === 0 ? 0 : hourOf(readings[0]!.atMs)
  const hours = readings.length === 0 ? 0 : hourOf(readings.at(-1)!.atMs) - first + 1
  const startMs = first * hourMs + beatMs
  const columns = gathering.map(() => new Float64Array(hours).fill(Number.NaN))
  const nearest = new Float64Array(hours).fill(Number.POSITIVE_INFINITY)
  const told = new Uint8Array(hours)
  for (const { atMs, figures } of readings) {
    const hour = hourOf(atMs) - first
    const off = Math.abs(atMs - startMs - hour * hourMs)
    told[hour] = 1
    if (off >= nearest[hour]!) continue
    nearest[hour] = off
    figures.forEach((figure, index) => {
      if (gathering[index] === 'nearest') columns[index]![hour] = figure
    })
  }
  gathering.forEach((how, index) => {
    if (how !== 'nearest') collect(readings, { index, startMs, column: columns[index]!, how })
  })
  return { startMs, hours, told, columns }
}

/** Where every reading lies whole hours from the first, its minute is the beat; else it is the full hour. */
function commonBeat(readings: readonly TableReading[]): number {
  const first = readings[0]?.atMs ?? 0
  return readings.every(({ atMs }) => (atMs - first) % hourMs === 0)
    ? ((first % hourMs) + hourMs) % hourMs
    : 0
}

/** A reading speaks for the time since the one before, at most an hour: its hour is the one that ends at or after it. */
function collect(
  readings: readonly TableReading[],
  into: {
    readonly index: number
    readonly startMs: number
    readonly column: Float64Array
    readonly how: Gathering
  },
): void {
  const { index, startMs, column, how } = into
  const counts = new Float64Array(column.length)
  for (const { atMs, figures } of readings) {
    const hour = Math.ceil((atMs - startMs) / hourMs) - 1
    const figure = figures[index]!
    if (hour < 0 || hour >= column.length || Number.isNaN(figure)) continue
    counts[hour]!++
    column[hour] = (counts[hour] === 1 ? 0 : column[hour]!) + figure
  }
  if (how === 'mean') for (let hour = 0; hour < column.length; hour++) column[hour]! /= counts[hour]!
}
