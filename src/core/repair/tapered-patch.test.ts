import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { patchMasses, taperedPatch } from './tapered-patch.ts'

const hole = fc.double({ min: 0, max: 0.3, noNaN: true })
const thickness = fc.double({ min: 0.001, max: 0.02, noNaN: true })
const ratio = fc.double({ min: 4, max: 50, noNaN: true })
const plies = fc.integer({ min: 1, max: 20 })

describe('tapered patch', () => {
  it('ends with a disc as wide as the taper', () => {
    fc.assert(
      fc.property(hole, thickness, ratio, plies, (d, t, k, n) => {
        const patch = taperedPatch({ hole: d, thickness: t, ratio: k, plies: n })
        expect(patch.discs).toHaveLength(n)
        expect(patch.discs.at(-1)?.diameter).toBeCloseTo(patch.outerDiameter, 12)
      }),
    )
  })

  it('fills the frustum but for π t s² / 48 with discs as wide as the middle of their ply', () => {
    fc.assert(
      fc.property(hole, thickness, ratio, plies, (d, t, k, n) => {
        const patch = taperedPatch({ hole: d, thickness: t, ratio: k, plies: n })
        const missing = patch.volume - (t / n) * patch.middleArea
        expect(missing / patch.volume).toBeCloseTo((Math.PI * t * patch.step ** 2) / 48 / patch.volume, 9)
      }),
    )
  })

  it('takes more cloth as cut than fits untrimmed', () => {
    const patch = taperedPatch({ hole: 0.05, thickness: 0.006, ratio: 12, plies: 6 })
    expect(patch.clothArea).toBeGreaterThan(patch.middleArea)
    const masses = patchMasses(patch, { areicMass: 0.45, glassShare: 0.3 })
    expect(masses.resinMass / masses.glassMass).toBeCloseTo(7 / 3, 12)
  })
})
