import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  glassDensity,
  laminatePerArea,
  plyThickness,
  polyesterDensity,
  resinPerArea,
} from './ply-thickness.ts'

const densities = { glassDensity, resinDensity: polyesterDensity }

describe('ply thickness', () => {
  it('is the ISO form, term for term', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.05, max: 2, noNaN: true }),
        fc.double({ min: 0.1, max: 0.9, noNaN: true }),
        (areicMass, glassShare) => {
          const metres = plyThickness({ areicMass, glassShare, ...densities })
          const iso = (areicMass / 3.072) * (2.56 / glassShare - 1.36)
          expect((1000 * metres) / iso).toBeCloseTo(1, 12)
        },
      ),
    )
  })

  it('needs no resin when the ply is all glass', () => {
    expect(resinPerArea({ areicMass: 0.45, glassShare: 1 })).toBe(0)
  })

  it('weighs glass and resin together', () => {
    const ply = { areicMass: 0.6, glassShare: 0.48 }
    expect(laminatePerArea(ply)).toBeCloseTo(ply.areicMass + resinPerArea(ply), 12)
  })
})
