import { describe, expect, it } from 'vitest'
import { brushCoverageBands, lossBands } from './loss-bands.ts'

describe('loss bands', () => {
  it('are shares with a source, least before most', () => {
    for (const band of lossBands) {
      expect(band.least).toBeGreaterThan(0)
      expect(band.least).toBeLessThanOrEqual(band.most)
      expect(band.most).toBeLessThan(1)
      expect(band.source).not.toBe('')
    }
  })

  it('give brush coverage in m²/m³: 400 to 600 ft²/gal on the first coat is 9.8 to 14.7 m²/L', () => {
    expect(brushCoverageBands[0]?.least).toBeCloseTo(9817, 0)
    expect(brushCoverageBands[0]?.most).toBeCloseTo(14725, 0)
  })
})
