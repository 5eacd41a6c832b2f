/** Heat that the sky sends down, from air, dew point and cloud: what a skin cools against at night. */
import { dewPoints } from '../dew-points.ts'
import type { HourlySeries } from '../series.ts'
import { valueAt } from '../series.ts'
import { kelvin } from './radiation.ts'

/** As in the source: dew points over 273, not 273.15, and its constant of radiation, W/(m² K⁴). */
const dewFrom = 273
const sourceBoltzmann = 5.6697e-8

/**
 * Emittance of the sky.
 * @param of.dewC dew point near the ground. @param of.cloudShare sky covered by cloud that hides it, 0..1.
 * @returns about 0.75 to 0.85 clear, up to 1 overcast; never over 1.
 * Equation: (0.787 + 0.764 ln(Td / 273)) (1 + 0.0224 N - 0.0035 N² + 0.00028 N³), Td kelvin, N tenths.
 * Source: G. Clark and C. Allen, Proc. 2nd National Passive Solar Conference, 1978, p. 675; cloud after G. Walton,
 * NBSIR 83-2655 (1983); both as in the engineering reference of the EnergyPlus building simulation.
 */
export function clarkAllenEmittance({
  dewC,
  cloudShare,
}: {
  readonly dewC: number
  readonly cloudShare: number
}): number {
  const tenths = 10 * cloudShare
  const clear = 0.787 + 0.764 * Math.log((dewC + kelvin) / dewFrom)
  return Math.min(1, clear * (1 + 0.0224 * tenths - 0.0035 * tenths ** 2 + 0.00028 * tenths ** 3))
}

/** Heat that the sky sends down on a level surface, W/m², for air and dew point in °C and cloud 0..1. */
export function skyHeat(of: {
  readonly airC: number
  readonly dewC: number
  readonly cloudShare: number
}): number {
  return clarkAllenEmittance(of) * sourceBoltzmann * (of.airC + kelvin) ** 4
}

/**
 * Heat from the sky at the start of each hour, W/m².
 * @param series told heat (a mean over the hour) comes first, as the mean of the hours before and after; then the
 * formula. Cloud not known counts as a clear sky, which errs to the cold and so to the wet side.
 * @returns NaN where air or humidity are not known either.
 */
export function skyHeats(series: HourlySeries): Float64Array {
  const dewC = dewPoints(series)
  return dewC.map((dew, hour) => {
    const told = atStart(series.skyHeatWm2, hour)
    if (!Number.isNaN(told)) return told
    const cloud = valueAt(series.cloudShare, hour)
    return skyHeat({ airC: series.airC[hour]!, dewC: dew, cloudShare: Number.isNaN(cloud) ? 0 : cloud })
  })
}

/** Of a mean over each hour, the value at the start of one: between it and the hour before, or what there is of them. */
function atStart(column: HourlySeries['skyHeatWm2'], hour: number): number {
  const [before, after] = [valueAt(column, hour - 1), valueAt(column, hour)]
  if (Number.isNaN(before)) return after
  return Number.isNaN(after) ? before : (before + after) / 2
}
