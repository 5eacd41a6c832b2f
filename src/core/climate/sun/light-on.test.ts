import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { fairWeather } from '../fair-weather.ts'
import { extraterrestrialSun } from './extraterrestrial.ts'
import { cosIncidence, normalOf } from './incidence.ts'
import { type Face, lightOn } from './light-on.ts'
import { shelterLight } from './shelter-light.ts'
import { skyLight } from './sky-light.ts'
import { beamOn, groundLight, hayDaviesSky, isotropicSky } from './transposition.ts'

const degree = Math.PI / 180
const light = skyLight({
  series: fairWeather(24, { cloudShare: new Float64Array(24).fill(0.3) }),
  place: { latitude: 44.5 * degree, longitude: -73.2 * degree },
})
const sides = { port: { bearing: 0, tilt: Math.PI / 2 }, starboard: { bearing: Math.PI, tilt: Math.PI / 2 } }
const on = (faces: readonly Face[], under: keyof typeof shelterLight = 'open') =>
  lightOn(light, { faces, albedo: 0.2, under: shelterLight[under] })
const whole = (slope: { readonly bearing: number; readonly tilt: number }) => on([{ ...slope, share: 1 }])
const sum = (values: Float64Array) => values.reduce((total, value) => total + value, 0)

const anySlope = fc.record({
  bearing: fc.double({ min: 0, max: 2 * Math.PI, noNaN: true }),
  tilt: fc.double({ min: 0, max: Math.PI, noNaN: true }),
})

describe('light on a surface', () => {
  it('is on a level one what falls on level ground, whatever the sky', () => {
    const level = whole({ bearing: 1, tilt: 0 })
    level.forEach((value, hour) => {
      expect(value).toBeCloseTo(light.globalWm2[hour]!, 9)
    })
    const flat = { cosTilt: 1, cosIncidence: 0.6 }
    const of = { beamWm2: 500, diffuseWm2: 120, sunUp: 0.6, extraterrestrialWm2: 1367 }
    expect(isotropicSky(of, flat)).toBeCloseTo(120, 12)
    expect(hayDaviesSky(of, flat)).toBeCloseTo(120, 12)
  })

  it('is by the hour what the formulas give one by one', () => {
    fc.assert(
      fc.property(anySlope, fc.integer({ min: 0, max: 23 }), (slope, hour) => {
        const sun = { east: light.sunEast[hour]!, north: light.sunNorth[hour]!, up: light.sunUp[hour]! }
        const normal = normalOf(slope)
        const tilted = { cosTilt: normal.up, cosIncidence: cosIncidence(normal, sun) }
        const level = {
          beamWm2: light.beamWm2[hour]!,
          diffuseWm2: light.diffuseWm2[hour]!,
          globalWm2: light.globalWm2[hour]!,
          sunUp: sun.up,
          extraterrestrialWm2: extraterrestrialSun(Date.UTC(2027, 5, 1, hour, 30)),
        }
        const expected =
          beamOn(level, tilted) + hayDaviesSky(level, tilted) + groundLight({ ...level, albedo: 0.2 }, tilted)
        expect(whole(slope)[hour]).toBeCloseTo(expected, 9)
      }),
    )
  })

  it('is never negative, nor more than the sun full on with sky and ground', () => {
    fc.assert(
      fc.property(anySlope, (slope) => {
        whole(slope).forEach((value, hour) => {
          const most = light.beamWm2[hour]! + 12 * light.diffuseWm2[hour]! + 0.2 * light.globalWm2[hour]!
          expect(value).toBeGreaterThanOrEqual(0)
          expect(value).toBeLessThanOrEqual(most + 1e-9)
        })
      }),
    )
  })

  it('is more by far on the side that looks south than on the one that looks north', () => {
    expect(sum(whole(sides.starboard))).toBeGreaterThan(1.3 * sum(whole(sides.port)))
  })

  it('of a zone is the mean of its faces by their shares', () => {
    const both = on([
      { ...sides.port, share: 0.25 },
      { ...sides.starboard, share: 0.75 },
    ])
    const [port, starboard] = [whole(sides.port), whole(sides.starboard)]
    both.forEach((value, hour) => {
      expect(value).toBeCloseTo(0.25 * port[hour]! + 0.75 * starboard[hour]!, 9)
    })
  })

  it('leaves no sun under a cloth or a roof, and nothing between walls', () => {
    const deck: readonly Face[] = [{ bearing: 0, tilt: 0, share: 1 }]
    const cover = on(deck, 'cover')
    cover.forEach((value, hour) => {
      expect(value).toBeLessThanOrEqual(0.1 * light.diffuseWm2[hour]! + 1e-9)
    })
    expect(sum(cover)).toBeGreaterThan(0)
    expect(sum(on(deck, 'open-sided shed'))).toBeGreaterThan(sum(cover))
    expect(sum(on(deck, 'shed'))).toBe(0)
  })

  it('turns with the bow: a hull turned end for end swaps its sides', () => {
    const turned = (bow: number) =>
      whole({ bearing: bow + Math.PI / 2, tilt: 100 * degree }).map((value) => value)
    const other = (bow: number) => whole({ bearing: bow - Math.PI / 2, tilt: 100 * degree })
    turned(0.7).forEach((value, hour) => {
      expect(value).toBeCloseTo(other(0.7 + Math.PI)[hour]!, 9)
    })
  })
})
