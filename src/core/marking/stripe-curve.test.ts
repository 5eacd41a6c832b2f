import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { stripeCurve } from './stripe-curve.ts'

const places = { sternX: 0, lowX: 2, stemX: 8 }

describe('stripeCurve', () => {
  it('is a parabola on each side of the low point', () => {
    const curve = stripeCurve({ stern: 0.07, low: 0.05, stem: 0.09 }, places)
    expect([0, 1, 2, 5, 8].map(curve)).toEqual([
      expect.closeTo(0.07, 12),
      expect.closeTo(0.055, 12),
      expect.closeTo(0.05, 12),
      expect.closeTo(0.06, 12),
      expect.closeTo(0.09, 12),
    ])
  })

  it('has no corner at the low point', () => {
    const curve = stripeCurve({ stern: 0.3, low: 0.05, stem: 0.4 }, places)
    expect((curve(2 + 1e-6) - curve(2 - 1e-6)) / 2e-6).toBeCloseTo(0, 5)
  })

  it('never leaves the range of its heights between its ends', () => {
    const height = fc.double({ min: 0, max: 1, noNaN: true })
    const heights = fc.record({ stern: height, low: height, stem: height })
    fc.assert(
      fc.property(heights, fc.double({ min: 0, max: 8, noNaN: true }), (given, x) => {
        const z = stripeCurve(given, places)(x)
        expect(z).toBeGreaterThanOrEqual(Math.min(...Object.values(given)) - 1e-12)
        expect(z).toBeLessThanOrEqual(Math.max(...Object.values(given)) + 1e-12)
      }),
    )
  })
})
