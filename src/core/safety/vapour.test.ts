import { describe, expect, it } from 'vitest'
import { massConcentration, molarVolume, molarVolume25C, molarVolume70F, vapourPerLiquid } from './vapour.ts'

const atmospherePa = 101_325

describe('molar volume', () => {
  it('is 24.45 L/mol at 25 °C and within 0.2 % of 387 ft³/lb-mol at 70 °F', () => {
    expect(molarVolume({ airC: 25, pressurePa: atmospherePa })).toBeCloseTo(molarVolume25C, 4)
    const seventy = molarVolume({ airC: (70 - 32) / 1.8, pressurePa: atmospherePa })
    expect(Math.abs(molarVolume70F / seventy - 1)).toBeLessThan(0.002)
  })
})

describe('vapour', () => {
  it('weighs what the liquid weighed', () => {
    const molarMass = 0.1042
    const volume = vapourPerLiquid({ specificGravity: 0.91, molarMass, molarVolume: molarVolume25C })
    const density = massConcentration({ share: 1, molarMass, molarVolume: molarVolume25C })
    expect(volume * density).toBeCloseTo(910, 9)
  })
})
