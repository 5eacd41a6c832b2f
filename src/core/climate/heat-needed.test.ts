import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { dewPoint, relativeHumidity } from './dew-point.ts'
import { riseNeeded } from './heat-needed.ts'

describe('the rise that is needed', () => {
  it.each([
    // Dew points of trade table 1650: 10 °C and 70 % is 4.7 °C, 15 °C and 90 % is 13.4 °C.
    [
      'cold air, dry enough',
      { airC: 8, humidityShare: 0.5, airLeastC: 12, humidityMost: 0.85, dewMarginK: 3 },
      4,
    ],
    ['air within the margin', { airC: 15, humidityShare: 0.9, dewMarginK: 3 }, 1.4],
    ['air that does', { airC: 20, humidityShare: 0.5, airLeastC: 10, humidityMost: 0.85, dewMarginK: 3 }, 0],
  ])('of %s', (_, wanted, riseK) => {
    expect(riseNeeded(wanted)).toBeCloseTo(riseK, 1)
  })

  it('brings the air within every limit, and no less would', () => {
    const cases = fc.record({
      airC: fc.double({ min: -5, max: 30, noNaN: true }),
      humidityShare: fc.double({ min: 0.3, max: 1, noNaN: true }),
      airLeastC: fc.double({ min: 5, max: 18, noNaN: true }),
      humidityMost: fc.double({ min: 0.5, max: 0.9, noNaN: true }),
      dewMarginK: fc.double({ min: 1, max: 5, noNaN: true }),
    })
    fc.assert(
      fc.property(cases, (wanted) => {
        const { airC, airLeastC, humidityMost, dewMarginK } = wanted
        const dewC = dewPoint(wanted)
        const keeps = (warmC: number): boolean =>
          warmC >= airLeastC &&
          relativeHumidity({ airC: warmC, dewC }) <= humidityMost &&
          warmC - dewC >= dewMarginK
        const rise = riseNeeded(wanted)
        expect(keeps(airC + rise + 1e-6)).toBe(true)
        if (rise > 0.01) expect(keeps(airC + rise - 0.01)).toBe(false)
      }),
    )
  })
})
