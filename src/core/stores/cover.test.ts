import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { cover, type Pack } from './cover.ts'

const litre = 1e-3
const pack = (id: string, litres: number, priceCoins?: number, inStock = 0): Pack => ({
  id,
  partsM3: [litres * litre],
  inStock,
  isSold: true,
  ...(priceCoins === undefined ? {} : { priceCoins }),
})

describe('cover', () => {
  it('buys nothing for a need of nothing', () => {
    const got = cover({ needM3: [0], packs: [pack('tin', 0.75, 3000)] })
    expect(got).toMatchObject({
      buy: [],
      fromStock: [],
      boughtM3: 0,
      leftoverM3: [0],
      costCoins: 0,
      notes: [],
    })
  })

  it('takes the cheaper mix over the fewer packs', () => {
    const packs = [pack('large', 2.5, 9000), pack('small', 0.75, 2900)]
    const got = cover({ needM3: [3 * litre], packs })
    expect(got.buy).toEqual([{ pack: 'small', count: 4 }])
    expect(got.costCoins).toBe(11600)
  })

  it('covers n packs by n packs, in pints and gallons too', () => {
    const sizes = [0.000473176473, 0.003785411784]
    for (const [count, volumeM3] of [1, 3, 5, 12, 40].flatMap((n) =>
      sizes.map((size) => [n, size] as const),
    )) {
      const packs = [{ id: 'gal', partsM3: [volumeM3], priceCoins: 9900, inStock: 0, isSold: true }]
      expect(cover({ needM3: [count * volumeM3], packs }).buy).toEqual([{ pack: 'gal', count }])
    }
  })

  it('opens the shelf first and buys only the rest', () => {
    const got = cover({
      needM3: [3 * litre],
      packs: [pack('large', 2.5, 9000), pack('small', 0.75, 3000, 2)],
    })
    expect(got.fromStock).toEqual([{ pack: 'small', count: 2 }])
    expect(got.buy).toEqual([{ pack: 'small', count: 2 }])
    expect(got.leftoverM3[0]).toBeCloseTo(0, 12)
  })

  it('takes from a full shelf what leaves least over', () => {
    const got = cover({
      needM3: [0.7 * litre],
      packs: [pack('large', 2.5, 9000, 3), pack('small', 0.75, 3000, 3)],
    })
    expect(got.fromStock).toEqual([{ pack: 'small', count: 1 }])
    expect(got).toMatchObject({ buy: [], costCoins: 0 })
  })

  it('buys the least volume, then the fewest packs, when nothing has a price', () => {
    const got = cover({ needM3: [2 * litre], packs: [pack('half', 0.5), pack('one', 1), pack('three', 3)] })
    expect(got.buy).toEqual([{ pack: 'one', count: 2 }])
    expect(got.costCoins).toBeUndefined()
    expect(got.notes).toEqual([])
  })

  it('says which packs have no price when only some have', () => {
    const got = cover({ needM3: [2 * litre], packs: [pack('half', 0.5, 800), pack('three', 3)] })
    expect(got.buy).toEqual([{ pack: 'half', count: 4 }])
    expect(got.costCoins).toBe(3200)
    expect(got.notes.map((note) => note.data.pack)).toEqual(['three'])
  })

  it('says what is short when no pack is known', () => {
    const got = cover({ needM3: [2 * litre], packs: [] })
    expect(got.shortM3[0]).toBeCloseTo(2 * litre, 12)
    expect(got.notes[0]).toMatchObject({ code: 'stores.noPacks', data: { volumeL: 2 } })
  })

  it.each([Number.NaN, -1, Number.POSITIVE_INFINITY, 2000])('refuses a need of %s m³', (needM3) => {
    expect(cover({ needM3: [needM3], packs: [pack('tin', 1)] }).notes[0]?.code).toBe('stores.needOutOfRange')
  })

  it.each([0, -1, Number.NaN])('leaves out a pack of %s litres', (litres) => {
    const got = cover({ needM3: [litre], packs: [pack('bad', litres), pack('good', 1)] })
    expect(got.buy).toEqual([{ pack: 'good', count: 1 }])
    expect(got.notes[0]).toMatchObject({ code: 'stores.packNotUsable', data: { pack: 'bad' } })
  })

  it('ends soon for a huge need of packs without a common measure, and says how', () => {
    const sizes = [0.2365882365, 0.473176473, 0.7501, 0.946352946, 1.0007, 2.503, 3.785411784, 5.0011]
    const packs = sizes.map((size, at) => pack(`p${at}`, size, Math.round(size * 4000) + at))
    const got = cover({ needM3: [900], packs })
    expect(got.leftoverM3[0]).toBeGreaterThanOrEqual(0)
    expect(got.leftoverM3[0]).toBeLessThan(0.001)
    expect(got.notes.map((note) => note.code)).toEqual(['stores.bulkInOnePack'])
  })

  it('keeps kits in ratio, and buys one part by itself where that is cheaper', () => {
    const kit = { id: 'kit', partsM3: [2 * litre, litre], priceCoins: 9000, inStock: 0, isSold: true }
    const hardener = { id: 'b', partsM3: [0, 0.5 * litre], priceCoins: 2000, inStock: 0, isSold: true }
    const got = cover({ needM3: [2 * litre, 1.3 * litre], packs: [kit, hardener] })
    expect(got.buy).toEqual([
      { pack: 'b', count: 1 },
      { pack: 'kit', count: 1 },
    ])
    expect(got.costCoins).toBe(11_000)
    expect(got.leftoverM3.map((one) => Math.round(one * 1e6))).toEqual([0, 200])
  })

  it('says which part is not to be had', () => {
    const base = { id: 'a', partsM3: [litre, 0], priceCoins: 4000, inStock: 0, isSold: true }
    const got = cover({ needM3: [1.5 * litre, 0.4 * litre], packs: [base] })
    expect(got.buy).toEqual([{ pack: 'a', count: 2 }])
    expect(got.notes).toEqual([
      { code: 'stores.noPacks', severity: 'missing', data: { volumeL: expect.closeTo(0.4, 9), parts: 'B' } },
    ])
  })

  it('takes all there is of a pack that is not sold, and says what is short', () => {
    const old = { id: 'old', partsM3: [litre], inStock: 2, isSold: false }
    const got = cover({ needM3: [3 * litre], packs: [old] })
    expect(got.fromStock).toEqual([{ pack: 'old', count: 2 }])
    expect(got.shortM3[0]).toBeCloseTo(litre, 12)
  })

  it('equals trying every combination, in 200 small cases', () => {
    fc.assert(
      fc.property(smallCase, ({ need, packs }) => {
        const got = cover({ needM3: [need * litre], packs })
        const expected = tryEverything(need, packs)
        expect({ buy: got.buy, fromStock: got.fromStock }).toEqual(expected)
      }),
      { numRuns: 200, seed: 20270412 },
    )
  })
})

