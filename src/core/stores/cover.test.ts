import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { cover, type Pack } from './cover.ts'

const litre = 1e-3
const pack = (id: string, litres: number, priceCoins?: number, inStock = 0): Pack => ({
  id,
  volumeM3: litres * litre,
  inStock,
  ...(priceCoins === undefined ? {} : { priceCoins }),
})

describe('cover', () => {
  it('buys nothing for a need of nothing', () => {
    const got = cover({ needM3: 0, packs: [pack('tin', 0.75, 3000)] })
    expect(got).toMatchObject({ buy: [], fromStock: [], boughtM3: 0, leftoverM3: 0, costCoins: 0, notes: [] })
  })

  it('takes the cheaper mix over the fewer packs', () => {
    const packs = [pack('large', 2.5, 9000), pack('small', 0.75, 2900)]
    const got = cover({ needM3: 3 * litre, packs })
    expect(got.buy).toEqual([{ pack: 'small', count: 4 }])
    expect(got.costCoins).toBe(11600)
  })

  it('covers n packs by n packs, in pints and gallons too', () => {
    const sizes = [0.000473176473, 0.003785411784]
    for (const [count, volumeM3] of [1, 3, 5, 12, 40].flatMap((n) =>
      sizes.map((size) => [n, size] as const),
    )) {
      const packs = [{ id: 'gal', volumeM3, priceCoins: 9900, inStock: 0 }]
      expect(cover({ needM3: count * volumeM3, packs }).buy).toEqual([{ pack: 'gal', count }])
    }
  })

  it('opens the shelf first and buys only the rest', () => {
    const got = cover({ needM3: 3 * litre, packs: [pack('large', 2.5, 9000), pack('small', 0.75, 3000, 2)] })
    expect(got.fromStock).toEqual([{ pack: 'small', count: 2 }])
    expect(got.buy).toEqual([{ pack: 'small', count: 2 }])
    expect(got.leftoverM3).toBeCloseTo(0, 12)
  })

  it('takes from a full shelf what leaves least over', () => {
    const got = cover({
      needM3: 0.7 * litre,
      packs: [pack('large', 2.5, 9000, 3), pack('small', 0.75, 3000, 3)],
    })
    expect(got.fromStock).toEqual([{ pack: 'small', count: 1 }])
    expect(got).toMatchObject({ buy: [], costCoins: 0 })
  })

  it('buys the least volume, then the fewest packs, when nothing has a price', () => {
    const got = cover({ needM3: 2 * litre, packs: [pack('half', 0.5), pack('one', 1), pack('three', 3)] })
    expect(got.buy).toEqual([{ pack: 'one', count: 2 }])
    expect(got.costCoins).toBeUndefined()
    expect(got.notes).toEqual([])
  })

  it('says which packs have no price when only some have', () => {
    const got = cover({ needM3: 2 * litre, packs: [pack('half', 0.5, 800), pack('three', 3)] })
    expect(got.buy).toEqual([{ pack: 'half', count: 4 }])
    expect(got.costCoins).toBe(3200)
    expect(got.notes.map((note) => note.data.pack)).toEqual(['three'])
  })

  it('says what is short when no pack is known', () => {
    const got = cover({ needM3: 2 * litre, packs: [] })
    expect(got.shortM3).toBeCloseTo(2 * litre, 12)
    expect(got.notes[0]).toMatchObject({ code: 'stores.noPacks', data: { volumeL: 2 } })
  })

  it.each([Number.NaN, -1, Number.POSITIVE_INFINITY, 2000])('refuses a need of %s m³', (needM3) => {
    expect(cover({ needM3, packs: [pack('tin', 1)] }).notes[0]?.code).toBe('stores.needOutOfRange')
  })

  it.each([0, -1, Number.NaN])('leaves out a pack of %s litres', (litres) => {
    const got = cover({ needM3: litre, packs: [pack('bad', litres), pack('good', 1)] })
    expect(got.buy).toEqual([{ pack: 'good', count: 1 }])
    expect(got.notes[0]).toMatchObject({ code: 'stores.packNotUsable', data: { pack: 'bad' } })
  })

  it('ends soon for a huge need of packs without a common measure, and says how', () => {
    const sizes = [0.2365882365, 0.473176473, 0.7501, 0.946352946, 1.0007, 2.503, 3.785411784, 5.0011]
    const packs = sizes.map((size, at) => pack(`p${at}`, size, Math.round(size * 4000) + at))
    const got = cover({ needM3: 900, packs })
    expect(got.leftoverM3).toBeGreaterThanOrEqual(0)
    expect(got.leftoverM3).toBeLessThan(0.001)
    expect(got.notes.map((note) => note.code)).toEqual(['stores.bulkInOnePack'])
  })

  it('equals trying every combination, in 500 small cases', () => {
    fc.assert(
      fc.property(smallCase, ({ need, packs }) => {
        const got = cover({ needM3: need * litre, packs })
        const expected = tryEverything(need, packs)
        expect({ buy: got.buy, fromStock: got.fromStock }).toEqual(expected)
      }),
      { numRuns: 500, seed: 20270412 },
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
        volumeM3: fc.integer({ min: 1, max: 12 }).map((n) => (n / 4) * litre),
        inStock: fc.integer({ min: 0, max: 2 }),
        ...(priced ? { priceCoins: fc.integer({ min: 0, max: 9 }) } : {}),
      }),
      { selector: (p) => p.id, minLength: 1, maxLength: 3 },
    ) as fc.Arbitrary<Pack[]>,
  }),
)

/** Every way to take from the shelf, then every way to buy, in whole quarter litres. */
function tryEverything(needLitres: number, packs: readonly Pack[]) {
  const sorted = [...packs].sort((a, b) => (a.id < b.id ? -1 : 1))
  const quarters = sorted.map((p) => Math.round((p.volumeM3 / litre) * 4))
  const need = Math.round(needLitres * 4)
  const shelf = sorted.map((p) => p.inStock)
  const stock =
    dot(shelf, quarters) <= need
      ? shelf
      : first(
          combinations(shelf),
          need,
          quarters,
          sorted.map(() => 0),
        )
  const rest = Math.max(0, need - dot(stock, quarters))
  const limits = quarters.map((quarter) => Math.ceil(rest / quarter))
  const bought = first(
    combinations(limits),
    rest,
    quarters,
    sorted.map((p) => p.priceCoins ?? 0),
  )
  const named = (counts: readonly number[]) =>
    sorted.map((p, at) => ({ pack: p.id, count: counts[at]! })).filter(({ count }) => count > 0)
  return { buy: named(bought), fromStock: named(stock) }
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
