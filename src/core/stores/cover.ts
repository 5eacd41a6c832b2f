/** Which packs to take from the shelf and which to buy for an amount of one material. */
import type { Note } from '#core/note'
import { coverWithPacks, type PackKind, packWork } from './whole-packs.ts'

export type Pack = {
  readonly id: string
  /** Volume of the whole pack, all parts, m³. */
  readonly volumeM3: number
  /** Price of one, smallest coin. */
  readonly priceCoins?: number
  /** Unopened packs on the shelf. */
  readonly inStock: number
}

export type PackCount = { readonly pack: string; readonly count: number }

export type Cover = {
  readonly buy: readonly PackCount[]
  readonly fromStock: readonly PackCount[]
  readonly boughtM3: number
  readonly fromStockM3: number
  /** What stays over once the need is met, m³. */
  readonly leftoverM3: number
  /** Still missing because no pack is known, m³. */
  readonly shortM3: number
  /** Price of what is bought; left out while a bought pack has no price. */
  readonly costCoins?: number
  readonly notes: readonly Note[]
}

/** Most that is planned at once, m³: more than any boat takes. */
const largestNeedM3 = 1000
/** Smallest pack, m³; with the two bounds no sum of money passes 2^53. */
const smallestPackM3 = 1e-6
const highestPriceCoins = 1e9
/** Combinations looked at before the bulk goes into the best pack; some tenths of a second. */
const workLimit = 400_000
const cubicMillimetres = 1e9

/**
 * Whole packs for a need. The shelf comes first: all of it when it is not enough, else the packs that leave
 * least over. The rest is bought at the least cost; draws go to the smaller leftover, then to fewer packs,
 * then to the earlier id. While any pack has no price, the least volume is bought, then the fewest packs.
 *
 * Inputs: need in m³, volumes in m³, prices in the smallest coin. Volumes are taken to the next whole mm³,
 * so the answer is exact. A need that is not a number from 0 to 1000 m³ is a fault note and nothing is bought;
 * a pack under 1 ml, over 1000 m³ or without a whole stock or price is a fault note and is left out. With so many packs that the search would not end, all but the last part is
 * put into the pack that is cheapest a litre, and `stores.bulkInOnePack` says so.
 */
export function cover({
  needM3,
  packs,
}: {
  readonly needM3: number
  readonly packs: readonly Pack[]
}): Cover {
  if (!(needM3 >= 0 && needM3 <= largestNeedM3)) return nothing([needFault(needM3)])
  const usable = packs.filter(isUsable).sort((a, b) => (a.id < b.id ? -1 : 1))
  const notes = packs.filter((pack) => !isUsable(pack)).map(packFault)
  const need = toWhole(needM3)
  const stock = takeStock(need, usable)
  const rest = Math.max(0, need - volumeOf(stock, usable))
  const bought = purchase(rest, usable)
  return summary({ needM3, usable, stock, bought, notes: [...notes, ...bought.notes] })
}

type Purchase = { readonly counts: readonly number[]; readonly notes: readonly Note[] }

function takeStock(need: number, packs: readonly Pack[]): readonly number[] {
  const kinds = packs.map((pack) => ({ volume: toWhole(pack.volumeM3), cost: 0, most: pack.inStock }))
  const all = packs.map((pack) => pack.inStock)
  if (volumeOf(all, packs) <= need || packWork(need, kinds) > workLimit) return all
  return coverWithPacks(need, kinds) ?? all
}

function purchase(need: number, packs: readonly Pack[]): Purchase {
  const none = packs.map(() => 0)
  if (need === 0) return { counts: none, notes: [] }
  if (packs.length === 0) return { counts: none, notes: [noPacks(need / cubicMillimetres)] }
  const priced = packs.every((pack) => pack.priceCoins !== undefined)
  const kinds = packs.map((pack) => ({
    volume: toWhole(pack.volumeM3),
    cost: priced ? (pack.priceCoins ?? 0) : 0,
    most: Number.POSITIVE_INFINITY,
  }))
  const bulk = bulkOf(need, kinds)
  const counts = coverWithPacks(need - bulk.count * bulk.volume, kinds) ?? none
  return {
    counts: counts.map((count, at) => count + (at === bulk.at ? bulk.count : 0)),
    notes: [...(bulk.count > 0 ? [bulkNote(bulk, packs)] : []), ...priceNotes(packs)],
  }
}

type Bulk = { readonly at: number; readonly volume: number; readonly count: number }

