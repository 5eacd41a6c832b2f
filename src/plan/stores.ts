/** What to buy: whole packs over need and reserve, and what the work eats up. */

import type { Note } from '#core/note'
import { type ConsumableUse, consumables, cover, reserve } from '#core/stores'
import type { MoneyTerms, Work } from '#job'
import type { Known } from './known.ts'
import type { Stage } from './remember.ts'
import type {
  BuildUps,
  ConsumableItem,
  Days,
  Marks,
  Pours,
  Quantities,
  ResolvedSheet,
  SheetQuantity,
  Steps,
  StoreItem,
  Stores,
} from './types.ts'

export type StoresInput = {
  readonly quantities: Quantities
  readonly buildUps: BuildUps
  readonly packs: Work['packs']
  /** Without prices the least volume is bought, with them the cheapest packs. */
  readonly prices: MoneyTerms['prices'] | undefined
  readonly steps: Steps
  readonly marks: Marks
  readonly pours: Pours
  readonly days: Days
  readonly known: Known
}

export const stores: Stage<StoresInput, Stores> = { name: 'stores', run: fillShelves }

function fillShelves(input: StoresInput): Stores {
  const bought = input.quantities.sheets.flatMap((quantity) => {
    const sheet = input.buildUps.sheets.find((one) => one.id === quantity.sheet)
    return sheet ? [itemOf(input, sheet, quantity)] : []
  })
  const used = consumables({ rates: input.known.consumableRates, uses: usesOf(input) })
  return {
    items: bought.map((one) => one.item),
    consumables: [...used.needs.map((need) => consumableItem(need, input.known)), ...liquids(input)],
    notes: [...bought.flatMap((one) => one.notes), ...used.notes],
  }
}

/** Reserve by what it is for; a finish keeps some back for touch-up. */
function itemOf(
  input: StoresInput,
  sheet: ResolvedSheet,
  quantity: SheetQuantity,
): { readonly item: StoreItem; readonly notes: readonly Note[] } {
  const share = input.known.reserveByRole[sheet.role]?.value ?? 0
  const extraM3 = sheet.role === 'finish' ? input.known.touchUpM3.value : 0
  const { withReserveM3, reserveM3 } = reserve({ needM3: quantity.mixedM3, share, extraM3 })
  const packs = input.packs.filter((pack) => pack.sheet === sheet.id)
  const found = cover({
    needM3: withReserveM3,
    packs: packs.map((pack) => ({
      id: pack.id,
      volumeM3: pack.volume.value,
      inStock: pack.inStock ?? 0,
      ...priceOf(input, pack.id),
    })),
  })
  const named = (counts: typeof found.buy) =>
    counts.map(({ pack, count }) => ({
      pack,
      count,
      volumeM3: packs.find((one) => one.id === pack)?.volume.value ?? 0,
      ...priceOf(input, pack),
    }))
  const item: StoreItem = {
    sheet: sheet.id,
    name: sheet.name,
    colour: sheet.colour,
    needM3: quantity.mixedM3,
    reserveM3,
    fromStock: named(found.fromStock),
    buy: named(found.buy),
    shortM3: found.shortM3,
    leftoverM3: found.leftoverM3,
    certainty: quantity.certainty,
  }
  return {
    item,
    notes: found.notes.map((note) => ({
      ...note,
      data: { ...note.data, sheet: sheet.id, name: sheet.name },
    })),
  }
}

function priceOf(input: StoresInput, pack: string): { readonly priceCoins?: number } {
  const price = input.prices?.find((one) => one.pack === pack)?.price.coins
  return price === undefined ? {} : { priceCoins: price }
}

/** What each step uses up, by area, edge, pour and person-day. */
export function usesOf(
  input: Pick<StoresInput, 'known' | 'steps' | 'days' | 'pours'>,
): readonly ConsumableUse[] {
  const { known } = input
  const ofSteps = input.steps.steps.flatMap((step) =>
    (known.consumablesByKind[step.kind] ?? []).flatMap((id): readonly ConsumableUse[] => {
      const worn = id === 'disc' ? discFor(step.grit ?? '', known) : id
      const rate = known.consumableRates.find((one) => one.id === worn)
      if (!rate) return []
      const quantity =
        rate.driver === 'areaM2' ? (step.areaM2 ?? 0) : rate.driver === 'lengthM' ? (step.lengthM ?? 0) : 1
      return [{ consumable: worn, driver: rate.driver, quantity, times: 1 }]
    }),
  )
  const personDays = input.days.days.reduce((sum, day) => sum + day.people.length, 0)
  return [
    ...ofSteps,
    ...known.consumablesByPersonDay.map((id) => ({
      consumable: id,
      driver: 'personDays' as const,
      quantity: personDays,
      times: 1,
    })),
    ...known.consumablesByPour.map((id) => ({
      consumable: id,
      driver: 'count' as const,
      quantity: input.pours.pours.length,
      times: 1,
    })),
  ]
}

/** The disc of the grit, or the nearest there is that is no coarser. */
function discFor(grit: string, known: Known): string {
  const number = Number(grit.replace(/\D/g, '')) || 220
  const discs = known.consumableRates.flatMap((rate) =>
    rate.id.startsWith('disc-') ? [Number(rate.id.slice(5))] : [],
  )
  return `disc-${discs.sort((a, b) => a - b).find((disc) => disc >= number) ?? discs.at(-1) ?? 220}`
}

const consumableItem = (
  need: { readonly consumable: string; readonly pieces: number },
  known: Known,
): ConsumableItem => ({
  id: need.consumable,
  amount: need.pieces,
  unit: known.consumableUnits[need.consumable] ?? 'piece',
  certainty: 'assumed',
})

/** Thinner and bead go with a product; they are listed by the litre. */
function liquids(input: StoresInput): readonly ConsumableItem[] {
  return input.quantities.sheets.flatMap((quantity) => [
    ...liquid('thinner', quantity, quantity.thinnerM3),
    ...liquid('bead', quantity, quantity.additiveM3),
  ])
}

function liquid(
  id: string,
  { sheet, certainty }: SheetQuantity,
  volumeM3: number,
): readonly ConsumableItem[] {
  return volumeM3 > 0 ? [{ id, sheet, amount: tenths(volumeM3), unit: 'L', certainty }] : []
}

/** Litres to the next tenth. */
const tenths = (volumeM3: number): number => Math.ceil(volumeM3 * 10_000 - 1e-6) / 10
