/** One product as it is bought: what it takes, what is there already, and the packs still to buy. */
import type { Note } from '#core/note'
import { type Purchase, purchase, reserve, type ShelfPack, type SoldPack } from '#core/stores'
import type { MoneyTerms, Work } from '#job'
import type { Known } from '../known.ts'
import type { Days, Quantities, ResolvedSheet, SheetQuantity, Steps, StoreItem, StorePack } from '../types.ts'
import { packParts, partsDisagree } from './pack-parts.ts'
import { shortSide } from './short-side.ts'
import { storeUses } from './store-uses.ts'

export type ItemInput = {
  readonly quantities: Quantities
  readonly packs: Work['packs']
  /** Without prices the least volume is bought, with them the cheapest packs. */
  readonly prices: MoneyTerms['prices'] | undefined
  readonly steps: Steps
  readonly days: Days
  readonly known: Known
}

type WrittenPack = Work['packs'][number]

/** Roles whose colour is looked at: two batches side by side are seen. */
const seenRoles: readonly string[] = ['finish', 'non-skid']

/** Reserve by what it is for; a finish keeps some back for touch-up. */
export function storeItem(
  input: ItemInput,
  sheet: ResolvedSheet,
  quantity: SheetQuantity,
): { readonly item: StoreItem; readonly notes: readonly Note[] } {
  const { known } = input
  const share = known.reserveByRole[sheet.role]?.value ?? 0
  const touchUpM3 = sheet.role === 'finish' ? known.touchUpM3.value : 0
  const packs = input.packs.filter((pack) => pack.sheet === sheet.id)
  const isSeen = seenRoles.includes(sheet.role)
  const openDays = openDaysOf(sheet, { isSeen, known })
  const found = purchase({
    uses: storeUses(quantity, input),
    reserveShare: share,
    touchUpM3: quantity.partsM3.map((part) => (part * touchUpM3) / quantity.mixedM3),
    sold: packs
      .filter(isSold)
      .map((pack): SoldPack => ({ ...soldPack(input, pack), partsM3: packParts(pack, sheet) })),
    shelf: packs.flatMap((pack) => shelfPacks(pack, sheet)),
    oneBatch: isSeen,
    ...(openDays === undefined ? {} : { openDays }),
  })
  const { reserveM3 } = reserve({ needM3: quantity.mixedM3, share, extraM3: touchUpM3 })
  const short = shortSide(sheet.id, input.steps)
  const leftoverPartsM3 = withUnusedBought(
    found,
    packs.flatMap((pack) => shelfPacks(pack, sheet)),
  )
  return {
    item: {
      sheet: sheet.id,
      name: sheet.name,
      colour: sheet.colour,
      needM3: quantity.mixedM3,
      reserveM3,
      buy: found.buy.map(({ pack, count }) => storePack(input, pack, count)),
      bought: packs.flatMap((pack) => (pack.bought ? [storePack(input, pack.id, pack.bought)] : [])),
      fromStock: found.fromStock
        .filter(({ pack }) => pack.startsWith(lots.inStock))
        .map(({ pack, count }) => storePack(input, packOf(pack), count)),
      shortM3: sumOf(found.shortM3),
      leftoverM3: sumOf(leftoverPartsM3),
      leftoverPartsM3,
      ...(short === undefined ? {} : { shortSide: short }),
      certainty: quantity.certainty,
    },
    notes: [...notesOf({ found, packs, openDays }), ...shelfNotes(sheet, found, input.days)].map((note) => ({
      ...note,
      data: { ...note.data, sheet: sheet.id, name: sheet.name },
    })),
  }
}

/** What was bought for the job and is not needed after all is left over too. */
function withUnusedBought(found: Purchase, shelf: readonly ShelfPack[]): readonly number[] {
  const unused = shelf
    .filter(({ id, forThisJob }) => forThisJob && !found.refused.some(({ pack }) => pack === id))
    .map(({ id, count, partsM3 }) => {
      const used = found.fromStock.find(({ pack }) => pack === id)?.count ?? 0
      return { partsM3, count: count - used }
    })
  return found.leftoverM3.map((left, part) =>
    unused.reduce((sum, { partsM3, count }) => sum + count * (partsM3[part] ?? 0), left),
  )
}

const sumOf = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0)

const daysOf = (hours: number): number => hours / 24

