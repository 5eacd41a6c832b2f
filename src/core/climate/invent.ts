/** Weather of our own invention for the sample jobs: seeded, believable, true of no place. */

import { relativeHumidity } from './dew-point.ts'
import type { Chance } from './invented-chance.ts'
import { chanceFrom, wandering } from './invented-chance.ts'
import { inventFronts } from './invented-fronts.ts'
import type { InventedKind, InventedPlace } from './invented-places.ts'
import { inventedPlaces } from './invented-places.ts'
import type { HourlySeries } from './series.ts'
import { hourMs } from './series.ts'
import { clearSkySun, throughCloud } from './sun/clear-sky.ts'
import type { Place } from './sun/sun-position.ts'
import { sunPosition } from './sun/sun-position.ts'

export type InventedWeather = Place & {
  readonly kind: InventedKind
  /** Start of the first hour, ms since 1970 UTC. */
  readonly startMs: number
  readonly days: number
  readonly seed: number
}

const hoursADay = 24
const yearDays = 365.25
const dayMs = hoursADay * hourMs

/** Hours in which the air near the ground forgets what sun and sky did to it. */
const groundMemoryHours = 6

/** Cover by which a usual day's sun and night's cooling are reckoned. */
const usualCloud = 0.55

/**
 * Invents hourly weather: the year's course and the day's, spells warmer and colder, fronts with cloud, wind, rain
 * and damp air, clear nights that cool to dew, breezes by day, showers on sultry afternoons.
 * @param of.kind what place and season. @param of.latitude, of.longitude rad. @param of.seed a whole number; the same
 * one gives the same weather.
 * @returns air to 0.1 °C, humidity and cloud to 1 %, wind to 0.1 m/s, rain to 0.1 mm, sun to 1 W/m².
 * The figures are rounded, so that engines whose `sin` and `exp` differ in the last bit agree.
 */
export function inventWeather(of: InventedWeather): HourlySeries {
  const hours = of.days * hoursADay
  const place = inventedPlaces[of.kind]
  const chance = chanceFrom(of.seed)
  const front = inventFronts({ hours, place, chance })
  const columns = emptyColumns(hours)
  const next = weatherMaker({ of, place, chance })
  for (let hour = 0; hour < hours; hour++) put(columns, hour, next(hour, front[hour]!))
  return {
    kind: 'hourlySeries',
    startMs: of.startMs,
    hours,
    ...columns,
    gaps: [],
    source: 'invented by a seeded generator for the sample jobs',
    licence: 'invented, free to copy with the program',
  }
}

type Columns = ReturnType<typeof emptyColumns>

function emptyColumns(hours: number) {
  return {
    airC: new Float64Array(hours),
    humidityShare: new Float64Array(hours),
    windMps: new Float64Array(hours),
    rainMm: new Float64Array(hours),
    cloudShare: new Float64Array(hours),
    sunWm2: new Float64Array(hours),
  }
}

type Hour = Readonly<Record<keyof Columns, number>>

function put(columns: Columns, hour: number, weather: Hour): void {
  const tenths = (value: number) => Math.round(value * 10) / 10
  const hundredths = (value: number) => Math.round(value * 100) / 100
  // Adding 0 makes a negative zero plain.
  columns.airC[hour] = tenths(weather.airC) + 0
  columns.humidityShare[hour] = hundredths(weather.humidityShare)
  columns.windMps[hour] = tenths(weather.windMps)
  columns.rainMm[hour] = tenths(weather.rainMm)
  columns.cloudShare[hour] = hundredths(weather.cloudShare)
  columns.sunWm2[hour] = Math.round(weather.sunWm2)
}

type Making = { readonly of: InventedWeather; readonly place: InventedPlace; readonly chance: Chance }

