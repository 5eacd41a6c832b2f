import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type EstimateInput, estimate, estimateGroups } from './estimate.ts'
import type { LineInput } from './line.ts'

const empty: EstimateInput = {
  labour: [],
  materials: [],
  consumables: [],
  costs: [],
  changes: [],
  marginShare: 0.2,
  taxShare: 0.19,
  depositShare: 0.3,
}

const line = (id: string, quantity: number, unitCoins?: number): LineInput => ({
  id,
  quantity,
  ...(unitCoins === undefined ? {} : { unitCoins }),
})

describe('estimate', () => {
  it('sums a small job to the coin', () => {
    const got = estimate({
      ...empty,
      labour: [line('lead', 40.5, 5500), line('helper', 12, 3200)],
      materials: [line('gloss', 2, 8995)],
      consumables: [line('discs', 20, 85)],
      costs: [line('lift', 1, 31000)],
      changes: [line('core', 1, 12000)],
    })
    expect(got.subtotals).toEqual({
      labour: 222750 + 38400,
      materials: 17990,
      consumables: 1700,
      costs: 31000,
      changes: 12000,
    })
    expect(got.marginCoins).toBe(3938)
    expect(got.netCoins).toBe(327778)
    expect(got.taxCoins).toBe(62278)
    expect(got.totalCoins).toBe(390056)
    expect(got.depositCoins).toBe(117017)
    expect(got).toMatchObject({ complete: true, notes: [] })
  })

  it('adds the margin to materials and consumables only', () => {
    const lines = [line('a', 1, 1000)]
    const margins = estimateGroups.map((group) => estimate({ ...empty, [group]: lines }).marginCoins)
    expect(margins).toEqual([0, 200, 200, 0, 0])
  })

  it('goes on without a price, and says that the sum is not complete', () => {
    const got = estimate({ ...empty, materials: [line('gloss', 2), line('primer', 1, 4000)] })
    expect(got.lines.materials[0]?.coins).toBeUndefined()
    expect(got.subtotals.materials).toBe(4000)
    expect(got.complete).toBe(false)
    expect(got.notes).toEqual([{ code: 'money.priceMissing', severity: 'missing', data: { line: 'gloss' } }])
  })

  it('refuses a line and a sum that a double cannot hold to the coin', () => {
    const large = line('large', 1, Number.MAX_SAFE_INTEGER)
    const oneLine = estimate({ ...empty, costs: [line('huge', 2, Number.MAX_SAFE_INTEGER)] })
    expect(oneLine.notes.map((note) => note.code)).toEqual(['money.lineOutOfRange'])
    const sum = estimate({ ...empty, costs: [large, large], labour: [line('a', 1, 1)] })
    expect(sum).toMatchObject({ totalCoins: 0, complete: false })
    expect(sum.notes.map((note) => note.code)).toEqual(['money.sumOutOfRange'])
  })

  it('refuses a sum that passes 2^53 on the way, even when a credit brings it back', () => {
    const most = Number.MAX_SAFE_INTEGER
    const costs = [line('a', 1, most), line('b', 1, 2), line('credit', -1, most)]
    expect(estimate({ ...empty, costs }).notes.map((note) => note.code)).toEqual(['money.sumOutOfRange'])
  })

  it('refuses shares outside 0 to 1', () => {
    const got = estimate({ ...empty, labour: [line('a', 1, 100)], taxShare: 19, depositShare: Number.NaN })
    expect(got.notes.map((note) => note.data.name)).toEqual(['tax', 'deposit'])
    expect(got).toMatchObject({ totalCoins: 100, depositCoins: 0, complete: false })
  })

  it('shows parts that add up to the totals shown, whatever the prices', () => {
    fc.assert(
      fc.property(anyEstimate, (input) => {
        const got = estimate(input)
        for (const group of estimateGroups) {
          const shown = got.lines[group].map((each) => each.coins ?? 0)
          expect(shown.every(Number.isSafeInteger)).toBe(true)
          expect(sum(shown)).toBe(got.subtotals[group])
        }
        expect(sum(Object.values(got.subtotals)) + got.marginCoins).toBe(got.netCoins)
        expect(got.netCoins + got.taxCoins).toBe(got.totalCoins)
        expect(got.depositCoins).toBeLessThanOrEqual(got.totalCoins)
        const margined = got.subtotals.materials + got.subtotals.consumables
        expect(Math.abs(got.marginCoins - input.marginShare * margined)).toBeLessThanOrEqual(0.51)
      }),
    )
  })
})

const sum = (coins: readonly number[]): number => coins.reduce((all, each) => all + each, 0)

const anyLines = fc.array(
  fc.record({
    id: fc.string(),
    quantity: fc.double({ min: 0, max: 5000, noNaN: true }),
    unitCoins: fc.integer({ min: 0, max: 10_000_000 }),
  }),
  { maxLength: 8 },
)
const share = fc.double({ min: 0, max: 1, noNaN: true })
const anyEstimate = fc.record({
  labour: anyLines,
  materials: anyLines,
  consumables: anyLines,
  costs: anyLines,
  changes: anyLines,
  marginShare: share,
  taxShare: share,
  depositShare: share,
})