/** How many of the pack cheapest by volume (largest on a draw) to set aside before searching. */
function bulkOf(need: number, kinds: readonly PackKind[]): Bulk {
  const at = bestByVolume(kinds)
  const volume = kinds[at]?.volume ?? 1
  let most = Math.floor(need / volume)
  let count = 0
  while (count < most) {
    const middle = Math.floor((count + most) / 2)
    if (packWork(need - middle * volume, kinds) <= workLimit) most = middle
    else count = middle + 1
  }
  return { at, volume, count }
}

function bestByVolume(kinds: readonly PackKind[]): number {
  let best = 0
  kinds.forEach((kind, at) => {
    const champion = kinds[best] ?? kind
    const difference = kind.cost * champion.volume - champion.cost * kind.volume
    if (difference < 0 || (difference === 0 && kind.volume > champion.volume)) best = at
  })
  return best
}

type Parts = {
  readonly needM3: number
  readonly usable: readonly Pack[]
  readonly stock: readonly number[]
  readonly bought: Purchase
  readonly notes: readonly Note[]
}

function summary({ needM3, usable, stock, bought, notes }: Parts): Cover {
  const boughtM3 = cubicMetresOf(bought.counts, usable)
  const fromStockM3 = cubicMetresOf(stock, usable)
  const over = boughtM3 + fromStockM3 - needM3
  const costCoins = costOf(bought.counts, usable)
  return {
    buy: named(bought.counts, usable),
    fromStock: named(stock, usable),
    boughtM3,
    fromStockM3,
    leftoverM3: Math.max(0, over),
    // Less than a drop is rounding of the need to whole mm³.
    shortM3: over < -1e-8 ? -over : 0,
    ...(costCoins === undefined ? {} : { costCoins }),
    notes,
  }
}

function costOf(counts: readonly number[], packs: readonly Pack[]): number | undefined {
  let sum = 0
  for (const [at, pack] of packs.entries()) {
    const count = counts[at] ?? 0
    if (count === 0) continue
    if (pack.priceCoins === undefined) return undefined
    sum += count * pack.priceCoins
  }
  return sum
}

function isUsable(pack: Pack): boolean {
  return (
    pack.volumeM3 >= smallestPackM3 &&
    pack.volumeM3 <= largestNeedM3 &&
    isWhole(pack.inStock) &&
    (pack.priceCoins === undefined || (isWhole(pack.priceCoins) && pack.priceCoins <= highestPriceCoins))
  )
}

const isWhole = (value: number): boolean => Number.isSafeInteger(value) && value >= 0

// Both the need and the packs round up, so that n packs always cover a need of n packs.
const toWhole = (volumeM3: number): number => Math.ceil(volumeM3 * cubicMillimetres - 0.001)

const volumeOf = (counts: readonly number[], packs: readonly Pack[]): number =>
  packs.reduce((sum, pack, at) => sum + (counts[at] ?? 0) * toWhole(pack.volumeM3), 0)

const cubicMetresOf = (counts: readonly number[], packs: readonly Pack[]): number =>
  packs.reduce((sum, pack, at) => sum + (counts[at] ?? 0) * pack.volumeM3, 0)

const named = (counts: readonly number[], packs: readonly Pack[]): readonly PackCount[] =>
  packs.map((pack, at) => ({ pack: pack.id, count: counts[at] ?? 0 })).filter(({ count }) => count > 0)

const nothing = (notes: readonly Note[]): Cover => ({
  buy: [],
  fromStock: [],
  boughtM3: 0,
  fromStockM3: 0,
  leftoverM3: 0,
  shortM3: 0,
  notes,
})

const needFault = (needM3: number): Note => ({
  code: 'stores.needOutOfRange',
  severity: 'fault',
  data: { volumeL: needM3 * 1000, mostL: largestNeedM3 * 1000 },
})

const packFault = (pack: Pack): Note => ({
  code: 'stores.packNotUsable',
  severity: 'fault',
  data: { pack: pack.id, volumeL: pack.volumeM3 * 1000, inStock: pack.inStock },
})

const noPacks = (needM3: number): Note => ({
  code: 'stores.noPacks',
  severity: 'missing',
  data: { volumeL: needM3 * 1000 },
})

function priceNotes(packs: readonly Pack[]): readonly Note[] {
  const unpriced = packs.filter((pack) => pack.priceCoins === undefined)
  if (unpriced.length === 0 || unpriced.length === packs.length) return []
  return unpriced.map((pack) => ({
    code: 'stores.packUnpriced',
    severity: 'missing',
    data: { pack: pack.id },
  }))
}

const bulkNote = (bulk: Bulk, packs: readonly Pack[]): Note => ({
  code: 'stores.bulkInOnePack',
  severity: 'info',
  data: { pack: packs[bulk.at]?.id ?? '', count: bulk.count },
})
