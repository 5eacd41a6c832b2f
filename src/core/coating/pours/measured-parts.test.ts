import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { measuredParts } from './measured-parts.ts'

const inMl = (volume: number, base: number, hardener: number) => {
  const parts = measuredParts({ volume: volume * 1e-6, base, hardener })
  return [parts.base * 1e6, parts.hardener * 1e6].map((ml) => Math.round(ml * 1e6) / 1e6)
}

describe('measured parts', () => {
  it.each([
    ['1:1', 333, 1, 1, [167, 167]],
    ['2:1', 100, 2, 1, [68, 34]],
    ['3:1 written as 75:25', 201, 75, 25, [153, 51]],
    ['5:1', 250, 5, 1, [210, 42]],
    ['4:3', 70, 4, 3, [40, 30]],
    ['a one-part', 87.2, 1, 0, [88, 0]],
    // By the arithmetic: 490 of 500 ml is base at 100:2, and 2 % of 491 ml is 9.8.
    ['catalyst in drops, 100:2', 500, 100, 2, [491, 9.8]],
    ['no small whole numbers, 100:45', 290, 100, 45, [200, 90]],
  ] as const)('of %s', (_, volume, base, hardener, expected) => {
    expect(inMl(volume, base, hardener)).toEqual(expected)
  })

  it('are never short, over by a share at most, and in the ratio', () => {
    const ratio = fc.constantFrom([1, 1], [2, 1], [3, 1], [4, 1], [5, 1], [3, 2], [7, 5])
    fc.assert(
      fc.property(ratio, fc.double({ min: 1, max: 5000, noNaN: true }), ([a = 1, b = 1], ml) => {
        const [base = 0, hardener = 0] = inMl(ml, a, b)
        expect(base * b).toBeCloseTo(hardener * a, 6)
        expect(base + hardener).toBeGreaterThanOrEqual(ml - 1e-5)
        expect(base + hardener).toBeLessThan(ml + a + b)
        expect(Number.isInteger(base) && Number.isInteger(hardener)).toBe(true)
      }),
    )
  })

  it('of any ratio are within half a millilitre, or half a tenth, of it', () => {
    const part = fc.double({ min: 0.5, max: 100, noNaN: true })
    fc.assert(
      fc.property(part, part, fc.double({ min: 20, max: 5000, noNaN: true }), (a, b, ml) => {
        const [base = 0, hardener = 0] = inMl(ml, a, b)
        const exact = (base * b) / a
        expect(Math.abs(hardener - exact)).toBeLessThanOrEqual((exact < 20 ? 0.05 : 0.5) + 1e-4)
        expect(base).toBeGreaterThanOrEqual((ml * a) / (a + b) - 1e-4)
      }),
    )
  })
})
