/** Where the sun stands, after the low-precision formulas of the Astronomical Almanac, page C5: within 0.02°. */

const degree = Math.PI / 180
const dayMs = 86_400_000
const j2000Ms = Date.UTC(2000, 0, 1, 12)

export type SunSeen = {
  /** Of the sun's centre, refraction left out, °. */
  readonly altitude: number
  /** Local solar time, h from 0 to 24: 12 when the sun is highest. */
  readonly solarHour: number
}

/** @param at.latitude °, north positive. @param at.longitude °, east positive. */
export function sunSeen(at: {
  readonly latitude: number
  readonly longitude: number
  readonly atMs: number
}): SunSeen {
  const days = (at.atMs - j2000Ms) / dayMs
  const meanLongitude = 280.46 + 0.9856474 * days
  const anomaly = (357.528 + 0.9856003 * days) * degree
  const longitude = (meanLongitude + 1.915 * Math.sin(anomaly) + 0.02 * Math.sin(2 * anomaly)) * degree
  const obliquity = (23.439 - 0.0000004 * days) * degree
  const rightAscension = Math.atan2(Math.cos(obliquity) * Math.sin(longitude), Math.cos(longitude))
  const declination = Math.asin(Math.sin(obliquity) * Math.sin(longitude))
  const siderealHours = 18.697375 + 24.065709824279 * days
  const hourAngle = (siderealHours * 15 + at.longitude) * degree - rightAscension
  const latitude = at.latitude * degree
  const sine =
    Math.sin(latitude) * Math.sin(declination) +
    Math.cos(latitude) * Math.cos(declination) * Math.cos(hourAngle)
  const turns = hourAngle / (2 * Math.PI) + 0.5
  return { altitude: Math.asin(sine) / degree, solarHour: 24 * (turns - Math.floor(turns)) }
}
