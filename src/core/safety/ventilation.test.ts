import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { airForExposure, airForLel, lelFractions } from './ventilation.ts'

describe('air against fire', () => {
  it('leaves the vapour at the fraction of the limit, counted in vapour and air together', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 50, max: 500, noNaN: true }),
        fc.double({ min: 0.005, max: 0.1, noNaN: true }),
        (vapourPerLiquid, lelShare) => {
          const air = airForLel({ vapourPerLiquid, lelShare, fraction: 1 })
          expect(vapourPerLiquid / (vapourPerLiquid + air)).toBeCloseTo(lelShare, 12)
        },
      ),
    )
  })

  it('takes four times the air for a quarter of the limit and ten times for a tenth', () => {
    const solvent = { vapourPerLiquid: 200, lelShare: 0.01 }
    const whole = airForLel({ ...solvent, fraction: 1 })
    expect(airForLel({ ...solvent, fraction: lelFractions.spray }) / whole).toBeCloseTo(4, 12)
    expect(airForLel({ ...solvent, fraction: lelFractions.californiaSpray }) / whole).toBeCloseTo(5, 12)
    expect(airForLel({ ...solvent, fraction: lelFractions.shipyard }) / whole).toBeCloseTo(10, 12)
  })
})

describe('air for the lungs', () => {
  it('grows with the rate and with bad mixing, and is far more than fire needs', () => {
    const work = { liquidRate: 0.001, vapourPerLiquid: 200, limitShare: 50e-6, mixing: 1 }
    const air = airForExposure(work)
    expect(air).toBeCloseTo(4000, 9)
    expect(airForExposure({ ...work, mixing: 5, liquidRate: 0.002 })).toBeCloseTo(10 * air, 9)
    const fire = 0.001 * airForLel({ vapourPerLiquid: 200, lelShare: 0.01, fraction: 0.1 })
    expect(air).toBeGreaterThan(10 * fire)
  })
})
