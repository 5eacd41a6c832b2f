import fc from 'fast-check'
// @ts-expect-error The package has no types.
import psychrolib from 'psychrolib'
import { describe, expect, it } from 'vitest'
import { dewPoint, saturationVapourPressure } from './dew-point.ts'
import { mixingRatio, standardPressurePa, wetBulb } from './wet-bulb.ts'

const pressurePa = standardPressurePa
const airC = fc.double({ min: -30, max: 50, noNaN: true })
const humidityShare = fc.double({ min: 0.02, max: 1, noNaN: true })

psychrolib.SetUnitSystem(psychrolib.SI)

describe('wet bulb', () => {
  it('stands between dew point and air, and is the air when that is saturated', () => {
    fc.assert(
      fc.property(airC, humidityShare, (t, h) => {
        const air = { airC: t, humidityShare: h, pressurePa }
        expect(wetBulb(air)).toBeLessThanOrEqual(t)
        // Frozen bulbs stand over ice, dew points over water: there they may meet.
        expect(wetBulb(air)).toBeGreaterThan(dewPoint(air) - 0.01)
      }),
    )
    expect(wetBulb({ airC: 12, humidityShare: 1, pressurePa })).toBe(12)
    expect(wetBulb({ airC: 12, humidityShare: 1.04, pressurePa })).toBe(12)
  })

  it('falls with the humidity and with thinner air', () => {
    const at = (share: number, pa = pressurePa) => wetBulb({ airC: 25, humidityShare: share, pressurePa: pa })
    expect(at(0.5)).toBeLessThan(at(0.6))
    expect(at(0.5, 85_000)).toBeLessThan(at(0.5))
    expect(at(0)).toBeLessThan(at(0.01))
  })
})

// 0.05 K: our Magnus curve lies up to 0.4 % under theirs, and the bulb follows. From 0 °C up: below it the package takes
// humidity over ice, we over water.
describe('the psychrolib package, at the pressure of sea level', () => {
  it('has the same wet bulb within 0.05 K from 0 to 45 °C', () => {
    for (let t = 0; t <= 45; t += 5) {
      for (let share = 0.2; share <= 1.0001; share += 0.1) {
        const h = Math.min(share, 1)
        const theirs = psychrolib.GetTWetBulbFromRelHum(t, h, pressurePa)
        expect(
          Math.abs(wetBulb({ airC: t, humidityShare: h, pressurePa }) - theirs),
          `${t} ${h}`,
        ).toBeLessThan(0.05)
      }
    }
  })

  it('has the same mixing ratio from the same vapour pressure', () => {
    for (let t = 0; t <= 45; t += 5) {
      const theirs = psychrolib.GetHumRatioFromVapPres(0.6 * saturationVapourPressure(t), pressurePa)
      // Their ratio of molar masses has six figures, as ours.
      expect(mixingRatio({ airC: t, humidityShare: 0.6, pressurePa }) / theirs).toBeCloseTo(1, 6)
    }
  })

  it('has the same mixing ratio within 0.4 %', () => {
    for (let t = 0; t <= 45; t += 5) {
      const theirs = psychrolib.GetHumRatioFromRelHum(t, 0.5, pressurePa)
      expect(
        Math.abs(mixingRatio({ airC: t, humidityShare: 0.5, pressurePa }) / theirs - 1),
        `${t}`,
      ).toBeLessThan(0.004)
    }
  })
})
