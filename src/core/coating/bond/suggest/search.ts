/** The two searches: every build-up that nothing outdoes, and the one with the fewest joints that do not hold. */
import { add, type Cost, compareMisses, covers } from './cost.ts'
import type { Graph } from './graph.ts'

/** A way from the ground to a sheet's film. */
export type Label = {
  /** An offer by its place, or a start below 0. */
  readonly at: number
  readonly cost: Cost
  readonly from?: Label
}

/**
 * Label-correcting search for all ways to every film that no other way there covers. What a layer takes depends only
 * on what it meets, and no figure gets better by going on, so a covered way is never worth going on from; a way that
 * comes back to a film it has been at is covered by the one that stopped there.
 * @param limits.without offers that are left out, by their place.
 */
export function waysThatHold(
  graph: Graph,
  { mostLayers, without }: { readonly mostLayers: number; readonly without: ReadonlySet<number> },
): readonly Label[] {
  const best: Label[][] = graph.offers.map(() => [])
  let frontier: readonly Label[] = beginnings(graph)
  for (let layer = 1; layer <= mostLayers && frontier.length > 0; layer++) {
    const next: Label[] = []
    for (const label of frontier) {
      // Covered since it was found: whatever goes on from it is covered too.
      if (label.at >= 0 && !best[label.at]!.includes(label)) continue
      for (let to = 0; to < graph.offers.length; to++) {
        if (to === label.at || without.has(to)) continue
        const step = graph.step(label.at, to)
        if (!step.holds) continue
        const made: Label = { at: to, cost: add(label.cost, step.cost), from: label }
        if (keep(best[to]!, made)) next.push(made)
      }
    }
    frontier = next
  }
  return best.flatMap((labels, at) => (graph.ends(at) ? labels : []))
}

/** Takes a way into the list unless one covers it, and drops those that it covers. */
function keep(labels: Label[], made: Label): boolean {
  if (labels.some((label) => covers(label.cost, made.cost))) return false
  const kept = labels.filter((label) => !covers(made.cost, label.cost))
  labels.splice(0, labels.length, ...kept, made)
  return true
}

/** The way with the fewest joints that do not hold, then the cheapest; layer by layer, the best to each film. */
export function nearestWay(graph: Graph, mostLayers: number): Label | undefined {
  let reached: readonly (Label | undefined)[] = []
  let nearest: Label | undefined
  for (let layer = 1; layer <= mostLayers; layer++) {
    const sources = layer === 1 ? beginnings(graph) : reached.flatMap((label) => (label ? [label] : []))
    const next: (Label | undefined)[] = graph.offers.map(() => undefined)
    for (const label of sources) {
      for (let to = 0; to < graph.offers.length; to++) {
        if (to === label.at) continue
        const { cost, holds } = graph.step(label.at, to)
        const paid = holds ? cost : { ...cost, misses: 1 }
        const made: Label = { at: to, cost: add(label.cost, paid), from: label }
        const known = next[to]
        if (!known || compareMisses(made.cost, known.cost) < 0) next[to] = made
        if (graph.ends(to) && (!nearest || compareMisses(made.cost, nearest.cost) < 0)) nearest = made
      }
    }
    reached = next
  }
  return nearest
}

const beginnings = ({ starts }: Graph): readonly Label[] =>
  starts.map(({ cost }, index) => ({ at: -1 - index, cost }))

/** The start and the offers of a way, from the boat outward. */
export function pathOf(label: Label): { readonly start: number; readonly offers: readonly number[] } {
  const offers: number[] = []
  let at: Label = label
  while (at.from) {
    offers.unshift(at.at)
    at = at.from
  }
  return { start: -1 - at.at, offers }
}
