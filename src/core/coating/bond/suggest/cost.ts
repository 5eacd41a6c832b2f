/** What build-ups are weighed by; whole numbers, so that sums in any order are the same. */

export type Cost = {
  /** Joints that do not hold. */
  readonly misses: number
  /** Of paint that has no price, ml; never weighed against money. */
  readonly unpricedMl: number
  readonly coins: number
  readonly days: number
  readonly layers: number
}

/** A finished build-up also has how long its finish lasts. */
export type Worth = Cost & { readonly lifeHours: number }

export const add = (one: Cost, other: Cost): Cost => ({
  misses: one.misses + other.misses,
  unpricedMl: one.unpricedMl + other.unpricedMl,
  coins: one.coins + other.coins,
  days: one.days + other.days,
  layers: one.layers + other.layers,
})

/** No worse in anything. */
export const covers = (one: Cost, other: Cost): boolean =>
  one.misses <= other.misses &&
  one.unpricedMl <= other.unpricedMl &&
  one.coins <= other.coins &&
  one.days <= other.days &&
  one.layers <= other.layers

export const outdoes = (one: Worth, other: Worth): boolean =>
  covers(one, other) && one.lifeHours >= other.lifeHours

export const criteria = ['cost', 'life', 'days', 'layers'] as const
export type Criterion = (typeof criteria)[number]

/** By one criterion first, by the others in their order after it; below 0 when the first is better. */
export function compareBy(criterion: Criterion, one: Worth, other: Worth): number {
  for (const each of [criterion, ...criteria]) {
    const difference = differences[each](one, other)
    if (difference !== 0) return difference
  }
  return 0
}

const differences: Readonly<Record<Criterion, (one: Worth, other: Worth) => number>> = {
  cost: (one, other) => one.unpricedMl - other.unpricedMl || one.coins - other.coins,
  life: (one, other) => other.lifeHours - one.lifeHours,
  days: (one, other) => one.days - other.days,
  layers: (one, other) => one.layers - other.layers,
}

/** Fewest misses first, then cost, days, layers: an order that adding the same to both keeps. */
export const compareMisses = (one: Cost, other: Cost): number =>
  one.misses - other.misses ||
  one.unpricedMl - other.unpricedMl ||
  one.coins - other.coins ||
  one.days - other.days ||
  one.layers - other.layers
