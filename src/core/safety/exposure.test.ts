import { describe, expect, it } from 'vitest'
import { mixtureExposure, timeWeightedMean } from './exposure.ts'

describe('shift mean', () => {
  it('counts the hours not listed as clean air', () => {
    const spans = [{ concentration: 100, hours: 4 }]
    expect(timeWeightedMean({ spans, shiftHours: 8 })).toBe(50)
    expect(timeWeightedMean({ spans: [], shiftHours: 8 })).toBe(0)
  })
})

describe('mixture', () => {
  it('is at its limit when one part is, and passes it with any more', () => {
    const atLimit = [{ concentration: 50, limit: 50 }]
    expect(mixtureExposure(atLimit)).toBe(1)
    expect(mixtureExposure([...atLimit, { concentration: 1, limit: 100 }])).toBeGreaterThan(1)
  })
})
