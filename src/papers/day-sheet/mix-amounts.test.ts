import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { paperPlan } from '../../../test/support/paper-plan.ts'
import { mixAmounts, shareOut } from './mix-amounts.ts'

const pour = paperPlan.pours.pours[0]!

describe('mixAmounts', () => {
  it('rounds so that the parts add up to what the cup reads', () => {
    const { parts, readyMl } = mixAmounts(pour)
    expect(parts.map((part) => [part.part, part.ml, part.toMl])).toEqual([
      ['A', 410, 410],
      ['B', 205, 615],
      ['thinner', 62, 677],
    ])
    expect(readyMl).toBe(677)
  })

  it('gives grams where the weights are known', () => {
    expect(mixAmounts(pour).parts.map((part) => part.g)).toEqual([574, 226, 50])
  })

  it('goes to tenths of a millilitre when a part is a few drops', () => {
    const { parts, decimals } = mixAmounts({
      ...pour,
      partsM3: [0.000324, 0.00000648],
      thinnerM3: 0,
      thinnerKg: 0,
    })
    expect(decimals).toBe(1)
    expect(parts.map((part) => part.ml)).toEqual([324, 6.5])
  })

  it('stirs bead in on top: it is no level of the cup', () => {
    const bead = mixAmounts({ ...pour, additiveM3: 0.0001 }).parts.at(-1)
    expect(bead).toEqual({ part: 'bead', ml: 100 })
  })
})

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
