/** What the air does in each hour, whatever stands in it and is painted: worked once for all places under it. */
import { dewPoints } from './dew-points.ts'
import { column, failed, type LimitColumn, type NextFailing, nextFailing } from './limit-columns.ts'
import type { FailingLimit, PlaceLimits } from './paint-limits.ts'
import { limitRounding } from './paint-limits.ts'
import type { PaintAir } from './paint-place.ts'
import type { HourlySeries } from './series.ts'
import { valueAt } from './series.ts'

export type AirAhead = PaintAir & {
  /** °C by the hour. */
  readonly dewC: Float64Array
  readonly wind: LimitColumn
  /** Rain that falls, that is likely, that nobody knows of, that is possible: the gravest first. Left out where none comes. */
  readonly rain: readonly NextFailing[] | undefined
}

/** Dew point and the limits of wind and rain, by the hour; `placeAhead` looks at one place after another by them. */
export function airAhead({ series, limits }: PaintAir): AirAhead {
  return {
    series,
    limits,
    dewC: dewPoints(series),
    wind: column(series.hours, (hour) => windAt(series, { limits, hour })),
    rain: limits.openToSky ? rainAhead(series, limits) : undefined,
  }
}

function windAt(
  series: HourlySeries,
  { limits, hour }: { readonly limits: PlaceLimits; readonly hour: number },
): FailingLimit | undefined {
  const had = valueAt(series.windMps, hour)
  const { windGoMps, windNoMps } = limits
  if (had <= windGoMps + limitRounding) return undefined
  if (Number.isNaN(had)) return failed({ limit: 'wind', effect: 'risky', needed: windGoMps, had: null })
  return had > windNoMps + limitRounding
    ? failed({ limit: 'wind', effect: 'no', needed: windNoMps, had })
    : failed({ limit: 'wind', effect: 'risky', needed: windGoMps, had })
}

function rainAhead(
  { hours, rainMm, rainChanceShare }: HourlySeries,
  limits: PlaceLimits,
): readonly NextFailing[] {
  const fell = (hour: number) => valueAt(rainMm, hour)
  const chance = (hour: number) => valueAt(rainChanceShare, hour)
  const chanceOver = (needed: number, effect: 'risky' | 'no') =>
    nextFailing(hours, {
      holds: (at) => chance(at) >= needed - limitRounding,
      limit: (at, inHours) => ({ limit: 'rainChance', effect, needed, had: chance(at), inHours }),
    })
  const falls = nextFailing(hours, {
    holds: (at) => fell(at) > 0,
    limit: (at, inHours) => ({ limit: 'rain', effect: 'no', needed: 0, had: fell(at), inHours }),
  })
  const unknown = nextFailing(hours, {
    holds: (at) => Number.isNaN(fell(at)) && Number.isNaN(chance(at)),
    limit: (_, inHours) => ({ limit: 'rain', effect: 'risky', needed: 0, had: null, inHours }),
  })
  const { rainNoShare, rainRiskyShare } = limits
  return [falls, chanceOver(rainNoShare, 'no'), unknown, chanceOver(rainRiskyShare, 'risky')]
}
