/**
 * A shelter's own figures from a few days of a logger that hung in it: how far its air lags, how much the sun warms it, how
 * much water it has above the air outside.
 */

import { lagged } from './lagged.ts'
import type { HourlyColumn, HourlySeries } from './series.ts'
import { hourMs } from './series.ts'
import type { Shed } from './shed/shed-air.ts'
import { insideOf } from './shelter.ts'
import { lightAtStart, type ShelterAir, vapourPa, waterOf } from './shelter-air.ts'

/** How far inside as worked lies from inside as logged. */
export type ShelterMiss = {
  /** Root of the mean square, K and share of humidity. */
  readonly rmsK: number
  readonly rmsShare: number
}

export type ShelterFit =
  | (ShelterMiss & {
      readonly kind: 'fitted'
      readonly air: ShelterAir
      /** Hours that logger and weather have in common. */
      readonly hours: number
      readonly assumed: ShelterMiss
    })
  | { readonly kind: 'few'; readonly hours: number }
  /** On hours it was not fitted to, it does worse than what is assumed of any such shelter. */
  | (ShelterMiss & { readonly kind: 'worse'; readonly hours: number; readonly assumed: ShelterMiss })
  /** Nothing of this kind comes near the logger: it hung elsewhere, or its clock is wrong. */
  | (ShelterMiss & { readonly kind: 'poor'; readonly hours: number })

export type ShelterReadings = {
  /** Weather outside; it must have hours of its own, not those of a typical year. */
  readonly series: HourlySeries
  /** Sun and sky on level ground, mean over each hour, W/m²; left out where nobody knows the sun. */
  readonly sunWm2: HourlyColumn | undefined
  /** What hung inside. */
  readonly logger: HourlySeries
  /** Heater, doors and floor over the hours of the weather, of a shed of which they are known. */
  readonly shed?: Shed | undefined
  /** What stands in for the shelter as long as it is not fitted. */
  readonly assumed: ShelterAir
}

/** A day shows the course of the sun once; with less, lag and sun cannot be told apart. Assumed. */
export const leastFitHours = 24

/**
 * Bounds of what a shelter can be. Assumed: a lag over a day is a cellar; 0.03 K for 1 W/m² is 30 K in full sun, a glasshouse
 * shut; 10 g/m³ above the air outside rains from the roof, and no dryer takes out more than 5.
 */
export const shelterBounds = {
  airLagHours: { least: 0, most: 24 },
  sunKPerWm2: { least: 0, most: 0.03 },
  waterKgM3: { least: -0.005, most: 0.01 },
} as const

/** Past these a fit says nothing of the shelter. Assumed: a usual logger is good for 0.5 K and 3 %. */
export const mostMiss: ShelterMiss = { rmsK: 2.5, rmsShare: 0.12 }

/** A fit may lose so much against what is assumed before it counts as worse: noise alone does that. Assumed. */
const noise = { share: 0.1, rmsK: 0.1, rmsShare: 0.01 } as const

/** The air inside starts from that outside; after so many hours it has forgotten. Assumed. */
const settleHours = 12

/**
 * Fits lag, sun and water by least squares over the hours that logger and weather have in common.
 *
 * For each lag the best sun is a straight line through nothing, in closed form; the lag is searched over its bounds in
 * half hours and then between them. In a shed with a heater the two are searched in turn. The water is the mean of what the
 * logger has above the air worked without it. A fit is proved on the last third of the hours after being fitted to the first
 * two, and then fitted again to all of them.
 * @returns what was found, or why nothing was.
 */
export function fitShelter(readings: ShelterReadings): ShelterFit {
  const span = commonHours(readings)
  const hours = span.at.length
  if (hours < leastFitHours) return { kind: 'few', hours }
  const proof = Math.floor((2 * hours) / 3)
  const [early, late] = [span.at.slice(0, proof), span.at.slice(proof)]
  const tried = missOf(fitOver(span, early), { ...span, at: late })
  const assumedLate = missOf(readings.assumed, { ...span, at: late })
  const air = fitOver(span, span.at)
  const miss = missOf(air, span)
  if (miss.rmsK > mostMiss.rmsK || miss.rmsShare > mostMiss.rmsShare) return { kind: 'poor', hours, ...miss }
  if (isWorse(tried, assumedLate)) return { kind: 'worse', hours, ...tried, assumed: assumedLate }
  return { kind: 'fitted', air, hours, ...miss, assumed: missOf(readings.assumed, span) }
}

