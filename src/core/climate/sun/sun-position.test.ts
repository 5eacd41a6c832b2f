import { existsSync, readFileSync } from 'node:fs'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { sunPosition, sunTimes } from './sun-position.ts'

const degree = Math.PI / 180

describe('sun position', () => {
  it('stands in the south at noon north of the tropics and in the north south of them', () => {
    const atMs = Date.UTC(2026, 2, 20, 12)
    const north = sunPosition({ latitude: 50 * degree, longitude: 0, atMs })
    const south = sunPosition({ latitude: -50 * degree, longitude: 0, atMs })
    expect(north.azimuth / degree).toBeGreaterThan(170)
    expect(north.azimuth / degree).toBeLessThan(190)
    expect(Math.cos(south.azimuth)).toBeGreaterThan(0.99)
  })

  it('comes up in the east, counted east positive', () => {
    const morning = sunPosition({ latitude: 0.5, longitude: 0, atMs: Date.UTC(2026, 2, 20, 8) })
    expect(morning.azimuth).toBeGreaterThan(0)
    expect(morning.azimuth).toBeLessThan(Math.PI)
    const further = sunPosition({ latitude: 0.5, longitude: 0.3, atMs: Date.UTC(2026, 2, 20, 8) })
    expect(further.altitude).toBeGreaterThan(morning.altitude)
  })
})

describe('sun times', () => {
  it('say that the sun neither rises nor sets in a polar summer and winter', () => {
    const place = { latitude: 70 * degree, longitude: 25 * degree }
    expect(sunTimes({ ...place, noonMs: Date.UTC(2026, 5, 21, 11) }).up).toBe('always')
    const winter = sunTimes({ ...place, noonMs: Date.UTC(2026, 11, 21, 11) })
    expect(winter.up).toBe('never')
    expect(winter).not.toHaveProperty('riseMs')
  })
})

describe('sun anywhere, at any time', () => {
  const anywhere = fc.record({
    latitude: fc.double({ min: -Math.PI / 2, max: Math.PI / 2, noNaN: true }),
    longitude: fc.double({ min: -Math.PI, max: Math.PI, noNaN: true }),
    atMs: fc.integer({ min: Date.UTC(1970, 0, 1), max: Date.UTC(2070, 0, 1) }),
  })

  it('has a height and a bearing', () => {
    fc.assert(
      fc.property(anywhere, (at) => {
        const { altitude, azimuth } = sunPosition(at)
        expect(Math.abs(altitude)).toBeLessThanOrEqual(Math.PI / 2 + 1e-9)
        expect(azimuth).toBeGreaterThanOrEqual(0)
        expect(azimuth).toBeLessThanOrEqual(2 * Math.PI)
      }),
    )
  })

  it('rises before noon and sets after it, or says that it does neither', () => {
    fc.assert(
      fc.property(anywhere, (at) => {
        const times = sunTimes({ ...at, noonMs: at.atMs })
        expect(Number.isFinite(times.noonMs)).toBe(true)
        if (times.up === 'rises') {
          expect(times.riseMs).toBeLessThanOrEqual(times.noonMs)
          expect(times.setMs).toBeGreaterThanOrEqual(times.noonMs)
          return
        }
        expect(times).not.toHaveProperty('riseMs')
        expect(times).not.toHaveProperty('setMs')
        const noon = sunPosition({ ...at, atMs: times.noonMs }).altitude
        // The upper limb's height as seen, with a little for how refraction is rounded at the horizon.
        if (times.up === 'never') expect(noon).toBeLessThan(-0.2 * degree)
        else expect(noon).toBeGreaterThan(-0.4 * degree)
      }),
    )
  })

  it('has its seasons turned round south of the equator', () => {
    const dayHours = (latitude: number, month: number) => {
      const { riseMs, setMs } = sunTimes({ latitude, longitude: 0, noonMs: Date.UTC(2026, month, 21, 12) })
      return ((setMs ?? Number.NaN) - (riseMs ?? Number.NaN)) / 3_600_000
    }
    expect(dayHours(-0.7, 11)).toBeCloseTo(dayHours(0.7, 5), 1)
    expect(dayHours(-0.7, 5)).toBeCloseTo(dayHours(0.7, 11), 1)
    expect(dayHours(-0.7, 11)).toBeGreaterThan(14)
  })
})

describe('every position of the laboratory’s list', () => {
  const file = new URL('../../../../../shared/references/data/spa_positions.csv', import.meta.url)
  const why = 'skipped where spa_positions.csv is not beside the checkout'

  // Tolerances: 0.05° and 0.15° move a shadow on a hull of 3 m freeboard by less than a centimetre.
  it.skipIf(!existsSync(file))(`is met within 0.05° of zenith to 85° and 0.15° of azimuth (${why})`, () => {
    const rows = readFileSync(file, 'utf8')
      .trim()
      .split('\n')
      .slice(1)
      .map((row) => row.split(',').map(Number))
    expect(rows).toHaveLength(361)
    expect(rows.filter(([, , , , zenith]) => zenith! < 85).length).toBe(160)
    for (const [latitude, longitude, unixS, , apparentZenith, azimuth] of rows) {
      const seen = sunPosition({
        latitude: latitude! * degree,
        longitude: longitude! * degree,
        atMs: 1000 * unixS!,
      })
      if (apparentZenith! < 85)
        expect(Math.abs(90 - seen.altitude / degree - apparentZenith!)).toBeLessThan(0.05)
      const off = Math.abs(seen.azimuth / degree - azimuth!)
      expect(Math.min(off, 360 - off)).toBeLessThan(0.15)
    }
  })
})
