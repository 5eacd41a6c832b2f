/** The plan without what is too much to copy on every edit, and what of it has changed since the last one. */
import type { Conditions, Plan } from '#plan'
import type { PlannedMessage, ShownConditions, ShownPlan } from './messages.ts'

/** A plan and what is shown of it. */
export type Shown = { readonly plan: Plan; readonly shown: ShownPlan }

/** What is shown is the same object as before where the plan's is. */
export function showPlan(plan: Plan, before: Shown | undefined): Shown {
  const { conditions, ...rest } = plan
  const same = before !== undefined && before.plan.conditions === conditions
  return {
    plan,
    shown: { ...rest, conditions: same ? before.shown.conditions : shownConditions(conditions) },
  }
}

const shownConditions = (conditions: Conditions): ShownConditions => ({
  ...conditions,
  zones: conditions.zones.map(({ failing: _, ...hours }) => hours),
})

/** Stages whose object is another than before, and those that are gone. */
export function stagesSince(
  before: ShownPlan | undefined,
  now: ShownPlan,
): Pick<PlannedMessage, 'stages' | 'gone'> {
  const names = (plan: ShownPlan) => Object.keys(plan) as (keyof ShownPlan)[]
  return {
    stages: Object.fromEntries(
      names(now)
        .filter((name) => now[name] !== before?.[name])
        .map((name) => [name, now[name]]),
    ),
    gone: before ? names(before).filter((name) => !(name in now)) : [],
  }
}