const isWorse = (tried: ShelterMiss, assumed: ShelterMiss): boolean =>
  (['rmsK', 'rmsShare'] as const).some((key) => tried[key] > assumed[key] * (1 + noise.share) + noise[key])

/** One stretch of weather with what the logger says of it; both begin at the same hour. */
type Span = {
  readonly series: HourlySeries
  readonly sunWm2: HourlyColumn | undefined
  readonly shed: Shed | undefined
  /** °C and share as logged, NaN where nobody knows. */
  readonly loggedC: Float64Array
  readonly loggedShare: Float64Array
  /** Hours in which everything is known. */
  readonly at: readonly number[]
}

/** Weather this long before the logger is enough for the longest lag, h. */
const leadHours = 240

function commonHours({ series, sunWm2, logger, shed }: ShelterReadings): Span {
  const offset = (series.startMs - logger.startMs) / hourMs
  const from = Math.max(0, Math.floor(-offset) - leadHours)
  const to = Math.max(from, Math.min(series.hours, Math.ceil(logger.hours - offset)))
  const cut = (column: HourlyColumn) => Float64Array.from(column.slice(from, to))
  const logged = (column: HourlyColumn) =>
    Float64Array.from({ length: to - from }, (_, index) => between(column, offset + from + index))
  const [loggedC, loggedShare] = [logged(logger.airC), logged(logger.humidityShare)]
  const stretch = {
    ...series,
    startMs: series.startMs + from * hourMs,
    hours: to - from,
    airC: cut(series.airC),
    humidityShare: cut(series.humidityShare),
  }
  const at = Array.from(loggedC, (_, hour) => hour).filter(
    (hour) =>
      hour >= settleHours &&
      !Number.isNaN(loggedC[hour]! + loggedShare[hour]! + stretch.airC[hour]! + stretch.humidityShare[hour]!),
  )
  return {
    series: stretch,
    sunWm2: sunWm2 && cut(sunWm2),
    shed: shed && shedOver(shed, cut),
    loggedC,
    loggedShare,
    at,
  }
}

const shedOver = (
  { heater, airChanges, floorKg, ...shed }: Shed,
  cut: (column: HourlyColumn) => HourlyColumn,
): Shed => ({
  ...shed,
  airChanges: cut(airChanges),
  floorKg: cut(floorKg),
  ...(heater ? { heater: { ...heater, holdsC: cut(heater.holdsC) } } : {}),
})

/** Value of a column at an hour and a share of the next, where the logger's hours begin at other minutes. */
function between(column: HourlyColumn, hour: number): number {
  const whole = Math.floor(hour)
  const share = hour - whole
  const first = column[whole] ?? Number.NaN
  return share === 0 ? first : first + share * ((column[whole + 1] ?? Number.NaN) - first)
}

function fitOver(span: Span, at: readonly number[]): ShelterAir {
  const warmth = span.shed ? warmthSearched(span, at) : warmthInClosedForm(span, at)
  return { ...warmth, waterKgM3: waterOver(span, at, warmth) }
}

type Warmth = Pick<ShelterAir, 'airLagHours' | 'sunKPerWm2'>

function warmthInClosedForm(span: Span, at: readonly number[]): Warmth {
  const airLagHours = bestLag((lag) => fitSun(span, at, lag).squares)
  return { airLagHours, sunKPerWm2: fitSun(span, at, airLagHours).sunKPerWm2 }
}

/** As often as lag and sun are looked for in turn; the second time moves them little. */
const turns = 3

/** A heater that holds its temperature bends the answer to lag and sun: neither has a closed form. */
function warmthSearched(span: Span, at: readonly number[]): Warmth {
  const squares = (warmth: Warmth): number => {
    const { airC } = insideOf({ ...span, air: { ...warmth, waterKgM3: 0 } })
    return squaresOf(at.map((hour) => airC[hour]! - span.loggedC[hour]!))
  }
  const { least, most } = shelterBounds.sunKPerWm2
  let warmth: Warmth = { airLagHours: 0, sunKPerWm2: least }
  for (let turn = 0; turn < turns; turn++) {
    warmth = { ...warmth, airLagHours: bestLag((airLagHours) => squares({ ...warmth, airLagHours })) }
    if (span.sunWm2 === undefined) return warmth
    const sunKPerWm2 = lowest({ from: least, to: most, within: 1e-6 }, (sun) =>
      squares({ ...warmth, sunKPerWm2: sun }),
    )
    warmth = { ...warmth, sunKPerWm2 }
  }
  return warmth
}

