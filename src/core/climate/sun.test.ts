import { describe, expect, it } from 'vitest'
import { type BoatSide, litSides, sunPosition, sunTimes } from './sun.ts'

const degree = Math.PI / 180
const lit = (sides: ReturnType<typeof litSides>): BoatSide[] =>
  sides.filter((side) => side.lit).map((side) => side.side)

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

describe('lit sides', () => {
  it('light port and deck when the sun stands abeam to port', () => {
    const sides = litSides({ altitude: 30 * degree, azimuth: 0, bowBearing: Math.PI / 2 })
    expect(lit(sides)).toEqual(['port', 'deck'])
    expect(sides[0]?.incidence).toBeCloseTo(Math.cos(30 * degree), 12)
    expect(sides[4]?.incidence).toBeCloseTo(0.5, 12)
  })

  it('light bow, and neither side, when the sun stands dead ahead', () => {
    expect(lit(litSides({ altitude: 0.5, azimuth: 1.2, bowBearing: 1.2 }))).toEqual(['bow', 'deck'])
  })

  it('light starboard and transom with the sun on the starboard quarter', () => {
    const sides = litSides({ altitude: 0.4, azimuth: 135 * degree, bowBearing: 0 })
    expect(lit(sides)).toEqual(['starboard', 'transom', 'deck'])
  })

  it('are all dark at night', () => {
    expect(lit(litSides({ altitude: -0.01, azimuth: 3, bowBearing: 0 }))).toEqual([])
  })

  it('light only the deck with the sun overhead', () => {
    expect(lit(litSides({ altitude: Math.PI / 2, azimuth: 0, bowBearing: 0 }))).toEqual(['deck'])
  })
})
