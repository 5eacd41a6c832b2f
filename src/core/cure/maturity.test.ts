import { describe, expect, it } from 'vitest'
import { ageFactor, equivalentAge, maturity } from './maturity.ts'

describe('maturity', () => {
  it('counts nothing at or below the datum, and never takes back what was gained', () => {
    const spans = [
      { airC: 20, hours: 12 },
      { airC: 0, hours: 6 },
      { airC: -8, hours: 6 },
    ]
    expect(maturity({ datumC: 0, spans })).toBe(240)
    expect(maturity({ datumC: -10, spans })).toBe(12 * 30 + 6 * 10 + 6 * 2)
  })
})

describe('equivalent age', () => {
  it('is the clock itself at the reference temperature', () => {
    expect(ageFactor({ activationEnergy: 50_000, referenceC: 23, airC: 23 })).toBe(1)
    const spans = [{ airC: 23, hours: 5 }]
    expect(equivalentAge({ activationEnergy: 50_000, referenceC: 23, spans })).toBe(5)
  })
})
