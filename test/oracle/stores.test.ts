/** What is bought: whole packs that cover need and reserve, none cheaper, and what is used up. */
import { describe, expect, it } from 'vitest'
import * as cell from './cells.ts'
import { sampleJobs } from './jobs.ts'
import { subjectOf } from './plans.ts'
import { itemsOf, limitCell, type RawSample, sheetCell } from './raw-sample.ts'

/** Far under a drop, m³. */
const drop = 1e-12

type Pack = {
  readonly id: string
  readonly volumeM3: number
  readonly inStock: number
  readonly price: number
}

function packsOf(raw: RawSample, sheet: string): readonly Pack[] {
  const prices = Object.values(itemsOf(raw.money, 'prices'))
  return Object.entries(itemsOf(raw.work, 'packs')).flatMap(([id, pack]) => {
    const price = prices.find((one) => one.pack === id)?.price
    if (pack.sheet !== sheet || price === undefined) return []
    const volumeM3 = cell.cubicMetres(pack.volume!)
    return [{ id, volumeM3, inStock: Number(pack.inStock ?? 0), price: cell.coins(price) }]
  })
}

/** Every way to take from the shelf and to buy, tried; the price of the cheapest that covers the volume. */
function cheapest(packs: readonly Pack[], volumeM3: number): number {
  const [pack, ...rest] = packs
  if (volumeM3 <= drop) return 0
  if (!pack) return Number.POSITIVE_INFINITY
  let best = Number.POSITIVE_INFINITY
  for (let count = 0; (count - 1) * pack.volumeM3 < volumeM3; count++) {
    const price = Math.max(0, count - pack.inStock) * pack.price
    best = Math.min(best, price + cheapest(rest, volumeM3 - count * pack.volumeM3))
  }
  return best
}

/** Where the colour is seen an old pack does for all of it, or stays on the shelf: nobody knows its batch. */
function cheapestSeen(packs: readonly Pack[], volumeM3: number): number {
  const isEnough = packs.some((pack) => pack.inStock * pack.volumeM3 >= volumeM3 - drop)
  return isEnough
    ? 0
    : cheapest(
        packs.map((pack) => ({ ...pack, inStock: 0 })),
        volumeM3,
      )
}

const isSeen = (raw: RawSample, sheet: string): boolean =>
  ['finish', 'non-skid'].includes(sheetCell(raw, sheet, 'role')!)

/** Reserve by what a product is for; a finish also leaves some for later touch-ups. */
function reserveOf(raw: RawSample, sheet: string, needM3: number): number {
  const role = sheetCell(raw, sheet, 'role')!
  if (['filler', 'fairing', 'laminating resin'].includes(role))
    return needM3 * cell.share(limitCell('reserveFiller'))
  if (['primer', 'tie coat'].includes(role)) return needM3 * cell.share(limitCell('reservePrimer'))
  const finish = needM3 * cell.share(limitCell('reserveFinish'))
  return role === 'finish' ? finish + cell.cubicMetres(limitCell('touchUp')) : finish
}

const volume = (packs: readonly { readonly volumeM3: number; readonly count: number }[]): number =>
  packs.reduce((sum, pack) => sum + pack.volumeM3 * pack.count, 0)

/** Up to the next whole step; a hair over a step is rounding. */
const upTo = (amount: number, step: number): number => Math.ceil(amount / step - 1e-9) * step

