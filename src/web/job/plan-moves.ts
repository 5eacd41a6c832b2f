/** What the last plans moved, and by what: an edit, the log, or other weather. The clock alone is not told. */
import type { ShownPlan } from '../worker/messages.ts'
import { howItMoved, isStill } from './how-it-moved.ts'
import { mostMoves, type PlanMove } from './plan-move.ts'

export type PlanMoves = {
  /** Newest first. */
  readonly list: () => readonly PlanMove[]
  readonly see: (plan: ShownPlan | undefined, now: { readonly number: number; readonly atMs: number }) => void
}

/** Lives as long as the job is open; `kept` are those of before, and `keep` is told whenever there is one more. */
export function createPlanMoves(
  kept: readonly PlanMove[] = [],
  keep: (list: readonly PlanMove[]) => void = () => {},
): PlanMoves {
  let last: { readonly plan: ShownPlan; readonly number: number } | undefined
  let list = kept
  return {
    list: () => list,
    see: (plan, { number, atMs }) => {
      if (plan === undefined || plan === last?.plan) return
      const by = last && causeOf(last, { plan, number })
      const moved = by && last && howItMoved(last.plan, plan)
      last = { plan, number }
      if (!by || !moved || isStill(moved)) return
      list = [{ moved, number, atMs, by }, ...list].slice(0, mostMoves)
      keep(list)
    },
  }
}

type Seen = { readonly plan: ShownPlan; readonly number: number }

/** Undefined for the clock alone, and for the weather that a first plan did not wait for. */
function causeOf(was: Seen, is: Seen): PlanMove['by'] | undefined {
  const [before, now] = [was.plan.stamp, is.plan.stamp]
  if (before.weather !== now.weather || before.typical !== now.typical) {
    const came = (was: string | undefined, is: string | undefined) => was === undefined || was === is
    const awaited =
      before.work === now.work && came(before.weather, now.weather) && came(before.typical, now.typical)
    return awaited ? undefined : 'weather'
  }
  if (before.work !== now.work) return was.number === is.number ? 'elsewhere' : 'edit'
  return before.log === now.log ? undefined : 'log'
}
