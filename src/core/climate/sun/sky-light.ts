/** Sun and sky over a place, hour by hour, from whatever the weather says of them. */
import type { HourlySeries } from '../series.ts'
import { hourMs, startOfHour, valueAt } from '../series.ts'
import { clearSkySun, throughCloud } from './clear-sky.ts'
import { beamFrom, partLight } from './erbs.ts'
import { extraterrestrialSun } from './extraterrestrial.ts'
import { towardsSun } from './incidence.ts'
import type { Place } from './sun-position.ts'
import { sunPosition } from './sun-position.ts'

/** What an hour's light was worked from. */
export type LightFrom = 'measured' | 'parted' | 'cloud' | 'clear'

export type SkyLight = {
  readonly hours: number
  /** Where the sun stands at the middle of each hour: a unit vector east, north, up. */
  readonly sunEast: Float64Array
  readonly sunNorth: Float64Array
  readonly sunUp: Float64Array
  /** The sun alone on a surface that faces it, mean over the hour, W/m². */
  readonly beamWm2: Float64Array
  /** The sky alone on a level surface, mean over the hour, W/m². */
  readonly diffuseWm2: Float64Array
  /** Both on a level surface, mean over the hour, W/m². */
  readonly globalWm2: Float64Array
  /** Share of the sky's light that comes from about the sun, 0..1. */
  readonly aboutSun: Float64Array
  /** How many hours of daylight were worked from what. */
  readonly from: Readonly<Record<LightFrom, number>>
}

/**
 * Light over a place by the hour, each hour from the best that is known of it:
 * `measured` sun and sky apart (two of sun, sky and their sum); `parted` their sum alone, parted after Erbs and others;
 * `cloud` a clear sky's light taken down by the cloud, then parted; `clear` nothing known, so a clear sky: for a skin in
 * the sun the warmer guess.
 * @param at.series weather; only its light and cloud are read. @param at.place latitude and longitude, rad.
 * @returns no hour is unknown; with the sun down there is no beam.
 */
export function skyLight(at: { readonly series: HourlySeries; readonly place: Place }): SkyLight {
  const { series } = at
  const { latitude, longitude } = at.place
  const { hours } = series
  const column = () => new Float64Array(hours)
  const light = {
    hours,
    sunEast: column(),
    sunNorth: column(),
    sunUp: column(),
    beamWm2: column(),
    diffuseWm2: column(),
    globalWm2: column(),
    aboutSun: column(),
  }
  const from = { measured: 0, parted: 0, cloud: 0, clear: 0 }
  for (let hour = 0; hour < hours; hour++) {
    const atMs = startOfHour(series, hour) + hourMs / 2
    const position = sunPosition({ latitude, longitude, atMs })
    const sun = towardsSun(position)
    const extraterrestrialWm2 = extraterrestrialSun(atMs)
    const found = lightAt(series, { hour, altitude: position.altitude, sunUp: sun.up, extraterrestrialWm2 })
    light.sunEast[hour] = sun.east
    light.sunNorth[hour] = sun.north
    light.sunUp[hour] = sun.up
    light.beamWm2[hour] = found.beamWm2
    light.diffuseWm2[hour] = found.diffuseWm2
    light.globalWm2[hour] = found.globalWm2
    light.aboutSun[hour] = Math.min(1, found.beamWm2 / extraterrestrialWm2)
    if (sun.up > 0) from[found.from]++
  }
  return { ...light, from }
}

type At = {
  readonly hour: number
  readonly altitude: number
  readonly sunUp: number
  readonly extraterrestrialWm2: number
}

type Found = {
  readonly beamWm2: number
  readonly diffuseWm2: number
  readonly globalWm2: number
  readonly from: LightFrom
}

function lightAt(series: HourlySeries, at: At): Found {
  return measuredLight(series, at) ?? workedLight(series, at)
}

/** Two of sun, sky and their sum give the third. */
function measuredLight(series: HourlySeries, at: At): Found | undefined {
  const told = (column: HourlySeries['sunWm2']) => valueAt(column, at.hour)
  const [sum, beam, sky] = [told(series.sunWm2), told(series.sunBeamWm2), told(series.sunDiffuseWm2)]
  const up = Math.max(0, at.sunUp)
  const sun = at.sunUp > 0 ? beam : 0
  if (!Number.isNaN(sky)) {
    const beamWm2 = Number.isNaN(sun) ? beamFrom({ ...at, globalWm2: sum, diffuseWm2: sky }) : sun
    if (Number.isNaN(beamWm2)) return undefined
    return found(beamWm2, sky, Number.isNaN(sum) ? sky + beamWm2 * up : sum)
  }
  if (Number.isNaN(sum) || Number.isNaN(beam)) return undefined
  return found(sun, Math.max(0, sum - sun * up), sum)
}

const found = (beamWm2: number, diffuseWm2: number, globalWm2: number): Found => ({
  beamWm2,
  diffuseWm2,
  globalWm2,
  from: 'measured',
})

function workedLight(series: HourlySeries, at: At): Found {
  const told = valueAt(series.sunWm2, at.hour)
  const isTold = !Number.isNaN(told)
  const cloud = isTold ? Number.NaN : valueAt(series.cloudShare, at.hour)
  const globalWm2 = isTold ? told : clearSkySun(at.altitude) * (Number.isNaN(cloud) ? 1 : throughCloud(cloud))
  const { sunUp, extraterrestrialWm2 } = at
  const { beamWm2, diffuseWm2 } = partLight({ globalWm2, sunUp, extraterrestrialWm2 })
  return { beamWm2, diffuseWm2, globalWm2, from: isTold ? 'parted' : Number.isNaN(cloud) ? 'clear' : 'cloud' }
}
