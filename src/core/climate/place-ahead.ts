/** What the weather does to a place in each hour, whatever is painted there: worked once for all its products. */
import type { AirAhead } from './air-ahead.ts'
import { column, failed, type LimitColumn, type NextFailing, nextFailing } from './limit-columns.ts'
import { limitRounding } from './paint-limits.ts'
import type { PaintPlace, PaintSkin } from './paint-place.ts'
import { valueAt } from './series.ts'
import { wetness } from './wetness.ts'

export type PlaceAhead = AirAhead &
  PaintSkin & {
    readonly hotSun: LimitColumn
    readonly wet: LimitColumn
    readonly tooClose: NextFailing
    /** Past the end of the series the margin is not known either. */
    readonly unknownMargin: NextFailing
  }

/**
 * Limits of sun, dew and wetness at a place, by the hour; `hoursForSheet` judges one product after another by them.
 * Sources: see `paintableHours`.
 */
export function placeAhead(air: AirAhead, skin: PaintSkin): PlaceAhead {
  const place = { ...air, ...skin }
  const { hours } = air.series
  const marginK = air.dewC.map((dewC, hour) => valueAt(skin.surfaceC, hour) - dewC)
  const needed = air.limits.dewMarginK
  return {
    ...place,
    hotSun: column(hours, (hour) => hotSunAt(place, hour)),
    wet: wetSince(place, marginK),
    tooClose: nextFailing(hours, {
      holds: (at) => marginK[at]! < needed - limitRounding,
      limit: (at, inHours) => ({ limit: 'dewMargin', effect: 'no', needed, had: marginK[at]!, inHours }),
    }),
    unknownMargin: nextFailing(hours, {
      holds: (at) => Number.isNaN(marginK[at]!),
      limit: (_, inHours) => ({ limit: 'dewMargin', effect: 'unknown', needed, had: null, inHours }),
    }),
  }
}

/** Paint in the sun on a warm side skins over before it is laid off, and its thinner boils out. */
function hotSunAt({ series, surfaceC, warmestC, beamWm2, limits }: PaintPlace, hour: number) {
  if (beamWm2 === undefined || !(beamWm2[hour]! > limits.sunnyBeamWm2)) return undefined
  const had = (warmestC ?? surfaceC)[hour]! - series.airC[hour]!
  const needed = limits.sunnyOverAirK
  return had > needed + limitRounding ? failed({ limit: 'hotSun', effect: 'risky', needed, had }) : undefined
}

function wetSince({ series, limits }: PaintPlace, marginK: Float64Array): LimitColumn {
  const wet = wetness({ series, marginK, limits })
  return column(series.hours, (hour) => {
    const state = wet[hour]
    // While the margin itself fails, that says it all.
    if (state === undefined || marginK[hour]! < limits.dewMarginK - limitRounding) return undefined
    const effect = state.certain ? 'no' : 'risky'
    return failed({ limit: 'wetSince', effect, needed: limits.dryHours, had: state.dryHours })
  })
}
