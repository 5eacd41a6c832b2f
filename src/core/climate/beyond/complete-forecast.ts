/** A forecast that goes on, past its horizon, with the hours of a typical year. */

import { relativeHumidity } from '../dew-point.ts'
import { dewPoints } from '../dew-points.ts'
import { laidFrom } from '../over-dates.ts'
import {
  type Gap,
  type HourlyColumn,
  type HourlySeries,
  hourMs,
  optionalColumns,
  valueAt,
} from '../series.ts'
import { kelvin } from '../skin/radiation.ts'
import { departures } from './fading.ts'

export type CompletedForecast = {
  readonly series: HourlySeries
  /** Index of the first hour that is not wholly of the forecast; the length of the series when all are. */
  readonly horizonHour: number
  /** Index of the first hour that is wholly of the typical year. */
  readonly plainHour: number
}

/**
 * @param of.forecast weather with dates. @param of.typical a whole typical year (`isTypicalYear`).
 * @param of.untilMs how far the series has to reach, ms since 1970 UTC.
 * @returns hours before the horizon exactly as the forecast has them, also where it knows nothing. The horizon is after
 * the last two hours in a row that the forecast tells: behind it come single hours of a coarse tail at most. From there
 * on a figure that is told stays; air, dew point, wind and cloud that are not told are those of the typical year with
 * the departure of the forecast from it, which fades (see `departures`); humidity follows from air and dew point, at most
 * 1; light is wholly of the one or the other; what the sky sends down goes with the fourth power of the air's kelvins;
 * rain and where the wind comes from are as the typical year has them. A forecast that reaches far enough comes back
 * itself.
 */
export function completeForecast(of: {
  readonly forecast: HourlySeries
  readonly typical: HourlySeries
  readonly untilMs: number
}): CompletedForecast {
  const { forecast, typical, untilMs } = of
  const horizonHour = horizonOf(forecast)
  const hours = Math.ceil((untilMs - forecast.startMs) / hourMs)
  if (horizonHour >= hours)
    return { series: forecast, horizonHour: forecast.hours, plainHour: forecast.hours }
  const usual = laidFrom(typical, { startMs: forecast.startMs, hours: Math.max(hours, forecast.hours) })
  return { horizonHour, ...joined({ forecast, usual, horizonHour }) }
}

/** After the last two hours in a row of which air and humidity are told; of humidity only where it ever is. */
function horizonOf({ hours, airC, humidityShare }: HourlySeries): number {
  const damp = Array.from(humidityShare).some((share) => !Number.isNaN(share))
  const told = (hour: number) =>
    !Number.isNaN(valueAt(airC, hour) + (damp ? valueAt(humidityShare, hour) : 0))
  for (let hour = hours - 1; hour > 0; hour--) if (told(hour) && told(hour - 1)) return hour + 1
  return told(0) ? 1 : 0
}

type Joining = {
  readonly forecast: HourlySeries
  readonly usual: HourlySeries
  readonly horizonHour: number
}

function joined(of: Joining): Omit<CompletedForecast, 'horizonHour'> {
  const { forecast, usual, horizonHour } = of
  const filled = (told: HourlyColumn | undefined, beyond: (hour: number) => number) =>
    Float64Array.from({ length: usual.hours }, (_, hour) => {
      const own = valueAt(told, hour)
      return hour < horizonHour || !Number.isNaN(own) ? own : beyond(hour)
    })
  const departing = (told: HourlyColumn | undefined, usually: HourlyColumn) => {
    const { by, plainHour } = departures({ told, usual: usually, fromHour: horizonHour })
    return { at: (hour: number) => usually[hour]! + by[hour]!, plainHour }
  }
  const usualDew = dewPoints(usual)
  const air = departing(forecast.airC, usual.airC)
  const dew = departing(dewPoints(forecast), usualDew)
  const airC = filled(forecast.airC, air.at)
  const dewAt = (hour: number) => Math.min(airC[hour]!, dew.at(hour))
  const humidityShare = filled(forecast.humidityShare, (hour) =>
    Number.isNaN(airC[hour]! + dew.at(hour))
      ? Number.NaN
      : Math.min(1, relativeHumidity({ airC: airC[hour]!, dewC: dewAt(hour) })),
  )
  const usually = (key: (typeof optionalColumns)[number]) => (hour: number) => valueAt(usual[key], hour)
  const fading = (key: 'windMps' | 'cloudShare', most: number) => {
    const column = usual[key]
    if (column === undefined) return () => Number.NaN
    const { at } = departing(forecast[key], column)
    return (hour: number) => Math.min(most, Math.max(0, at(hour)))
  }
  const light = (key: (typeof lights)[number]) => (hour: number) =>
    lights.some((one) => !Number.isNaN(valueAt(forecast[one], hour))) ? Number.NaN : valueAt(usual[key], hour)
  const beyond: Readonly<Record<(typeof optionalColumns)[number], (hour: number) => number>> = {
    windMps: fading('windMps', Number.POSITIVE_INFINITY),
    windFromRad: usually('windFromRad'),
    rainMm: usually('rainMm'),
    rainChanceShare: usually('rainChanceShare'),
    cloudShare: fading('cloudShare', 1),
    sunWm2: light('sunWm2'),
    sunBeamWm2: light('sunBeamWm2'),
    sunDiffuseWm2: light('sunDiffuseWm2'),
    skyHeatWm2: (hour) =>
      valueAt(usual.skyHeatWm2, hour) * warmer({ airC: airC[hour]!, usualC: usual.airC[hour]! }),
    dewC: dewAt,
  }
  const optional = optionalColumns.flatMap((key) =>
    forecast[key] === undefined && usual[key] === undefined
      ? []
      : [[key, filled(forecast[key], beyond[key])] as const],
  )
  return {
    series: {
      ...forecast,
      hours: usual.hours,
      airC,
      humidityShare,
      ...Object.fromEntries(optional),
      gaps: [...clipped(forecast.gaps, 0, horizonHour), ...clipped(usual.gaps, horizonHour, usual.hours)],
    },
    plainHour: Math.min(usual.hours, Math.max(air.plainHour, dew.plainHour)),
  }
}

const lights = ['sunWm2', 'sunBeamWm2', 'sunDiffuseWm2'] as const

/** By what the heat of a sky grows whose air is so much warmer, its emittance the same. */
const warmer = ({ airC, usualC }: { readonly airC: number; readonly usualC: number }): number =>
  ((airC + kelvin) / (usualC + kelvin)) ** 4

const clipped = (gaps: readonly Gap[], from: number, to: number): readonly Gap[] =>
  gaps.flatMap(({ fromHour, hours }) => {
    const [first, end] = [Math.max(from, fromHour), Math.min(to, fromHour + hours)]
    return end > first ? [{ fromHour: first, hours: end - first }] : []
  })