/** The lag with the least squares: the best of all half hours, then between its neighbours, h. */
function bestLag(squares: (lagHours: number) => number): number {
  const { least, most } = shelterBounds.airLagHours
  const steps = Array.from({ length: 2 * (most - least) + 1 }, (_, step) => least + step / 2)
  const sums = steps.map(squares)
  const best = steps[sums.indexOf(Math.min(...sums))]!
  return lowest({ from: Math.max(least, best - 0.5), to: Math.min(most, best + 0.5), within: 1e-3 }, squares)
}

/**
 * The sun that goes best with a lag. A lag is linear, so the air inside is that without sun and s times a lagged sun:
 * s = Σ l r / Σ l², r what the logger has above the air without sun, l the lagged sun, within its bounds.
 */
function fitSun(
  { series, sunWm2, loggedC }: Span,
  at: readonly number[],
  lagHours: number,
): { readonly sunKPerWm2: number; readonly squares: number } {
  const plainC = lagged({ column: series.airC, lagHours })
  const rest = at.map((hour) => loggedC[hour]! - plainC[hour]!)
  if (sunWm2 === undefined) return { sunKPerWm2: 0, squares: squaresOf(rest) }
  // Where the air has a hole, the lag of the sun starts again with it, as it does in the model.
  const driven = Float64Array.from(series.airC, (airC, hour) =>
    Number.isNaN(airC) ? Number.NaN : lightAtStart(sunWm2, hour),
  )
  const column = lagged({ column: driven, lagHours })
  const light = at.map((hour) => column[hour]!)
  const { least, most } = shelterBounds.sunKPerWm2
  const best = light.reduce((sum, one, index) => sum + one * rest[index]!, 0) / squaresOf(light)
  const sunKPerWm2 = Number.isNaN(best) ? least : Math.min(most, Math.max(least, best))
  return { sunKPerWm2, squares: squaresOf(rest.map((value, index) => value - sunKPerWm2 * light[index]!)) }
}

const squaresOf = (values: readonly number[]): number => values.reduce((sum, value) => sum + value * value, 0)

function waterOver(span: Span, at: readonly number[], warmth: Warmth): number {
  const { least, most } = shelterBounds.waterKgM3
  const dry = insideOf({ ...span, air: { ...warmth, waterKgM3: 0 } })
  const above = at.map((hour) => {
    const [loggedC, share] = [span.loggedC[hour]!, span.loggedShare[hour]!]
    const workedPa = vapourPa(dry.airC[hour]!, dry.humidityShare[hour]!)
    return waterOf(vapourPa(loggedC, share) - workedPa, loggedC)
  })
  const mean = above.reduce((sum, value) => sum + value, 0) / above.length
  return Math.min(most, Math.max(least, mean))
}

function missOf(air: ShelterAir, span: Span): ShelterMiss {
  const { loggedC, loggedShare, at } = span
  const inside = insideOf({ ...span, air })
  const rms = (misses: readonly number[]) => Math.sqrt(squaresOf(misses) / misses.length)
  return {
    rmsK: rms(at.map((hour) => inside.airC[hour]! - loggedC[hour]!)),
    rmsShare: rms(at.map((hour) => inside.humidityShare[hour]! - loggedShare[hour]!)),
  }
}

const golden = (Math.sqrt(5) - 1) / 2

/** Where a valley is lowest between two ends, by golden sections. */
function lowest(
  over: { readonly from: number; readonly to: number; readonly within: number },
  of: (at: number) => number,
): number {
  let [low, high] = [over.from, over.to]
  while (high - low > over.within) {
    const [a, b] = [high - golden * (high - low), low + golden * (high - low)]
    if (of(a) <= of(b)) high = b
    else low = a
  }
  return (low + high) / 2
}
