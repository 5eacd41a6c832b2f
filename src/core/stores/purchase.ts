/**
 * What to buy of one product over the whole job: one batch where its colour is seen, opened packs only as long as
 * they keep, old packs only while they may still be used.
 */
import type { Note } from '#core/note'
import { type Cover, cover, type Pack, type PackCount } from './cover.ts'
import { openSpans, type StoreUse } from './open-spans.ts'
import { type Refused, type ShelfPack, shelfFor } from './shelf.ts'

export type { StoreUse } from './open-spans.ts'
export type { Refused, ShelfPack } from './shelf.ts'

/** A pack that a shop sells. */
export type SoldPack = {
  readonly id: string
  readonly partsM3: readonly number[]
  readonly priceCoins?: number
}

export type PurchaseInput = {
  /** What each coat takes of each part, without reserve. */
  readonly uses: readonly StoreUse[]
  /** Bought over the need, share of it. */
  readonly reserveShare: number
  /** Put by of each part once all coats are on, m³. */
  readonly touchUpM3: readonly number[]
  readonly sold: readonly SoldPack[]
  readonly shelf: readonly ShelfPack[]
  /** Its colour is seen: packs of two batches never meet. */
  readonly oneBatch: boolean
  /** How long a pack keeps once it is opened; left out, as long as the job. */
  readonly openDays?: number
}

export type Purchase = Omit<Cover, 'notes'> & {
  /** From the first to the last day that one opening of packs serves; one where nothing goes off. */
  readonly spans: readonly { readonly fromDay?: number; readonly untilDay?: number }[]
  /** What stays on the shelf, and why. */
  readonly refused: readonly Refused[]
  readonly notes: readonly Note[]
}

/**
 * The least cost at which every span is covered, each by whole packs of its own: what is left open at its end is
 * not counted on any more, what is left closed is. Where the colour is seen, either one batch from the shelf does
 * for all of it, or all of it is bought in one purchase; what was bought for this job counts as that purchase.
 * Exact for each span; spans follow each other, the earlier one taking from the shelf first, since packs age.
 */
export function purchase(input: PurchaseInput): Purchase {
  const spans = openSpans(input)
  const lastDay = spans.at(-1)?.untilDay
  const { usable, refused } = shelfFor(input.shelf, {
    ...(spans[0]?.fromDay === undefined ? {} : { firstDay: spans[0].fromDay }),
    ...(lastDay === undefined ? {} : { lastDay }),
    ...(input.openDays === undefined ? {} : { openDays: input.openDays }),
  })
  const ways = waysToCover(usable, input).map((way) => ({ way, covers: coverSpans(spans, way) }))
  const best = ways.reduce((one, other) => (isBetter(other.covers, one.covers) ? other : one))
  const kept = usable.filter((pack) => !best.way.shelf.includes(pack))
  return {
    ...together(best.covers),
    spans: spans.map(({ fromDay, untilDay }) => ({
      ...(fromDay === undefined ? {} : { fromDay }),
      ...(untilDay === undefined ? {} : { untilDay }),
    })),
    refused: [...refused, ...kept.map((pack): Refused => ({ pack: pack.id, why: 'other batch' }))],
    notes: best.covers.flatMap(({ notes }) => notes).filter(isFirst),
  }
}

type Way = { readonly shelf: readonly ShelfPack[]; readonly sold: readonly SoldPack[] }

/** Everything together; or, where only one batch may be, the purchase by itself and each old batch by itself. */
function waysToCover(shelf: readonly ShelfPack[], { oneBatch, sold }: PurchaseInput): readonly Way[] {
  if (!oneBatch) return [{ shelf, sold }]
  const bought = shelf.filter((pack) => pack.forThisJob)
  const batches = new Set(bought.map(({ batch }) => batch).filter((batch) => batch !== ''))
  const own = shelf.filter((pack) => pack.forThisJob || batches.has(pack.batch))
  const old = shelf.filter((pack) => !own.includes(pack))
  const named = [...new Set(old.map(({ batch }) => batch).filter((batch) => batch !== ''))]
  return [
    { shelf: own, sold },
    ...named.map((batch) => ({ shelf: old.filter((pack) => pack.batch === batch), sold: [] })),
    // Nobody wrote a batch down: each lot stands for itself.
    ...old.filter(({ batch }) => batch === '').map((pack) => ({ shelf: [pack], sold: [] })),
  ]
}

function coverSpans(spans: readonly { readonly needM3: readonly number[] }[], way: Way): readonly Cover[] {
  const left = new Map(way.shelf.map((pack) => [pack.id, pack.count]))
  return spans.map(({ needM3 }) => {
    const packs: readonly Pack[] = [
      ...way.shelf.map(({ id, partsM3 }) => ({ id, partsM3, inStock: left.get(id) ?? 0, isSold: false })),
      ...way.sold.map((pack) => ({ ...pack, inStock: 0, isSold: true })),
    ]
    const found = cover({ needM3, packs })
    for (const { pack, count } of found.fromStock) left.set(pack, (left.get(pack) ?? 0) - count)
    return found
  })
}

const sumOf = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0)

/** Less missing, then cheaper, then less bought, then less opened; what has no price is dearer than what has one. */
function isBetter(one: readonly Cover[], other: readonly Cover[]): boolean {
  const key = (covers: readonly Cover[]): readonly number[] => [
    inMm3(sumOf(covers.flatMap(({ shortM3 }) => shortM3))),
    sumOf(covers.map(({ costCoins }) => costCoins ?? Number.POSITIVE_INFINITY)),
    inMm3(sumOf(covers.map(({ boughtM3 }) => (covers.every(isPriced) ? 0 : boughtM3)))),
    inMm3(sumOf(covers.map(({ boughtM3, fromStockM3 }) => boughtM3 + fromStockM3))),
  ]
  const others = key(other)
  for (const [at, value] of key(one).entries()) if (value !== others[at]) return value < (others[at] ?? 0)
  return false
}

const inMm3 = (volumeM3: number): number => Math.round(volumeM3 * 1e9)

const isPriced = ({ costCoins }: Cover): boolean => costCoins !== undefined

function together(covers: readonly Cover[]): Omit<Cover, 'notes'> {
  return {
    buy: merged(covers.flatMap(({ buy }) => buy)),
    fromStock: merged(covers.flatMap(({ fromStock }) => fromStock)),
    boughtM3: sumOf(covers.map(({ boughtM3 }) => boughtM3)),
    fromStockM3: sumOf(covers.map(({ fromStockM3 }) => fromStockM3)),
    leftoverM3: byPart(covers.map(({ leftoverM3 }) => leftoverM3)),
    shortM3: byPart(covers.map(({ shortM3 }) => shortM3)),
    ...(covers.every(isPriced) ? { costCoins: sumOf(covers.map(({ costCoins }) => costCoins ?? 0)) } : {}),
  }
}

const byPart = (rows: readonly (readonly number[])[]): readonly number[] =>
  (rows[0] ?? []).map((_, part) => sumOf(rows.map((row) => row[part] ?? 0)))

function merged(counts: readonly PackCount[]): readonly PackCount[] {
  const sums = new Map<string, number>()
  for (const { pack, count } of counts) sums.set(pack, (sums.get(pack) ?? 0) + count)
  return [...sums].map(([pack, count]) => ({ pack, count })).sort((a, b) => (a.pack < b.pack ? -1 : 1))
}

const isFirst = (note: Note, at: number, all: readonly Note[]): boolean =>
  all.findIndex((one) => JSON.stringify(one) === JSON.stringify(note)) === at
