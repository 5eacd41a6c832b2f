import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { gauss3, gauss4, gauss5, integrate, integrateAdaptively } from './gauss-legendre.ts'

describe('Gauss-Legendre rules', () => {
  it.each([
    ['three', gauss3, 5],
    ['four', gauss4, 7],
    ['five', gauss5, 9],
  ] as const)('of %s points integrate every power up to their degree exactly', (_, rule, degree) => {
    for (let power = 0; power <= degree; power++) {
      const got = integrate(rule, { of: (t) => t ** power, from: 0, to: 1 })
      expect(got).toBeCloseTo(1 / (power + 1), 14)
    }
    const beyond = integrate(rule, { of: (t) => t ** (degree + 1), from: 0, to: 1 })
    expect(Math.abs(beyond - 1 / (degree + 2))).toBeGreaterThan(1e-8)
  })

  it('turn the sign with the limits', () => {
    fc.assert(
      fc.property(fc.double({ min: -5, max: 5, noNaN: true }), (to) => {
        const forward = integrate(gauss4, { of: Math.exp, from: 0, to })
        const back = integrate(gauss4, { of: Math.exp, from: to, to: 0 })
        expect(forward).toBeCloseTo(-back, 9)
      }),
    )
  })
})

describe('an integral by halving', () => {
  it('settles on a corner and on an upright tangent', () => {
    const corner = integrateAdaptively({ of: (t) => Math.abs(t - 0.3), from: 0, to: 1 }, 1e-10)
    expect(corner).toBeCloseTo((0.3 ** 2 + 0.7 ** 2) / 2, 9)
    expect(integrateAdaptively({ of: Math.sqrt, from: 0, to: 1 }, 1e-10)).toBeCloseTo(2 / 3, 9)
  })

  it('ends even when there is nothing to settle on', () => {
    expect(integrateAdaptively({ of: () => Number.NaN, from: 0, to: 1 }, 1e-10)).toBeNaN()
  })
})
