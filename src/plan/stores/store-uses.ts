/** What each coat takes of a product and on which day, and what is known of no day: repairs and lost coats. */
import type { StoreUse } from '#core/stores'
import type { Days, Quantities, SheetQuantity, Steps } from '../types.ts'

const minutesADay = 24 * 60

export function storeUses(
  quantity: SheetQuantity,
  {
    quantities,
    steps,
    days,
  }: { readonly quantities: Quantities; readonly steps: Steps; readonly days: Days },
): readonly StoreUse[] {
  const startOf = new Map(days.placed.map((one) => [one.step, one.startMinute]))
  const layers = new Map(quantities.layers.map((layer) => [layer.id, layer]))
  const coats = steps.steps.flatMap((step): readonly (StoreUse & { readonly mixedM3: number })[] => {
    const layer = layers.get(`${step.zone}:${step.layer}`)
    if (step.sheet !== quantity.sheet || step.coat === undefined || layer?.sheet !== quantity.sheet) return []
    const minute = startOf.get(step.id)
    const mixedM3 = layer.mixedPerCoatM3
    return [
      {
        mixedM3,
        needM3: sharedOut(mixedM3, quantity),
        ...(minute === undefined ? {} : { day: Math.floor(minute / minutesADay) }),
      },
    ]
  })
  const rest = quantity.mixedM3 - coats.reduce((sum, { mixedM3 }) => sum + mixedM3, 0)
  return [...coats, ...(rest > 1e-12 ? [{ needM3: sharedOut(rest, quantity) }] : [])]
}

const sharedOut = (mixedM3: number, { partsM3, mixedM3: all }: SheetQuantity): readonly number[] =>
  partsM3.map((part) => (part * mixedM3) / all)
