import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { shareOut } from './share-out.ts'

describe('shareOut', () => {
  it('sums to the rounded sum and moves no part by a whole step', () => {
    const amount = fc.double({ min: 0, max: 5000, noNaN: true })
    fc.assert(
      fc.property(
        fc.array(amount, { minLength: 1, maxLength: 6 }),
        fc.constantFrom(1, 0.1),
        (values, step) => {
          const shared = shareOut(values, step)
          const sum = values.reduce((total, value) => total + value, 0)
          const total = shared.reduce((all, value) => all + value, 0)
          expect(Math.abs(total - sum)).toBeLessThanOrEqual(step / 2 + 1e-6)
          shared.forEach((value, index) => {
            expect(Math.abs(value - values[index]!)).toBeLessThan(step + 1e-6)
          })
        },
      ),
    )
  })
})
