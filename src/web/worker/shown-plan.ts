/** The plan without what is too much to copy on every edit. */
import type { Conditions, Plan } from '#plan'
import type { ShownConditions, ShownPlan } from './messages.ts'

/** A plan and what is shown of it. */
export type Shown = { readonly plan: Plan; readonly shown: ShownPlan }

/** What is shown is the same object as before where the plan's is. */
export function showPlan(plan: Plan, before: Shown | undefined): Shown {
  const { conditions, ...rest } = plan
  const same = before !== undefined && before.plan.conditions === conditions
  return {
    plan,
    shown: { ...rest, conditions: same ? before.shown.conditions : shownConditions(conditions, before) },
  }
}

function shownConditions(conditions: Conditions, before: Shown | undefined): ShownConditions {
  const shown = new Map(
    before?.plan.conditions.zones.map((zone, index) => [zone, before.shown.conditions.zones[index]!]),
  )
  const withoutLimits = ({ failing: _, ...hours }: Conditions['zones'][number]) => hours
  return { ...conditions, zones: conditions.zones.map((zone) => shown.get(zone) ?? withoutLimits(zone)) }
}
