import { describe, expect, it } from 'vitest'
import { fairWeather } from '../fair-weather.ts'
import { beamOnFaces } from './beam-on-faces.ts'
import { lightOn } from './light-on.ts'
import { skyLight } from './sky-light.ts'

const place = { latitude: 0.9, longitude: 0.1 }
const light = skyLight({ series: { ...fairWeather(48), startMs: Date.UTC(2027, 5, 20) }, place })
const side = (bearing: number, share = 1) => ({ bearing, tilt: Math.PI / 2, share })

describe('the sun on a zone', () => {
  it('on the level is the beam by the sine of its height', () => {
    const deck = beamOnFaces(light, [{ bearing: 0, tilt: 0, share: 1 }])
    deck.forEach((beam, hour) => {
      expect(beam).toBeCloseTo(light.beamWm2[hour]! * Math.max(0, light.sunUp[hour]!), 9)
    })
    expect(Math.max(...deck)).toBeGreaterThan(400)
  })

  it('never stands on both of two sides that look away from each other', () => {
    const [east, west] = [
      beamOnFaces(light, [side(Math.PI / 2)]),
      beamOnFaces(light, [side((3 * Math.PI) / 2)]),
    ]
    east.forEach((beam, hour) => {
      expect(Math.min(beam, west[hour]!)).toBe(0)
    })
    expect(Math.max(...east)).toBeGreaterThan(300)
  })

  it('is the mean over the pieces, and no more than all the light there', () => {
    const both = [side(1, 0.25), side(2, 0.75)]
    const [a, b] = [beamOnFaces(light, [side(1)]), beamOnFaces(light, [side(2)])]
    const all = lightOn(light, { faces: both, albedo: 0, under: { beamShare: 1, diffuseShare: 1 } })
    beamOnFaces(light, both).forEach((beam, hour) => {
      expect(beam).toBeCloseTo(0.25 * a[hour]! + 0.75 * b[hour]!, 9)
      expect(beam).toBeLessThanOrEqual(all[hour]! + 1e-9)
    })
  })
})
