import { describe, expect, it } from 'vitest'
import { type PurchaseInput, purchase, type ShelfPack } from './purchase.ts'

const litre = 1e-3

const sold = [
  { id: 'large', partsM3: [2 * litre, litre], priceCoins: 12_000 },
  { id: 'small', partsM3: [0.5 * litre, 0.25 * litre], priceCoins: 4000 },
]
const old = (own: Partial<ShelfPack>): ShelfPack => ({
  id: 'old',
  partsM3: [2 * litre, litre],
  count: 1,
  batch: '',
  forThisJob: false,
  ...own,
})
const gloss = (own: Partial<PurchaseInput>): PurchaseInput => ({
  uses: [0, 3, 6].map((day) => ({ day, needM3: [litre, 0.5 * litre] })),
  reserveShare: 0,
  touchUpM3: [],
  sold,
  shelf: [],
  oneBatch: true,
  ...own,
})

describe('purchase', () => {
  it('covers all coats with reserve and touch-up in one purchase', () => {
    const got = purchase(gloss({ reserveShare: 0.15, touchUpM3: [0.1 * litre, 0.05 * litre] }))
    // 3 L of part A and 15 % and 0.1 L are 3.55 L: one large and four small hold 4 L for 280.00, two large 4 L for 240.00.
    expect(got.buy).toEqual([{ pack: 'large', count: 2 }])
    expect(got.costCoins).toBe(24_000)
    expect(got.leftoverM3.map((one) => Math.round(one * 1e6))).toEqual([450, 225])
  })

  it('leaves an old batch on the shelf where it does not do for all that is seen', () => {
    const got = purchase(gloss({ shelf: [old({ batch: 'K7' })] }))
    expect(got.fromStock).toEqual([])
    expect(got.buy).toEqual([
      { pack: 'large', count: 1 },
      { pack: 'small', count: 2 },
    ])
    expect(got.refused).toEqual([{ pack: 'old', why: 'other batch' }])
  })

  it('takes one old batch for all of it where it is enough, cans of the same batch together', () => {
    const shelf = [old({ batch: 'K7' }), old({ id: 'older', batch: 'K7' }), old({ id: 'other', batch: 'M2' })]
    const got = purchase(gloss({ shelf }))
    expect(got.fromStock.map(({ pack }) => pack)).toEqual(['old', 'older'])
    expect(got.buy).toEqual([])
    expect(got.refused).toEqual([{ pack: 'other', why: 'other batch' }])
  })

  it('counts what was bought for the job, and what has its batch, and buys only the rest', () => {
    const shelf = [
      old({ id: 'here', batch: 'K7', forThisJob: true }),
      old({ batch: 'K7', partsM3: [0.5 * litre, 0.25 * litre] }),
    ]
    const got = purchase(gloss({ shelf }))
    expect(got.fromStock.map(({ pack }) => pack)).toEqual(['here', 'old'])
    expect(got.buy).toEqual([{ pack: 'small', count: 1 }])
  })

  it('takes any batch for what is not seen', () => {
    const got = purchase(gloss({ oneBatch: false, shelf: [old({ batch: 'K7' })] }))
    expect(got.fromStock).toEqual([{ pack: 'old', count: 1 }])
    expect(got.buy).toEqual([{ pack: 'small', count: 2 }])
  })

  it('refuses what is past its date or open for too long when the last coat goes on', () => {
    const shelf = [
      old({ id: 'late', bestBeforeDay: -1 }),
      old({ id: 'open', openedDay: -60 }),
      old({ id: 'good', openedDay: -40, bestBeforeDay: -50 }),
    ]
    const got = purchase(gloss({ oneBatch: false, openDays: 56, shelf }))
    expect(got.refused).toEqual([
      { pack: 'late', why: 'past its date' },
      { pack: 'open', why: 'open too long' },
    ])
    expect(got.fromStock).toEqual([{ pack: 'good', count: 1 }])
  })

  it('opens packs anew for a coat that the opened ones do not last to', () => {
    const uses = [0, 10, 80].map((day) => ({ day, needM3: [litre, 0.5 * litre] }))
    const got = purchase(gloss({ uses, openDays: 56 }))
    expect(got.spans).toEqual([
      { fromDay: 0, untilDay: 10 },
      { fromDay: 80, untilDay: 80 },
    ])
    // Two litres of part A in a large one, then one litre in two small: in one opening it would be the same packs.
    expect(got.buy).toEqual([
      { pack: 'large', count: 1 },
      { pack: 'small', count: 2 },
    ])
    const late = purchase(
      gloss({ uses: uses.map((use) => ({ ...use, needM3: [0.6 * litre, 0.3 * litre] })), openDays: 56 }),
    )
    // 1.2 L in a large or three small ones, 0.6 L in two small ones; of one opening 1.8 L would be one large.
    expect(late.costCoins).toBe(20_000)
  })

  it('takes from the shelf first for the earlier opening', () => {
    const uses = [0, 80].map((day) => ({ day, needM3: [0.5 * litre, 0.25 * litre] }))
    const shelf = [old({ partsM3: [0.5 * litre, 0.25 * litre] })]
    const got = purchase(gloss({ uses, openDays: 56, oneBatch: false, shelf }))
    expect(got.fromStock).toEqual([{ pack: 'old', count: 1 }])
    expect(got.buy).toEqual([{ pack: 'small', count: 1 }])
  })

  it('buys without dates as for one opening', () => {
    const uses = [{ needM3: [litre, 0.5 * litre] }, { needM3: [litre, 0.5 * litre] }]
    const got = purchase(gloss({ uses, openDays: 56 }))
    expect(got.spans).toEqual([{}])
    expect(got.buy).toEqual([{ pack: 'large', count: 1 }])
  })
})
