/** Which packs to take from the shelf and which to buy for an amount of one material, its two parts apart. */
import type { Note } from '#core/note'
import { brokenPacks, type PackKind, type Rest } from './least-cost.ts'
import type { Pack } from './pack.ts'
import { largestNeedM3, needFault, packFaults, priceNotes, usablePacks } from './pack-faults.ts'
import { coverWithPacks } from './whole-packs.ts'

export type { Pack } from './pack.ts'
export type PackCount = { readonly pack: string; readonly count: number }

export type Cover = {
  readonly buy: readonly PackCount[]
  readonly fromStock: readonly PackCount[]
  readonly boughtM3: number
  readonly fromStockM3: number
  /** What stays over of each part once the need is met, m³. */
  readonly leftoverM3: readonly number[]
  /** Still missing of each part because no pack is known, m³. */
  readonly shortM3: readonly number[]
  /** Price of what is bought; left out while a bought pack has no price. */
  readonly costCoins?: number
  readonly notes: readonly Note[]
}

/** Tries before the bulk is set aside; some tenths of a second, and far more than a boat ever takes. */
const workLimit = 100_000
const cubicMillimetres = 1e9

/**
 * Whole packs for a need of one or two parts. What is in stock costs nothing; the rest is bought at the least cost;
 * draws go to the least volume opened, then to fewer packs, then to stock and the earlier id. While any pack that is
 * sold has no price, the least volume is bought in the place of the least cost.
 *
 * Inputs: needs and volumes in m³, prices in the smallest coin. Volumes are taken to the next whole mm³, so the
 * answer is exact. A need that is not a number from 0 to 1000 m³ is a fault note and nothing is bought; a pack under
 * 1 ml, over 1000 m³ or without a whole stock or price is a fault note and is left out. With so many packs that the
 * search would not end, all but the last part is put into the packs that are cheapest a litre, and
 * `stores.bulkInOnePack` says so.
 */
export function cover({
  needM3,
  packs,
}: {
  readonly needM3: readonly number[]
  readonly packs: readonly Pack[]
}): Cover {
  const [needA = 0, needB = 0] = needM3
  const fault = [needA, needB].find((one) => !(one >= 0 && one <= largestNeedM3))
  if (fault !== undefined) return nothing([needFault(fault)])
  const usable = [...usablePacks(packs)].sort((a, b) => (a.id < b.id ? -1 : 1))
  const isPriced = usable.every((pack) => !pack.isSold || pack.priceCoins !== undefined)
  const stocked = usable.filter((pack) => pack.inStock > 0)
  const sold = usable.filter((pack) => pack.isSold)
  const kinds = [
    ...stocked.map((pack): PackKind => ({ ...wholeParts(pack), cost: 0, most: pack.inStock })),
    ...sold.map((pack) => soldKind(pack, isPriced)),
  ]
  const wanted = { a: toWhole(needA), b: toWhole(needB) }
  const found = search(withinReach(wanted, kinds), kinds)
  const stock = found.counts.slice(0, stocked.length)
  const bought = found.counts.slice(stocked.length)
  return summary({
    needM3: [needA, needB].slice(0, Math.max(1, needM3.length)),
    stock: stocked.map((pack, at) => ({ pack, count: stock[at] ?? 0 })),
    bought: sold.map((pack, at) => ({ pack, count: bought[at] ?? 0 })),
    notes: [
      ...packFaults(packs),
      ...bulkNotes(found.aside.slice(stocked.length), sold),
      ...(bought.some((count) => count > 0) ? priceNotes(sold) : []),
    ],
  })
}

const soldKind = (pack: Pack, isPriced: boolean): PackKind => {
  const parts = wholeParts(pack)
  const cost = isPriced ? (pack.priceCoins ?? 0) : parts.a + parts.b
  return { ...parts, cost, most: Number.POSITIVE_INFINITY }
}

/** What is not sold can only be covered as far as the stock goes. */
function withinReach(need: Rest, kinds: readonly PackKind[]): Rest {
  const reach = (part: 'a' | 'b'): number =>
    Math.min(
      need[part],
      kinds.reduce((sum, kind) => sum + (kind[part] > 0 ? kind[part] * kind.most : 0), 0),
    )
  return { a: reach('a'), b: reach('b') }
}

type Found = { readonly counts: readonly number[]; readonly aside: readonly number[] }