describe.each(sampleJobs)('the stores of %s', (name) => {
  const { raw, plan } = subjectOf(name)
  const { items, consumables } = plan.stores

  it('hold need and reserve of every product that is used', () => {
    expect(items.map((item) => item.sheet).sort()).toEqual(
      plan.quantities.sheets.map((one) => one.sheet).sort(),
    )
    for (const item of items) {
      const need = plan.quantities.sheets.find((one) => one.sheet === item.sheet)!.mixedM3
      expect(Math.abs(item.needM3 - need), item.sheet).toBeLessThan(drop)
      expect(Math.abs(item.reserveM3 - reserveOf(raw, item.sheet, need)), item.sheet).toBeLessThan(drop)
    }
  })

  it('cover need and reserve with whole packs that are sold, and no more from the shelf than is there', () => {
    for (const item of items) {
      const packs = packsOf(raw, item.sheet)
      const taken = [...item.fromStock, ...item.buy]
      for (const { pack, count, volumeM3 } of taken) {
        expect(Number.isInteger(count) && count > 0, pack).toBe(true)
        expect(Math.abs(volumeM3 - packs.find((one) => one.id === pack)!.volumeM3)).toBeLessThan(drop)
      }
      for (const { pack, count } of item.fromStock)
        expect(count).toBeLessThanOrEqual(packs.find((one) => one.id === pack)!.inStock)
      const over = volume(taken) - item.needM3 - item.reserveM3
      expect(item.shortM3).toBe(0)
      expect(over, item.sheet).toBeGreaterThan(-drop)
      expect(Math.abs(item.leftoverM3 - over), item.sheet).toBeLessThan(drop)
    }
  })

  it('can be had no cheaper by any other set of packs', () => {
    for (const item of items) {
      const packs = packsOf(raw, item.sheet)
      const paid = item.buy.reduce(
        (sum, { pack, count }) => sum + count * packs.find((one) => one.id === pack)!.price,
        0,
      )
      const way = isSeen(raw, item.sheet) ? cheapestSeen : cheapest
      expect(paid, item.sheet).toBe(way(packs, item.needM3 + item.reserveM3))
    }
  })

  it('hold thinner and bead by the tenth of a litre that is begun', () => {
    for (const { sheet, thinnerM3, additiveM3 } of plan.quantities.sheets)
      for (const [id, volumeM3] of [
        ['thinner', thinnerM3],
        ['bead', additiveM3],
      ] as const) {
        const had = consumables.find((one) => one.id === id && one.sheet === sheet)
        expect(had?.amount ?? 0, `${id} of ${sheet}`).toBeCloseTo(upTo(volumeM3 * 1000, 0.1), 9)
      }
  })

  it('hold a fresh roller cover for every product and coat of a day, more on more than 14 m²', () => {
    const rolled = plan.steps.steps.filter(
      ({ kind, method = '' }) => kind === 'coat' && method.startsWith('roll'),
    )
    const startOf = new Map(plan.days.placed.map((one) => [one.step, one.startMinute]))
    const sets = new Map<string, number>()
    for (const { id, sheet, coat, method, areaM2 = 0 } of rolled) {
      const key = `${sheet} ${coat} ${method} ${Math.floor((startOf.get(id) ?? Number.NaN) / 1440)}`
      sets.set(key, (sets.get(key) ?? 0) + areaM2)
    }
    const covers = [...sets.values()].reduce((sum, areaM2) => sum + upTo(areaM2 / 14, 1), 0)
    expect(covers).toBeGreaterThan(1)
    expect(consumables.find(({ id }) => id === 'foam-cover')?.amount).toBe(covers)
  })

  it('hold tape for every edge that is masked, cups for every pour and gloves for who gets dirty that day', () => {
    const edges = plan.steps.steps.reduce((sum, step) => sum + (step.lengthM ?? 0), 0)
    const steps = new Map(plan.steps.steps.map((step) => [step.id, step]))
    const dirty = new Set([
      'wash',
      'sand',
      'sand-between',
      'repair',
      'fill-repair',
      'mend',
      'pinholes',
      'fill',
      'coat',
    ])
    const days = plan.days.days.reduce((sum, day) => {
      const hands = day.pieces.filter(({ step }) => dirty.has(steps.get(step)?.kind ?? ''))
      return sum + new Set(hands.flatMap(({ people }) => people)).size
    }, 0)
    const amount = (id: string) => consumables.find((one) => one.id === id)?.amount
    expect(amount('fine-line-tape')).toBe(upTo(edges * 1.1, 1))
    expect(amount('masking-tape')).toBe(upTo(edges * 1.1, 1))
    expect(amount('mixing-cup')).toBe(2 * plan.pours.pours.length)
    expect(amount('gloves')).toBe(4 * days)
    expect(days).toBeLessThan(plan.days.days.reduce((sum, day) => sum + day.people.length, 0))
    expect(amount('respirator-cartridge')).toBe(upTo(0.2 * days, 1))
  })
})
