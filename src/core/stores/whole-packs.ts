/**
 * Exact integer programme for covering two parts with whole packs, some of them kits of both: the least cost, then
 * the least volume, then the fewest packs, then the packs that come first in the list.
 */
import { brokenPacks, type LeastCost, leastCost, type PackKind, type Rest } from './least-cost.ts'

/**
 * Counts in the order of the kinds; `none` when all of them together are not enough, `tooMany` when the search was
 * given up.
 */
export type Covered =
  | { readonly kind: 'counts'; readonly counts: readonly number[] }
  | { readonly kind: 'none' | 'tooMany' }

/** So many packs of the kinds up to one of them, and what they leave to cover. */
type Taken = {
  readonly restA: number
  readonly restB: number
  readonly cost: number
  readonly volume: number
  readonly packs: number
  readonly count: number
  readonly before: Taken | undefined
}
type Worth = { readonly cost: number; readonly volume: number }

/**
 * Finds the counts that cover `need` (whole numbers, same unit as the kinds) in at most `workLimit` tries.
 *
 * Kinds are taken one after the other, and of all ways to leave the same rest the best is kept (R. Bellman, Dynamic
 * Programming, 1957); a way whose linear bound is over the best known cover is left (A. H. Land, A. G. Doig, An
 * automatic method of solving discrete programming problems, 1960). Exact, because every quantity is an integer.
 * Kinds of which there is an end belong first in the list: the bound takes them for free.
 */
export function coverWithPacks(
  need: Rest,
  { kinds, workLimit }: { readonly kinds: readonly PackKind[]; readonly workLimit: number },
): Covered {
  const start: Taken = {
    restA: Math.max(0, need.a),
    restB: Math.max(0, need.b),
    ...{ cost: 0, volume: 0, packs: 0, count: 0 },
    before: undefined,
  }
  if (isCovered(start)) return { kind: 'counts', counts: kinds.map(() => 0) }
  let best: Taken | undefined
  let known: Worth | undefined = quickCover(start, kinds)
  let open: readonly Taken[] = [start]
  let work = 0
  for (const [at, kind] of kinds.entries()) {
    const bound = at + 1 < kinds.length ? boundAfter(kinds.slice(at + 1)) : undefined
    const next: ByRest = new Map()
    for (const before of open) {
      const most = mostOf(kind, before)
      for (let count = most; count >= (bound ? 0 : most); count--) {
        work += 1
        if (work > workLimit) return { kind: 'tooMany' }
        const way = withPacks(before, kind, count)
        if (isCovered(way)) {
          if (best === undefined || comesBefore(way, best)) best = way
          if (known === undefined || isLess(way, known)) known = way
        } else if (bound && !isHopeless(way, bound(way), known)) keep(next, way)
      }
    }
    open = allOf(next)
  }
  return best === undefined ? { kind: 'none' } : { kind: 'counts', counts: countsOf(best, kinds.length) }
}

const isCovered = ({ restA, restB }: Taken): boolean => restA <= 0 && restB <= 0

/** As many as could be of use; the last kind alone decides for itself. */
function mostOf(kind: PackKind, { restA, restB }: Taken): number {
  const forA = kind.a > 0 ? Math.ceil(Math.max(0, restA) / kind.a) : 0
  const forB = kind.b > 0 ? Math.ceil(Math.max(0, restB) / kind.b) : 0
  return Math.min(kind.most, Math.max(forA, forB))
}

const withPacks = (before: Taken, kind: PackKind, count: number): Taken => ({
  restA: Math.max(0, before.restA - count * kind.a),
  restB: Math.max(0, before.restB - count * kind.b),
  cost: before.cost + count * kind.cost,
  volume: before.volume + count * (kind.a + kind.b),
  packs: before.packs + count,
  count,
  before,
})

/** Of all ways to one rest the best is kept. */
type ByRest = Map<number, Map<number, Taken>>

function keep(ways: ByRest, way: Taken): void {
  const row = ways.get(way.restA) ?? new Map<number, Taken>()
  const other = row.get(way.restB)
  if (other === undefined || comesBefore(way, other)) row.set(way.restB, way)
  ways.set(way.restA, row)
}

const allOf = (ways: ByRest): readonly Taken[] => [...ways.values()].flatMap((row) => [...row.values()])

const isLess = (one: Worth, other: Worth): boolean =>
  one.cost < other.cost || (one.cost === other.cost && one.volume < other.volume)

function comesBefore(one: Taken, other: Taken): boolean {
  if (one.cost !== other.cost) return one.cost < other.cost
  if (one.volume !== other.volume) return one.volume < other.volume
  if (one.packs !== other.packs) return one.packs < other.packs
  return isEarlier(chainOf(one), chainOf(other))
}

/** More of the kind that stands first. */
function isEarlier(one: readonly number[], other: readonly number[]): boolean {
  const length = Math.max(one.length, other.length)
  for (let at = 0; at < length; at++) {
    const difference = (one[at] ?? 0) - (other[at] ?? 0)
    if (difference !== 0) return difference > 0
  }
  return false
}

function chainOf(way: Taken): readonly number[] {
  const counts: number[] = []
  for (let one = way; one.before !== undefined; one = one.before) counts.push(one.count)
  return counts.reverse()
}

const countsOf = (way: Taken, length: number): readonly number[] => {
  const counts = chainOf(way)
  return Array.from({ length }, (_, at) => counts[at] ?? 0)
}

/** The linear bound over the kinds to come; what there is an end of is taken off first, for nothing. */
function boundAfter(kinds: readonly PackKind[]): (way: Taken) => number {
  const ended = kinds.filter(({ most }) => Number.isFinite(most))
  const freeA = ended.reduce((sum, { a, most }) => sum + a * most, 0)
  const freeB = ended.reduce((sum, { b, most }) => sum + b * most, 0)
  const least: LeastCost = leastCost(kinds.filter(({ most }) => !Number.isFinite(most)))
  return ({ restA, restB }) => least(restA - freeA, restB - freeB)
}

/** Costs are whole: a bound of 10.2 is 11, but for the rounding of its own division. */
function isHopeless(way: Taken, bound: number, known: Worth | undefined): boolean {
  if (bound === Number.POSITIVE_INFINITY) return true
  if (known === undefined) return false
  const least = way.cost + Math.ceil(bound - 1e-6 - bound * 1e-9)
  return isLess(known, { cost: least, volume: way.volume + way.restA + way.restB })
}

/** Some cover that is soon found: what the linear programme takes, each count rounded up. */
function quickCover(start: Taken, kinds: readonly PackKind[]): Worth | undefined {
  const counts = brokenPacks({ a: start.restA, b: start.restB }, kinds)
  if (counts === undefined) return undefined
  let way = start
  for (const [at, kind] of kinds.entries()) way = withPacks(way, kind, Math.ceil((counts[at] ?? 0) - 1e-9))
  return isCovered(way) ? way : undefined
}
