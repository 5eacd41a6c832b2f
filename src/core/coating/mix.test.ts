import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { mix, mixMasses } from './mix.ts'

const part = fc.double({ min: 0.01, max: 20, noNaN: true })
const share = fc.double({ min: 0, max: 1, noNaN: true })

describe('mix', () => {
  it('adds up to the volume wanted, without what is stirred in on top', () => {
    fc.assert(
      fc.property(part, part, share, share, (base, hardener, thinnerShare, additiveShare) => {
        const poured = mix({ readyVolume: 1, ratio: { base, hardener }, thinnerShare, additiveShare })
        const sum = poured.baseVolume + poured.hardenerVolume + poured.thinnerVolume
        expect(sum).toBeCloseTo(1, 12)
        expect(poured.baseVolume / poured.hardenerVolume / (base / hardener)).toBeCloseTo(1, 9)
        expect(poured.additiveVolume).toBe(additiveShare)
      }),
    )
  })

  it('reads the same pour from either volume', () => {
    const rest = { ratio: { base: 4, hardener: 1 }, thinnerShare: 0.25, additiveShare: 0 }
    const ready = mix({ ...rest, readyVolume: 1 })
    const parts = mix({ ...rest, partsVolume: ready.partsVolume })
    expect(parts.readyVolume).toBeCloseTo(1, 12)
    expect(parts.thinnerVolume).toBeCloseTo(ready.thinnerVolume, 12)
  })

  it('leaves a one-part paint without hardener', () => {
    const poured = mix({
      readyVolume: 1.1,
      ratio: { base: 1, hardener: 0 },
      thinnerShare: 0.1,
      additiveShare: 0,
    })
    expect(poured.hardenerVolume).toBe(0)
    expect(poured.baseVolume).toBeCloseTo(1, 12)
  })

  it('weighs each part by its own density', () => {
    const poured = mix({
      partsVolume: 0.003,
      ratio: { base: 2, hardener: 1 },
      thinnerShare: 0.1,
      additiveShare: 0,
    })
    const masses = mixMasses(poured, { base: 1300, hardener: 1050, thinner: 870 })
    expect(masses.baseMass).toBeCloseTo(2.6, 12)
    expect(masses.hardenerMass).toBeCloseTo(1.05, 12)
    expect(masses.thinnerMass).toBeCloseTo(0.261, 12)
  })
})