// Litres in steps that binary fractions hold exactly, so that the slow answer has no rounding of its own.
const smallCase = fc.boolean().chain((priced) =>
  fc.record({
    need: fc.integer({ min: 0, max: 24 }).map((n) => n / 4),
    packs: fc.uniqueArray(
      fc.record({
        id: fc.constantFrom('a', 'b', 'c', 'd'),
        partsM3: fc.integer({ min: 2, max: 12 }).map((n) => [(n / 4) * litre]),
        inStock: fc.integer({ min: 0, max: 2 }),
        isSold: fc.constant(true),
        ...(priced ? { priceCoins: fc.integer({ min: 0, max: 9 }) } : {}),
      }),
      { selector: (p) => p.id, minLength: 1, maxLength: 3 },
    ) as fc.Arbitrary<Pack[]>,
  }),
)

/** Every way to take from the shelf and to buy, in whole quarter litres. */
function tryEverything(needLitres: number, packs: readonly Pack[]) {
  const sorted = [...packs].sort((a, b) => (a.id < b.id ? -1 : 1))
  const quarters = sorted.map((p) => Math.round(((p.partsM3[0] ?? 0) / litre) * 4))
  const need = Math.round(needLitres * 4)
  const priced = sorted.every((p) => p.priceCoins !== undefined)
  const counts = first(
    combinations([...sorted.map((p) => p.inStock), ...quarters.map((quarter) => Math.ceil(need / quarter))]),
    need,
    [...quarters, ...quarters],
    [...sorted.map(() => 0), ...sorted.map((p, at) => (priced ? (p.priceCoins ?? 0) : quarters[at]!))],
  )
  const named = (own: readonly number[]) =>
    sorted.map((p, at) => ({ pack: p.id, count: own[at]! })).filter(({ count }) => count > 0)
  return { buy: named(counts.slice(sorted.length)), fromStock: named(counts.slice(0, sorted.length)) }
}

const dot = (a: readonly number[], b: readonly number[]): number =>
  a.reduce((sum, x, at) => sum + x * b[at]!, 0)

function combinations(limits: readonly number[]): number[][] {
  return limits.reduce<number[][]>(
    (all, most) => all.flatMap((head) => Array.from({ length: most + 1 }, (_, n) => [...head, n])),
    [[]],
  )
}

function first(
  all: number[][],
  need: number,
  volumes: readonly number[],
  costs: readonly number[],
): number[] {
  const key = (counts: number[]) => [
    dot(counts, costs),
    dot(counts, volumes),
    counts.reduce((sum, n) => sum + n, 0),
    ...counts.map((n) => -n),
  ]
  return all
    .filter((counts) => dot(counts, volumes) >= need)
    .sort(
      (a, b) =>
        key(a)
          .map((x, at) => x - key(b)[at]!)
          .find((d) => d !== 0) ?? 0,
    )[0]!
}
