/** What the work uses up: by area and edge of each step, by coat, by pour, and by the day of everybody who gets dirty. */
import type { ConsumableUse, Driver } from '#core/stores'
import type { Known } from '../known.ts'
import { discFor } from '../sheets/disc-for.ts'
import type { Day, Days, LadderRung, Pours, Steps, WorkStep } from '../types.ts'

export type UsesInput = {
  readonly known: Known
  readonly steps: Steps
  readonly days: Days
  readonly pours: Pours
}

export function usesOf(input: UsesInput): readonly ConsumableUse[] {
  const { known, steps, days, pours } = input
  const personDays = days.days.reduce((sum, day) => sum + dirtyHands(day, steps.steps).size, 0)
  return [
    ...steps.steps.flatMap((step) => ofStep(step, known)),
    ...ofCoats(input),
    ...each(known.consumablesByPersonDay, 'personDays', personDays),
    ...each(known.consumablesByPour, 'count', pours.pours.length),
  ]
}

const each = (ids: readonly string[], driver: Driver, quantity: number): readonly ConsumableUse[] =>
  ids.map((consumable) => ({ consumable, driver, quantity, times: 1 }))

function ofStep(step: WorkStep, known: Known): readonly ConsumableUse[] {
  return (known.consumablesByKind[step.kind] ?? []).flatMap((id): readonly ConsumableUse[] => {
    if (id === 'disc' && step.rungs) return step.rungs.map(rungUse)
    const worn = id === 'disc' ? discFor(step.grit ?? '', known).id : id
    const rate = known.consumableRates.find((one) => one.id === worn)
    if (!rate) return []
    const quantity =
      rate.driver === 'areaM2' ? (step.areaM2 ?? 0) : rate.driver === 'lengthM' ? (step.lengthM ?? 0) : 1
    return each([worn], rate.driver, quantity)
  })
}

const rungUse = ({ disc, areaM2 }: LadderRung): ConsumableUse => ({
  consumable: disc.id,
  driver: 'areaM2',
  quantity: areaM2,
  times: 1,
})

const minutesADay = 24 * 60

/** Zones that get one product on one day are laid with the same cover from the same tray. */
function ofCoats({ known, steps, days }: UsesInput): readonly ConsumableUse[] {
  const startOf = new Map(days.placed.map((one) => [one.step, one.startMinute]))
  const together = new Map<string, { readonly method: string; areaM2: number }>()
  for (const { id, kind, sheet, coat, method = '', areaM2 = 0 } of steps.steps) {
    if (kind !== 'coat') continue
    const minute = startOf.get(id)
    const when = minute === undefined ? id : `day ${Math.floor(minute / minutesADay)}`
    const key = [sheet, coat, method, when].join('|')
    const same = together.get(key)
    if (same) same.areaM2 += areaM2
    else together.set(key, { method, areaM2 })
  }
  return [...together.values()].flatMap(({ method, areaM2 }) =>
    each(known.consumablesByMethod[method] ?? [], 'areaM2', areaM2),
  )
}

/** Who sands, washes, fills or paints that day. */
function dirtyHands({ pieces }: Day, steps: readonly WorkStep[]): ReadonlySet<string> {
  const dirty = new Set(steps.filter(isDirty).map(({ id }) => id))
  return new Set(pieces.flatMap(({ step, people }) => (dirty.has(step) ? people : [])))
}

const isDirty = ({ kind, sheet, dust }: WorkStep): boolean =>
  sheet !== undefined || dust === 'makes' || kind === 'wash'
