import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  absoluteHumidity,
  dewMargin,
  dewPoint,
  frostPoint,
  humidityFromWetBulb,
  relativeHumidity,
  saturationVapourPressure,
} from './dew-point.ts'

const airC = fc.double({ min: -40, max: 60, noNaN: true })
const humidityShare = fc.double({ min: 0.01, max: 1, noNaN: true })

describe('dew point', () => {
  it('is the air temperature itself when the air is saturated', () => {
    expect(dewPoint({ airC: 17.3, humidityShare: 1 })).toBeCloseTo(17.3, 10)
  })

  it('gives the humidity back', () => {
    fc.assert(
      fc.property(airC, humidityShare, (t, h) => {
        const dewC = dewPoint({ airC: t, humidityShare: h })
        expect(relativeHumidity({ airC: t, dewC })).toBeCloseTo(h, 9)
      }),
    )
  })

  it('never stands above the air up to saturation and rises with humidity', () => {
    fc.assert(
      fc.property(airC, humidityShare, (t, h) => {
        const dewC = dewPoint({ airC: t, humidityShare: h })
        expect(dewC).toBeLessThanOrEqual(t + 1e-9)
        expect(dewPoint({ airC: t, humidityShare: h * 0.9 })).toBeLessThan(dewC)
      }),
    )
  })

  it('of air without water is the limit of the formula, not a gap in the numbers', () => {
    expect(dewPoint({ airC: 20, humidityShare: 0 })).toBe(-243.12)
    expect(frostPoint({ airC: 20, humidityShare: 0 })).toBe(-272.62)
  })

  it('stands under the frost point below zero and meets it at zero', () => {
    expect(frostPoint({ airC: 5, humidityShare: 0.5 })).toBeGreaterThan(
      dewPoint({ airC: 5, humidityShare: 0.5 }),
    )
    const share = saturationVapourPressure(0) / saturationVapourPressure(10)
    expect(frostPoint({ airC: 10, humidityShare: share })).toBeCloseTo(0, 9)
  })
})

describe('moist air', () => {
  it('holds no water at no humidity and twice the water at twice the humidity', () => {
    expect(absoluteHumidity({ airC: 20, humidityShare: 0 })).toBe(0)
    const half = absoluteHumidity({ airC: 20, humidityShare: 0.5 })
    expect(absoluteHumidity({ airC: 20, humidityShare: 1 })).toBeCloseTo(2 * half, 12)
  })

  it('is saturated when both bulbs read the same', () => {
    expect(humidityFromWetBulb({ airC: 12, wetBulbC: 12, pressurePa: 101_325 })).toBe(1)
  })

  it('leaves a negative margin on a surface colder than the dew point', () => {
    expect(dewMargin({ surfaceC: 9, dewC: 9.7 })).toBeCloseTo(-0.7, 12)
  })
})