/** By its own sheet; else hardener that has stood open for too long does not go on what is seen. */
function openDaysOf(
  { mix, openedLifeH }: ResolvedSheet,
  { isSeen, known }: { readonly isSeen: boolean; readonly known: Known },
): number | undefined {
  if (openedLifeH) return daysOf(openedLifeH.value)
  return isSeen && (mix.value[1] ?? 0) > 0 ? daysOf(known.hardenerOpenHours.value) : undefined
}

const isSold = (pack: WrittenPack): boolean => pack.opened === undefined

function soldPack({ prices }: ItemInput, { id }: WrittenPack): Omit<SoldPack, 'partsM3'> {
  const priceCoins = prices?.find((one) => one.pack === id)?.price.coins
  return { id, ...(priceCoins === undefined ? {} : { priceCoins }) }
}

function storePack(input: ItemInput, id: string, count: number): StorePack {
  const pack = input.packs.find((one) => one.id === id)
  const priceCoins = pack && soldPack(input, pack).priceCoins
  return {
    pack: id,
    count,
    volumeM3: pack?.volume.value ?? 0,
    shop: pack?.shop ?? '',
    ...(priceCoins === undefined ? {} : { priceCoins }),
  }
}

/** One line of the document may hold what was bought for this job and what was there before. */
const lots = { inStock: 'stock ', bought: 'bought ' } as const

const packOf = (lot: string): string => lot.slice(lot.indexOf(' ') + 1)

function shelfPacks(pack: WrittenPack, sheet: ResolvedSheet): readonly ShelfPack[] {
  const { id, inStock = 0, bought = 0, batch = '', opened, bestBefore } = pack
  const common = {
    partsM3: packParts(pack, sheet),
    batch,
    ...(opened === undefined ? {} : { openedDay: dayOf(opened) }),
    ...(bestBefore === undefined ? {} : { bestBeforeDay: dayOf(bestBefore) }),
  }
  return [
    ...(bought > 0 ? [{ ...common, id: `${lots.bought}${id}`, count: bought, forThisJob: true }] : []),
    ...(inStock > 0 ? [{ ...common, id: `${lots.inStock}${id}`, count: inStock, forThisJob: false }] : []),
  ]
}

const dayOf = (date: string): number => Date.parse(`${date}T00:00:00Z`) / 86_400_000

const refusals = {
  'past its date': 'stores.pastDate',
  'open too long': 'stores.openTooLong',
  'other batch': 'stores.otherBatch',
} as const

type Noted = {
  readonly found: Purchase
  readonly packs: readonly WrittenPack[]
  readonly openDays: number | undefined
}

function notesOf({ found, packs, openDays }: Noted): readonly Note[] {
  const [first, last] = [found.spans[0], found.spans.at(-1)]
  const openedAgain: readonly Note[] =
    found.spans.length > 1 && openDays !== undefined
      ? [
          {
            code: 'stores.openedAgain',
            severity: 'caution',
            data: {
              count: found.spans.length,
              days: (last?.untilDay ?? 0) - (first?.fromDay ?? 0),
              mostDays: openDays,
            },
          },
        ]
      : []
  return [
    ...found.notes,
    ...found.refused.map(
      ({ pack, why }): Note => ({ code: refusals[why], severity: 'info', data: { pack: packOf(pack) } }),
    ),
    ...openedAgain,
    ...packs
      .filter(partsDisagree)
      .map((pack): Note => ({ code: 'stores.packParts', severity: 'caution', data: { pack: pack.id } })),
  ]
}

/** Bought when the job begins, it has to keep until its last coat. */
function shelfNotes(
  { shelfLifeH }: ResolvedSheet,
  { buy, spans }: Purchase,
  { placed }: Days,
): readonly Note[] {
  const untilDay = spans.at(-1)?.untilDay
  if (!shelfLifeH || untilDay === undefined || buy.length === 0 || placed.length === 0) return []
  const fromDay = Math.floor(Math.min(...placed.map(({ startMinute }) => startMinute)) / MINUTES_A_DAY)
  const keepsDays = daysOf(shelfLifeH.value)
  if (untilDay - fromDay <= keepsDays) return []
  return [
    { code: 'stores.boughtTooSoon', severity: 'caution', data: { days: untilDay - fromDay, keepsDays } },
  ]
}

const MINUTES_A_DAY = 24 * 60
