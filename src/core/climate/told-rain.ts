/** Rain that somebody saw fall, put into the weather: what was seen stands before what was forecast. */
import type { HourlySeries } from './series.ts'
import { hourMs, valueAt } from './series.ts'

/** A stretch of rain as it was told. */
export type ToldRain = {
  /** ms since 1970 UTC. */
  readonly fromMs: number
  readonly toMs: number
  /** In all, mm, evenly over the stretch; undefined where nobody measured it. */
  readonly amountMm?: number
}

/**
 * Put into every hour in which it rained when nobody knows how much, mm: enough to wet a surface. A trace is less
 * than this. SOURCE: WMO-No. 8, precipitation under 0.1 mm is a trace (from memory); that an unmeasured rain was at
 * least so much is assumed.
 */
export const leastRainMm = 0.1

/**
 * The series with the rain that was told.
 * @param at.series weather as it was forecast or measured. @param at.rains stretches; of two over the same hour
 * the later in the list holds.
 * @returns hours that a stretch touches have its share of the amount instead of theirs, and no more a chance of rain;
 * without an amount at least `leastRainMm`. Hours outside the series are left out: it is not made longer.
 */
export function withToldRain(at: {
  readonly series: HourlySeries
  readonly rains: readonly ToldRain[]
}): HourlySeries {
  const { series, rains } = at
  const rainMm = Float64Array.from({ length: series.hours }, (_, hour) => valueAt(series.rainMm, hour))
  const chance = Float64Array.from({ length: series.hours }, (_, hour) =>
    valueAt(series.rainChanceShare, hour),
  )
  for (const rain of rains) {
    for (const { hour, share } of hoursOf(series, rain)) {
      const known = Number.isNaN(rainMm[hour]!) ? 0 : rainMm[hour]!
      rainMm[hour] = rain.amountMm === undefined ? Math.max(known, leastRainMm) : rain.amountMm * share
      chance[hour] = Number.NaN
    }
  }
  return {
    ...series,
    rainMm,
    ...(series.rainChanceShare === undefined ? {} : { rainChanceShare: chance }),
  }
}

/** Hours of the series that a stretch touches, each with its share of it. */
function hoursOf(
  { startMs, hours }: HourlySeries,
  { fromMs, toMs }: ToldRain,
): readonly { readonly hour: number; readonly share: number }[] {
  const first = Math.max(0, Math.floor((fromMs - startMs) / hourMs))
  const last = Math.min(hours, Math.ceil((toMs - startMs) / hourMs))
  return Array.from({ length: Math.max(0, last - first) }, (_, k) => {
    const hourStart = startMs + (first + k) * hourMs
    const overlap = Math.min(toMs, hourStart + hourMs) - Math.max(fromMs, hourStart)
    return { hour: first + k, share: overlap / (toMs - fromMs) }
  })
}
