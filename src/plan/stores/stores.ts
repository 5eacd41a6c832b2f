/** What to buy: whole packs over need and reserve, and what the work eats up. */

import { consumables } from '#core/stores'
import type { MoneyTerms, Work } from '#job'
import type { Known } from '../known.ts'
import type { Stage } from '../remember.ts'
import type {
  BuildUps,
  ConsumableItem,
  Days,
  Marks,
  Pours,
  Quantities,
  SheetQuantity,
  Steps,
  Stores,
} from '../types.ts'
import { storeItem } from './store-item.ts'
import { usesOf } from './uses-of.ts'

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
    return sheet ? [storeItem(input, sheet, quantity)] : []
  })
  const used = consumables({ rates: input.known.consumableRates, uses: usesOf(input) })
  return {
    items: bought.map((one) => one.item),
    consumables: [...used.needs.map((need) => consumableItem(need, input.known)), ...liquids(input)],
    notes: [...bought.flatMap((one) => one.notes), ...used.notes],
  }
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
    ...strewn(input, quantity),
  ])
}

function strewn({ quantities }: StoresInput, { sheet }: SheetQuantity): readonly ConsumableItem[] {
  const kg = quantities.layers.reduce((sum, one) => sum + (one.sheet === sheet ? one.broadcastKg : 0), 0)
  if (kg === 0) return []
  return [
    { id: 'strewn-bead', sheet, amount: Math.ceil(kg * 10 - 1e-6) / 10, unit: 'kg', certainty: 'assumed' },
  ]
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
