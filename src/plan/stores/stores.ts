/** What to buy: whole packs over need and reserve, and what the work eats up. */

import { type ConsumableUse, consumables } from '#core/stores'
import type { MoneyTerms, Work } from '#job'
import type { Known } from '../known.ts'
import type { Stage } from '../remember.ts'
import { discFor } from '../sheets/disc-for.ts'
import type {
  BuildUps,
  ConsumableItem,
  Days,
  LadderRung,
  Marks,
  Pours,
  Quantities,
  SheetQuantity,
  Steps,
  Stores,
} from '../types.ts'
import { storeItem } from './store-item.ts'

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

/** What each step uses up, by area, edge, pour and person-day. */
export function usesOf(
  input: Pick<StoresInput, 'known' | 'steps' | 'days' | 'pours'>,
): readonly ConsumableUse[] {
  const { known } = input
  const ofSteps = input.steps.steps.flatMap((step) =>
    (known.consumablesByKind[step.kind] ?? []).flatMap((id): readonly ConsumableUse[] => {
      if (id === 'disc' && step.rungs) return step.rungs.map(rungUse)
      const worn = id === 'disc' ? discFor(step.grit ?? '', known).id : id
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

const rungUse = ({ disc, areaM2 }: LadderRung): ConsumableUse => ({
  consumable: disc.id,
  driver: 'areaM2',
  quantity: areaM2,
  times: 1,
})

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
