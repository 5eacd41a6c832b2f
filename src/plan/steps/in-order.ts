/** Puts steps in the order in which they pick their hours: by phase, but never before what they need. */
import type { WorkStep } from '../types.ts'

/**
 * Stable topological order; among the steps that are free to go, the lowest phase and then the one drawn
 * up first. Steps that wait for each other in a ring are left out and returned apart.
 */
export function inOrder(steps: readonly WorkStep[]): {
  readonly ordered: readonly WorkStep[]
  readonly ring: readonly WorkStep[]
} {
  const rank = new Map([...steps].sort((a, b) => a.phase - b.phase).map((step, index) => [step.id, index]))
  const waiting = new Map(steps.map((step) => [step.id, new Set(step.needs.map((need) => need.step)).size]))
  const dependents = dependentsOf(steps)
  /** The one to go next is the last. */
  const free = steps
    .filter((step) => waiting.get(step.id) === 0)
    .sort((a, b) => rank.get(b.id)! - rank.get(a.id)!)
  const ordered: WorkStep[] = []
  for (let step = free.pop(); step !== undefined; step = free.pop()) {
    ordered.push(step)
    for (const next of dependents.get(step.id) ?? []) {
      const left = waiting.get(next.id)! - 1
      waiting.set(next.id, left)
      if (left === 0) free.splice(placeIn(free, rank, rank.get(next.id)!), 0, next)
    }
  }
  return { ordered, ring: steps.filter((step) => waiting.get(step.id)! > 0) }
}

function dependentsOf(steps: readonly WorkStep[]): ReadonlyMap<string, readonly WorkStep[]> {
  const dependents = new Map<string, WorkStep[]>(steps.map((step) => [step.id, []]))
  for (const step of steps) {
    for (const id of new Set(step.needs.map((need) => need.step))) dependents.get(id)?.push(step)
  }
  return dependents
}

/** Where a step of this rank belongs among those that are free, the highest rank first. */
function placeIn(free: readonly WorkStep[], rank: ReadonlyMap<string, number>, own: number): number {
  let [from, to] = [0, free.length]
  while (from < to) {
    const middle = (from + to) >> 1
    if (rank.get(free[middle]!.id)! > own) from = middle + 1
    else to = middle
  }
  return from
}