/** Gives the hours one after the other; each depends on the one before. */
function weatherMaker({ of, place, chance }: Making): (hour: number, front: number) => Hour {
  const spell = wandering(chance, 72)
  const damp = wandering(chance, 40)
  const cover = wandering(chance, 10)
  const gust = wandering(chance, 9)
  const ground = groundAir(place)
  const dewAfter = dewPointMaker()
  const rainAfter = rainMaker(place, chance)
  let usualSun = 0
  return (hour, front) => {
    const startMs = of.startMs + hour * hourMs
    const clearSun = clearSkySun(sunPosition({ ...of, atMs: startMs + hourMs / 2 }).altitude)
    const meanC = seasonC(of, place, startMs) + place.spellK * spell() - 2.5 * front
    const gapK = Math.max(0.5, place.dewGapK + place.dewSpreadK * damp())
    const rain = rainAfter({ front, sultry: clearSun > 350 && meanC > 17 && gapK < place.dewGapK + 1 })
    const cloudShare = within(0, 1, place.cloudShare + 0.38 * cover() + 0.9 * front + (rain > 0 ? 0.3 : 0))
    const sunWm2 = clearSun * throughCloud(cloudShare)
    if (hour % hoursADay === 0) usualSun = usualSunOn(of, startMs)
    const airC = meanC + ground({ sunWm2, cloudShare, usualSun }) - (rain > 1 ? 1.5 : 0)
    const dewC = dewAfter({ airC, meanC, gapK, front, rain })
    const breeze = place.breezeMps * (sunWm2 / 800)
    const calm = clearSun > 0 ? 1 : 0.7
    return {
      airC,
      humidityShare: within(0.15, 0.99, relativeHumidity({ airC, dewC })),
      windMps: Math.max(
        0.2,
        place.windMps * calm * Math.exp(0.45 * gust()) + breeze + place.frontWindMps * front,
      ),
      rainMm: rain,
      cloudShare,
      sunWm2,
    }
  }
}

/** Mean air of the season: the year's course, half a year on south of the equator, cooler towards the poles. */
function seasonC(of: InventedWeather, place: InventedPlace, atMs: number): number {
  const half = of.latitude < 0 ? yearDays / 2 : 0
  const day = (atMs / dayMs) % yearDays
  const northOf = ((Math.abs(of.latitude) - place.latitude) * 180) / Math.PI
  const course = Math.cos((2 * Math.PI * (day - place.warmestDay - half)) / yearDays)
  return place.yearMeanC - 0.6 * northOf + place.yearSwingK * course
}

/** Mean light of a usual day, W/m²: the day's clear sky, taken every three hours. */
function usualSunOn(of: InventedWeather, midnight: number): number {
  let sum = 0
  for (let hour = 0; hour < hoursADay; hour += 3)
    sum += clearSkySun(sunPosition({ ...of, atMs: midnight + hour * hourMs }).altitude)
  return (sum / 8) * throughCloud(usualCloud)
}

type GroundStep = { readonly sunWm2: number; readonly cloudShare: number; readonly usualSun: number }

/** How far sun and open sky take the air near the ground off the season's mean, K; 0 on average. */
function groundAir(place: InventedPlace): (step: GroundStep) => number {
  const rate = (sunWm2: number, cloudShare: number) =>
    (place.warming * sunWm2) / 1000 - place.cooling * (1 - 0.75 * cloudShare)
  let off = 0
  return ({ sunWm2, cloudShare, usualSun }) => {
    off += rate(sunWm2, cloudShare) - off / groundMemoryHours
    return off - groundMemoryHours * rate(usualSun, usualCloud)
  }
}

type DewStep = {
  readonly airC: number
  readonly meanC: number
  readonly gapK: number
  readonly front: number
  readonly rain: number
}

/** Dew point: follows the air mass in some hours, is never over the air, and rises in rain. */
function dewPointMaker(): (step: DewStep) => number {
  let dewC: number | undefined
  return ({ airC, meanC, gapK, front, rain }) => {
    const massC = meanC - gapK * (1 - 0.75 * front)
    const targetC = rain > 0 ? Math.max(massC, airC - 1) : massC
    dewC = Math.min(airC, dewC === undefined ? targetC : dewC + (targetC - dewC) / (rain > 0 ? 2 : 4))
    return dewC
  }
}

type RainStep = { readonly front: number; readonly sultry: boolean }

/** Rain of the hour, mm: on and off under a front, and showers of a few hours. */
function rainMaker(place: InventedPlace, chance: Chance): (step: RainStep) => number {
  let showerHours = 0
  return ({ front, sultry }) => {
    const [wet, amount, shower] = [chance.share(), chance.share(), chance.share()]
    // Exponential with mean 1.
    const much = -Math.log(1 - amount)
    if (showerHours > 0) showerHours--
    else if (sultry && shower < place.showerShare) showerHours = shower < place.showerShare / 2 ? 1 : 2
    const showerMm = showerHours > 0 ? 2.5 * much : 0
    const frontMm = front > 0.2 && wet < 0.8 * front + 0.2 ? place.frontRainMm * much : 0
    return showerMm + frontMm < 0.1 ? 0 : showerMm + frontMm
  }
}

function within(least: number, most: number, value: number): number {
  return Math.min(most, Math.max(least, value))
}
