/** How far told weather departs from usual weather, carried on where nothing is told: between two figures, and after the last. */
import { type HourlyColumn, valueAt } from '../series.ts'

/**
 * Time in which what is left of a departure falls to 1/e, h: of the mean of the last day, about a day; of what the last
 * hour has over that mean, which is cloud or a breeze of the moment, a quarter of a day. Common practice, assumed.
 */
export const fadeHours = { day: 24, moment: 6 } as const

/** After so many hours nothing is left: under 1 % of the last day's departure. */
export const fadedAfterHours = 120

export type Departures = {
  /** Told less usual of each hour from `fromHour` on, in the unit of the columns; NaN before. */
  readonly by: Float64Array
  /** First hour that departs by nothing. */
  readonly plainHour: number
}

/**
 * @param of.told figures; NaN, or past the end, where nothing is told. @param of.usual what those hours usually have;
 * as long as the result. @param of.fromHour from which hour on a departure is wanted.
 * @returns between two told figures the departure runs straight; after the last, k hours on, it is
 * `m exp(-k / 24) + (d - m) exp(-k / 6)`, d the last departure and m the mean of the last day's, and 0 after
 * `fadedAfterHours`. Where nothing is told in the day before `fromHour` nor later it is 0.
 */
export function departures(of: {
  readonly told: HourlyColumn | undefined
  readonly usual: HourlyColumn
  readonly fromHour: number
}): Departures {
  const { told, usual, fromHour } = of
  const hours = usual.length
  const by = new Float64Array(hours).fill(Number.NaN)
  const at = (hour: number) => valueAt(told, hour) - valueAt(usual, hour)
  const known: number[] = []
  const toldHours = Math.min(told?.length ?? 0, hours)
  for (let hour = Math.max(0, fromHour - fadeHours.day); hour < toldHours; hour++)
    if (!Number.isNaN(at(hour))) known.push(hour)
  const last = known.at(-1)
  if (last === undefined) return { by: by.fill(0, fromHour), plainHour: fromHour }
  const lastDay = known.filter((hour) => hour > last - fadeHours.day)
  const mean = lastDay.reduce((sum, hour) => sum + at(hour), 0) / lastDay.length
  const fading = fadingFrom({ last: at(last), mean })
  let next = 0
  for (let hour = fromHour; hour < hours; hour++) {
    while (next < known.length && known[next]! < hour) next++
    by[hour] =
      hour > last ? fading(hour - last) : between(at, { hour, before: known[next - 1], after: known[next]! })
  }
  return { by, plainHour: Math.max(fromHour, last + fadedAfterHours + 1) }
}

const fadingFrom =
  ({ last, mean }: { readonly last: number; readonly mean: number }) =>
  (hours: number): number =>
    hours > fadedAfterHours
      ? 0
      : mean * Math.exp(-hours / fadeHours.day) + (last - mean) * Math.exp(-hours / fadeHours.moment)

function between(
  at: (hour: number) => number,
  {
    hour,
    before,
    after,
  }: { readonly hour: number; readonly before: number | undefined; readonly after: number },
): number {
  if (before === undefined || after === hour) return at(after)
  return at(before) + ((at(after) - at(before)) * (hour - before)) / (after - before)
}
