/**
 * How warm the skin of the boat is, hour by hour: a first, plain model (lag in a shed, a drop under a clear
 * night sky). Sun on the skin is left out, which errs to the cold and so to the wet side.
 */
import { lagged } from './lagged.ts'
import type { HourlySeries } from './series.ts'
import { startOfHour, valueAt } from './series.ts'
import type { Shelter } from './shelter.ts'
import { airUnder, shelters } from './shelter.ts'
import type { Place } from './sun/sun-position.ts'
import { sunPosition } from './sun/sun-position.ts'

/** Upper limb on the horizon at standard refraction: the sun's centre as seen is then half its width below it. */
const sunsetAltitude = (-0.2666 * Math.PI) / 180

/** Emittance of a clear night sky at a dew point near 10 °C, Clark and Allen (1978). */
const clearSkyEmittance = 0.815

/**
 * Temperature of the skin under a shelter. Assumed, not measured: see `shelters` for the figures.
 * @param at.series weather outside. @param at.shelter what is over the boat. @param at.place latitude and
 * longitude, rad, for sunset and sunrise.
 * @returns °C for every hour; NaN where the air is unknown.
 * Between sunset and sunrise the skin is `nightDropK` below the air under a clear sky, less under cloud; with
 * cloud unknown the sky counts as clear. In a shed the skin follows the air inside with its lag.
 */
export function surfaceTemperature(at: {
  readonly series: HourlySeries
  readonly shelter: Shelter
  readonly place: Place
}): Float64Array {
  const figures = shelters[at.shelter]
  const inside = airUnder(at)
  const skinC = lagged({ column: inside.airC, lagHours: figures.surfaceLagHours })
  if (figures.nightDropK === 0) return skinC
  return skinC.map((airC, hour) =>
    sunIsDown(at, hour) ? airC - figures.nightDropK * clearness(valueAt(at.series.cloudShare, hour)) : airC,
  )
}

function sunIsDown(at: { readonly series: HourlySeries; readonly place: Place }, hour: number): boolean {
  return sunPosition({ ...at.place, atMs: startOfHour(at.series, hour) }).altitude < sunsetAltitude
}

/**
 * Share of a clear sky's loss that is left under cloud: the sky's emittance grows with cloud.
 * @param cloudShare 0..1; NaN (unknown) counts as clear.
 * Equation: (1 - e f(N)) / (1 - e), f = 1 + 0.0224 N - 0.0035 N² + 0.00028 N³, N tenths, e = 0.815, not under 0.
 * Source: Clark and Allen (1978), cloud after Walton, NBSIR 83-2655 (1983).
 */
function clearness(cloudShare: number): number {
  if (Number.isNaN(cloudShare)) return 1
  const tenths = 10 * cloudShare
  const growth = 1 + 0.0224 * tenths - 0.0035 * tenths ** 2 + 0.00028 * tenths ** 3
  return Math.max(0, (1 - clearSkyEmittance * growth) / (1 - clearSkyEmittance))
}
