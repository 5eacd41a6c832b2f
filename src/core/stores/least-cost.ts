/**
 * The linear programme beside the integer one: what a need would cost at the least if packs could be broken, and
 * which packs those are. Whole packs never cost less, so a search may stop where the bound is no better.
 */

export type PackKind = {
  /** Whole numbers of any one unit; at least one of them above 0. */
  readonly a: number
  readonly b: number
  /** Whole number, from 0 up. */
  readonly cost: number
  /** How many there are; Infinity in a shop. */
  readonly most: number
}

/** What is still to be covered, in the unit of the kinds. */
export type Rest = { readonly a: number; readonly b: number }

/** The least cost of `restA` and `restB`, not counting packs that are given; Infinity where no kind holds a part. */
export type LeastCost = (restA: number, restB: number) => number

type Price = { readonly a: number; readonly b: number }

/**
 * The least cost over kinds of which there is no end.
 * Dual of the covering programme: the greatest restA yA + restB yB over all prices yA, yB ≥ 0 at which no kind is
 * worth more than it costs, a yA + b yB ≤ cost (D. Gale, H. W. Kuhn, A. W. Tucker, 1951). With two parts it stands
 * in a corner where two of the limits meet, and the corners are few.
 */
export function leastCost(kinds: readonly PackKind[]): LeastCost {
  const hasA = kinds.some((kind) => kind.a > 0)
  const hasB = kinds.some((kind) => kind.b > 0)
  const corners = cornersOf(kinds, { hasA, hasB })
  return (restA, restB) => {
    if ((restA > 0 && !hasA) || (restB > 0 && !hasB)) return Number.POSITIVE_INFINITY
    const wantA = Math.max(0, restA)
    const wantB = Math.max(0, restB)
    let most = 0
    for (const corner of corners) most = Math.max(most, wantA * corner.a + wantB * corner.b)
    return most
  }
}

/** A part that no kind holds has no price: it is never asked for. */
function cornersOf(
  kinds: readonly PackKind[],
  { hasA, hasB }: { readonly hasA: boolean; readonly hasB: boolean },
): readonly Price[] {
  const axes = [
    { a: 1, b: 0, cost: 0 },
    { a: 0, b: 1, cost: 0 },
  ]
  const lines = [...axes, ...kinds]
  const found: Price[] = []
  for (const [at, one] of lines.entries())
    for (const other of lines.slice(at + 1)) {
      const meet = meeting(one, other)
      if (meet === undefined) continue
      const price = { a: hasA ? Math.max(0, meet.a) : 0, b: hasB ? Math.max(0, meet.b) : 0 }
      if (meet.a >= -slack && meet.b >= -slack && kinds.every((kind) => isWithin(kind, price)))
        found.push(price)
    }
  return found
}

type Line = Pick<PackKind, 'a' | 'b' | 'cost'>

function meeting(one: Line, other: Line): Price | undefined {
  const determinant = one.a * other.b - other.a * one.b
  if (determinant === 0) return undefined
  return {
    a: (one.cost * other.b - other.cost * one.b) / determinant,
    b: (other.cost * one.a - one.cost * other.a) / determinant,
  }
}

const slack = 1e-12
/** A corner may lie over a limit by the rounding of its own division. */
const isWithin = (kind: PackKind, price: Price): boolean =>
  kind.a * price.a + kind.b * price.b <= kind.cost + Math.max(1, kind.cost) * 1e-9

/**
 * Counts, not whole, that cover a need at the least cost over kinds of which there is no end; 0 for the others,
 * undefined where they do not cover it. At most two kinds are taken: a basic solution of two limits.
 */
export function brokenPacks(need: Rest, kinds: readonly PackKind[]): readonly number[] | undefined {
  let best: { readonly cost: number; readonly counts: ReadonlyMap<number, number> } | undefined
  const offer = (counts: ReadonlyMap<number, number>): void => {
    let cost = 0
    for (const [at, count] of counts) cost += count * (kinds[at]?.cost ?? 0)
    if (best === undefined || cost < best.cost) best = { cost, counts }
  }
  for (const [at, one] of kinds.entries()) {
    if (Number.isFinite(one.most)) continue
    const alone = Math.max(shareOf(need.a, one.a), shareOf(need.b, one.b))
    if (Number.isFinite(alone)) offer(new Map([[at, alone]]))
    for (const [behind, other] of kinds.slice(at + 1).entries()) {
      if (Number.isFinite(other.most)) continue
      const both = together(need, one, other)
      if (both)
        offer(
          new Map([
            [at, both[0]],
            [at + 1 + behind, both[1]],
          ]),
        )
    }
  }
  return best && kinds.map((_, at) => best?.counts.get(at) ?? 0)
}

const shareOf = (need: number, held: number): number =>
  need <= 0 ? 0 : held > 0 ? need / held : Number.POSITIVE_INFINITY

/** How many of each hold the need to the drop. */
function together(need: Rest, one: PackKind, other: PackKind): readonly [number, number] | undefined {
  const determinant = one.a * other.b - other.a * one.b
  if (determinant === 0) return undefined
  const first = (need.a * other.b - other.a * need.b) / determinant
  const second = (one.a * need.b - need.a * one.b) / determinant
  return first >= 0 && second >= 0 ? [first, second] : undefined
}
