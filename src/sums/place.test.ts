import { describe, expect, it } from 'vitest'
import { readBearing, readLatitude, readLongitude } from './place.ts'
import { SumError } from './sum-error.ts'

const degrees = (angle: number) => (angle * 180) / Math.PI

describe('latitude and longitude', () => {
  it('are read with a sign, with a letter, and in degrees and minutes', () => {
    expect(degrees(readLatitude('44.5'))).toBeCloseTo(44.5, 9)
    expect(degrees(readLatitude('44.5 N'))).toBeCloseTo(44.5, 9)
    expect(degrees(readLatitude('n44.5°'))).toBeCloseTo(44.5, 9)
    expect(degrees(readLatitude('44° 30′ S'))).toBeCloseTo(-44.5, 9)
    expect(degrees(readLatitude('-44.5'))).toBeCloseTo(-44.5, 9)
    expect(degrees(readLongitude('73.2 W'))).toBeCloseTo(-73.2, 9)
    expect(degrees(readLongitude('-73.2'))).toBeCloseTo(-73.2, 9)
    expect(degrees(readLongitude('180 e'))).toBeCloseTo(180, 9)
  })

  it('are refused out of range, on the wrong axis, with two signs, and when they are no angle', () => {
    for (const text of ['90.1', '44.5 E', '-44.5 N', 'N 44.5 S', '', 'N', 'north', '44,5,1'])
      expect(() => readLatitude(text), text).toThrow(SumError)
    for (const text of ['180.5', '73.2 N', '-73.2 W'])
      expect(() => readLongitude(text), text).toThrow(SumError)
  })
})

describe('bearing', () => {
  it('is a number of degrees, an angle or a compass point', () => {
    expect(degrees(readBearing('bow', '135'))).toBeCloseTo(135, 9)
    expect(degrees(readBearing('bow', '135 deg'))).toBeCloseTo(135, 9)
    expect(degrees(readBearing('bow', ' se '))).toBeCloseTo(135, 9)
    expect(degrees(readBearing('bow', 'NNW'))).toBeCloseTo(337.5, 9)
    expect(() => readBearing('bow', '361')).toThrow(SumError)
    expect(() => readBearing('bow', 'seaward')).toThrow(SumError)
  })
})
