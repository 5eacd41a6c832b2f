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
  const free = steps.filter((step) => waiting.get(step.id) === 0)
  const ordered: WorkStep[] = []
  while (free.length > 0) {
    const [step] = free.splice(lowest(free, rank), 1) as [WorkStep]
    ordered.push(step)
    for (const next of dependents.get(step.id) ?? []) {
      const left = waiting.get(next.id)! - 1
      waiting.set(next.id, left)
      if (left === 0) free.push(next)
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

function lowest(free: readonly WorkStep[], rank: ReadonlyMap<string, number>): number {
  return free.reduce(
    (best, step, index) => (rank.get(step.id)! < rank.get(free[best]!.id)! ? index : best),
    0,
  )
}
