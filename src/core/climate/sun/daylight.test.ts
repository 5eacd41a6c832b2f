import { describe, expect, it } from 'vitest'
import { fairWeather } from '../fair-weather.ts'
import { hourMs } from '../series.ts'
import { daylight } from './daylight.ts'
import { civilTwilight, sunTimes } from './sun-position.ts'

const degree = Math.PI / 180
/** Obliquity of the ecliptic in 2027, the sun's declination at the solstices: Meeus, ch. 22. */
const obliquity = 23.436 * degree

/** Half the time that the sun stands over an altitude, h: cos H = (sin h - sin φ sin δ) / (cos φ cos δ). */
const halfDay = (latitude: number, declination: number, altitude: number): number =>
  Math.acos(
    (Math.sin(altitude) - Math.sin(latitude) * Math.sin(declination)) /
      (Math.cos(latitude) * Math.cos(declination)),
  ) /
  (15 * degree)

const over = (atMs: number, hours: number) => ({ ...fairWeather(hours), startMs: atMs })

describe('civil twilight', () => {
  it.each([
    [50, Date.UTC(2027, 5, 21, 12), obliquity],
    [-35, Date.UTC(2027, 5, 21, 12), obliquity],
    [50, Date.UTC(2027, 11, 22, 12), -obliquity],
  ])('at %d° lasts as long as the hour angle of 6° down says', (latitude, noonMs, declination) => {
    const { dawnMs, duskMs } = civilTwilight({ latitude: latitude * degree, longitude: 0, noonMs })
    const expected = halfDay(latitude * degree, declination, -6 * degree)
    // A minute: the declination is not quite still, and the day not quite 24 h.
    expect((duskMs! - dawnMs!) / hourMs / 2).toBeCloseTo(expected, 1.7)
  })

  it('begins 20.7 min before sunrise at the equator in March: 5.167° at 15° an hour', () => {
    const at = { latitude: 0, longitude: 0, noonMs: Date.UTC(2027, 2, 20, 12) }
    const { dawnMs } = civilTwilight(at)
    expect((sunTimes(at).riseMs! - dawnMs!) / 60_000).toBeCloseTo(20.7, 0)
  })

  it('never ends in a white night and never comes in a deep polar one', () => {
    const at = (latitude: number, month: number) =>
      civilTwilight({ latitude: latitude * degree, longitude: 0, noonMs: Date.UTC(2027, month, 21, 12) })
        .light
    expect(at(62, 5)).toBe('always')
    expect(at(80, 11)).toBe('never')
    expect(at(68, 11)).toBe('part')
  })
})

describe('daylight by the hour', () => {
  const place = { latitude: 50 * degree, longitude: 0 }
  const startMs = Date.UTC(2027, 2, 20)

  it('is light from the hour after dawn to the hour before dusk, and else tells how far away that is', () => {
    const noonMs = startMs + 12 * hourMs
    const { dawnMs, duskMs } = civilTwilight({ ...place, noonMs })
    const { darkHours } = daylight({ series: over(startMs, 24), place })
    const dawn = (dawnMs! - startMs) / hourMs
    const dusk = (duskMs! - startMs) / hourMs
    darkHours.forEach((dark, hour) => {
      if (hour >= dawn && hour + 1 <= dusk) expect(dark, `${hour}`).toBe(0)
      else expect(dark, `${hour}`).toBeGreaterThan(0)
    })
    expect(darkHours[3]).toBeCloseTo(dawn - 3, 6)
    expect(darkHours[21]).toBeCloseTo(22 - dusk, 6)
  })

  it('counts to the sunset of the same day', () => {
    const { toSunsetHours } = daylight({ series: over(startMs, 48), place })
    const { setMs } = sunTimes({ ...place, noonMs: startMs + 36 * hourMs })
    expect(toSunsetHours[24 + 15]).toBeCloseTo((setMs! - startMs) / hourMs - 40, 6)
    expect(toSunsetHours[24 + 20]).toBeLessThan(0)
  })

  it('is the same wherever the clock of the series begins, also far from Greenwich', () => {
    const auckland = { latitude: -36.8 * degree, longitude: 174.8 * degree }
    const whole = daylight({ series: over(startMs, 96), place: auckland })
    const later = daylight({ series: over(startMs + 31 * hourMs, 65), place: auckland })
    expect(later.darkHours).toEqual(whole.darkHours.slice(31))
    expect(later.toSunsetHours).toEqual(whole.toSunsetHours.slice(31))
    expect([...whole.darkHours].filter((dark) => dark === 0).length).toBeGreaterThan(40)
  })

  it('has no dark hour in a white night, no light one in a polar night', () => {
    const summer = over(Date.UTC(2027, 5, 20), 48)
    const white = daylight({ series: summer, place: { latitude: 64 * degree, longitude: 25 * degree } })
    expect(Math.max(...white.darkHours)).toBe(0)
    const winter = over(Date.UTC(2027, 11, 20), 48)
    const polar = daylight({ series: winter, place: { latitude: 80 * degree, longitude: 15 * degree } })
    expect([...new Set(polar.darkHours)]).toEqual([24])
    expect(polar.toSunsetHours.every(Number.isNaN)).toBe(true)
  })
})