/** The whole need, or with more and more of it set aside in the packs that hold it cheapest until the search ends. */
function search(need: Rest, kinds: readonly PackKind[]): Found {
  const none = kinds.map(() => 0)
  const broken = brokenPacks(need, kinds) ?? none
  for (const keep of [Number.POSITIVE_INFINITY, 64, 32, 16, 8, 4, 2, 1]) {
    const aside = broken.map((count) => Math.max(0, Math.floor(count) - keep))
    const rest = {
      a: need.a - dot(aside, kinds, 'a'),
      b: need.b - dot(aside, kinds, 'b'),
    }
    const found = coverWithPacks(rest, { kinds, workLimit })
    if (found.kind === 'counts')
      return { counts: found.counts.map((count, at) => count + (aside[at] ?? 0)), aside }
    if (found.kind === 'none') return { counts: none, aside: none }
  }
  return { counts: broken.map(Math.ceil), aside: broken.map(Math.floor) }
}

const dot = (counts: readonly number[], kinds: readonly PackKind[], part: 'a' | 'b'): number =>
  kinds.reduce((sum, kind, at) => sum + (counts[at] ?? 0) * kind[part], 0)

type Counted = readonly { readonly pack: Pack; readonly count: number }[]
type Parts = {
  readonly needM3: readonly number[]
  readonly stock: Counted
  readonly bought: Counted
  readonly notes: readonly Note[]
}

function summary({ needM3, stock, bought, notes }: Parts): Cover {
  const all = [...stock, ...bought]
  const over = needM3.map(
    (need, part) => all.reduce((sum, { pack, count }) => sum + count * (pack.partsM3[part] ?? 0), 0) - need,
  )
  // Need and packs are rounded to whole mm³: so much less than nothing is not missing.
  const rounding = 1e-8 + all.reduce((sum, { count }) => sum + count, 0) / cubicMillimetres
  const shortM3 = over.map((one) => (one < -rounding ? -one : 0))
  const costCoins = costOf(bought)
  return {
    buy: named(bought),
    fromStock: named(stock),
    boughtM3: volumeOf(bought),
    fromStockM3: volumeOf(stock),
    leftoverM3: over.map((one) => Math.max(0, one)),
    shortM3,
    ...(costCoins === undefined ? {} : { costCoins }),
    notes: [...notes, ...shortNotes(shortM3)],
  }
}

function costOf(bought: Counted): number | undefined {
  let sum = 0
  for (const { pack, count } of bought) {
    if (count === 0) continue
    if (pack.priceCoins === undefined) return undefined
    sum += count * pack.priceCoins
  }
  return sum
}

// Both the need and the packs round up, so that n packs always cover a need of n packs.
const toWhole = (volumeM3: number): number => Math.ceil(volumeM3 * cubicMillimetres - 0.001)

const wholeParts = ({ partsM3 }: Pack): Rest => ({
  a: toWhole(partsM3[0] ?? 0),
  b: toWhole(partsM3[1] ?? 0),
})

const volumeOf = (counted: Counted): number =>
  counted.reduce((sum, { pack, count }) => sum + count * pack.partsM3.reduce((all, one) => all + one, 0), 0)

const named = (counted: Counted): readonly PackCount[] =>
  counted.filter(({ count }) => count > 0).map(({ pack, count }) => ({ pack: pack.id, count }))

const nothing = (notes: readonly Note[]): Cover => ({
  buy: [],
  fromStock: [],
  boughtM3: 0,
  fromStockM3: 0,
  leftoverM3: [0],
  shortM3: [0],
  notes,
})

function shortNotes(shortM3: readonly number[]): readonly Note[] {
  const volumeL = shortM3.reduce((sum, one) => sum + one * 1000, 0)
  const missing = shortM3.flatMap((one, part) => (one > 0 ? ['AB'[part] ?? ''] : []))
  return volumeL === 0
    ? []
    : [
        {
          code: 'stores.noPacks',
          severity: 'missing',
          data: { volumeL, parts: missing.length < shortM3.length ? missing.join() : '' },
        },
      ]
}

const bulkNotes = (aside: readonly number[], packs: readonly Pack[]): readonly Note[] =>
  packs.flatMap((pack, at): readonly Note[] => {
    const count = aside[at] ?? 0
    return count === 0
      ? []
      : [{ code: 'stores.bulkInOnePack', severity: 'info', data: { pack: pack.id, count } }]
  })
