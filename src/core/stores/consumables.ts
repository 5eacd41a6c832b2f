/** How many discs, covers, cloths, gloves and metres of tape the work eats, from what is done and the rate of each. */
import type { Note } from '#core/note'

/** What a rate is counted on. */
export type Driver = 'areaM2' | 'lengthM' | 'personDays' | 'count'

export type ConsumableRate = {
  readonly id: string
  readonly driver: Driver
  /** Units used per m², metre, person-day or one, each time. */
  readonly perDriver: number
  /** Units in one piece as it is bought: 1 disc, 50 m of tape on a roll, 0.001 m³ of solvent in a can. */
  readonly unitsPerPiece: number
  /** A part that is used counts as a whole one at every use: nobody keeps a roller cover for the next coat. */
  readonly fresh?: boolean
}

/** One piece of work that uses a consumable: an area sanded in passes, a zone coated, an edge taped in stages. */
export type ConsumableUse = {
  readonly consumable: string
  readonly driver: Driver
  /** m², m, person-days or a count. */
  readonly quantity: number
  /** Passes, coats or stages; 1 for something done once. */
  readonly times: number
}

export type ConsumableNeed = {
  readonly consumable: string
  /** Units before rounding, in the unit of the rate. */
  readonly units: number
  /** Whole pieces to have. */
  readonly pieces: number
}

export type Consumables = { readonly needs: readonly ConsumableNeed[]; readonly notes: readonly Note[] }

/**
 * Sums every use of a consumable and rounds up once, to whole pieces; sorted by id, unused ones left out.
 * A use without a rate, with another driver than its rate, or with a figure that is no number from 0 up is
 * left out with a note.
 */
export function consumables({
  rates,
  uses,
}: {
  readonly rates: readonly ConsumableRate[]
  readonly uses: readonly ConsumableUse[]
}): Consumables {
  const rateOf = new Map(rates.map((rate) => [rate.id, rate]))
  const notes: Note[] = []
  const units = new Map<string, number>()
  for (const use of uses) {
    const rate = rateOf.get(use.consumable)
    const problem = problemWith(use, rate)
    if (problem !== undefined) notes.push(problem)
    else units.set(use.consumable, (units.get(use.consumable) ?? 0) + unitsOf(use, rate))
  }
  return {
    needs: [...units]
      .map((entry) => needOf(entry, rateOf))
      .filter(isUsed)
      .sort(byId),
    notes,
  }
}

function unitsOf({ quantity, times }: ConsumableUse, rate: ConsumableRate | undefined): number {
  const once = quantity * (rate?.perDriver ?? 0)
  return times * (rate?.fresh ? whole(once) : once)
}

// Twelve digits: three uses of 0.1 L fill one can of 0.3 L, not two.
const whole = (exact: number): number => Math.ceil(Number(exact.toPrecision(12)))

function needOf(
  [consumable, units]: readonly [string, number],
  rateOf: ReadonlyMap<string, ConsumableRate>,
): ConsumableNeed {
  const exact = units / (rateOf.get(consumable)?.unitsPerPiece ?? 1)
  return { consumable, units, pieces: whole(exact) }
}

const isUsed = (need: ConsumableNeed): boolean => need.pieces > 0

const byId = (a: ConsumableNeed, b: ConsumableNeed): number => (a.consumable < b.consumable ? -1 : 1)

function problemWith(use: ConsumableUse, rate: ConsumableRate | undefined): Note | undefined {
  if (rate === undefined) return note('stores.consumableUnknown', 'missing', use)
  if (rate.driver !== use.driver) return note('stores.consumableDriver', 'fault', use)
  const figures = [use.quantity, use.times, rate.perDriver]
  const sound = figures.every((figure) => figure >= 0 && Number.isFinite(figure)) && rate.unitsPerPiece > 0
  return sound ? undefined : note('stores.consumableFigure', 'fault', use)
}

const note = (code: string, severity: Note['severity'], use: ConsumableUse): Note => ({
  code,
  severity,
  data: { consumable: use.consumable, driver: use.driver },
})
