/**
 * Exact integer programme for covering a need with whole packs: the least cost, then the least volume over,
 * then the fewest packs, then the packs that come first in the list. Memory and time grow with the need, so
 * the caller keeps it inside `workLimit`.
 */

export type PackKind = {
  /** Whole number of any one unit, above 0. */
  readonly volume: number
  /** Whole coins; 0 for all kinds leaves the choice to volume and count. */
  readonly cost: number
  /** How many there are; Infinity in a shop. */
  readonly most: number
}

/** Counts in the order of the kinds, or undefined when all of them together are not enough. */
export type PackCounts = readonly number[] | undefined

type Best = { readonly cost: number; readonly volume: number; readonly packs: number; readonly take: number }
type Memo = readonly Map<number, Best | undefined>[]

/**
 * Finds the counts that cover `need` (same unit as the volumes, whole).
 * Bellman's recursion over the kinds in their order and what is still to be covered (R. Bellman, Dynamic
 * Programming, 1957); exact, because every quantity is an integer.
 */
export function coverWithPacks(need: number, kinds: readonly PackKind[]): PackCounts {
  const memo: Memo = kinds.map(() => new Map())
  if (bestFrom({ kinds, memo }, 0, need) === undefined) return need > 0 ? undefined : kinds.map(() => 0)
  const counts: number[] = []
  let rest = need
  for (const [at, kind] of kinds.entries()) {
    const take = rest > 0 ? (memo[at]?.get(rest)?.take ?? 0) : 0
    counts.push(take)
    rest -= take * kind.volume
  }
  return counts
}

/** How many combinations `coverWithPacks` looks at, at most. */
export function packWork(need: number, kinds: readonly PackKind[]): number {
  const step = kinds.reduce((all, kind) => commonDivisor(all, kind.volume), 0)
  const states = Math.ceil(need / Math.max(1, step)) + 1
  let reachable = 1
  let work = 0
  for (const kind of kinds) {
    const options = kind === kinds.at(-1) ? 1 : Math.min(kind.most, Math.ceil(need / kind.volume)) + 1
    work += Math.min(reachable, states) * options
    reachable *= options
  }
  return work
}

/** Greatest common divisor. */
export function commonDivisor(a: number, b: number): number {
  return b === 0 ? a : commonDivisor(b, a % b)
}

type Table = { readonly kinds: readonly PackKind[]; readonly memo: Memo }

function bestFrom(table: Table, at: number, rest: number): Best | undefined {
  if (rest <= 0) return { cost: 0, volume: 0, packs: 0, take: 0 }
  const known = table.memo[at]
  if (known === undefined) return undefined
  if (known.has(rest)) return known.get(rest)
  const best = chooseCount(table, at, rest)
  known.set(rest, best)
  return best
}

// Counts run from high to low and a draw keeps the first, so that earlier kinds win draws.
function chooseCount(table: Table, at: number, rest: number): Best | undefined {
  const kind = table.kinds[at]
  if (kind === undefined) return undefined
  let best: Best | undefined
  const most = Math.min(kind.most, Math.ceil(rest / kind.volume))
  const least = at === table.kinds.length - 1 ? most : 0
  for (let take = most; take >= least; take--) {
    const after = bestFrom(table, at + 1, rest - take * kind.volume)
    if (after === undefined) continue
    const here = {
      cost: after.cost + take * kind.cost,
      volume: after.volume + take * kind.volume,
      packs: after.packs + take,
      take,
    }
    if (best === undefined || comesBefore(here, best)) best = here
  }
  return best
}

function comesBefore(a: Best, b: Best): boolean {
  if (a.cost !== b.cost) return a.cost < b.cost
  if (a.volume !== b.volume) return a.volume < b.volume
  return a.packs < b.packs
}
