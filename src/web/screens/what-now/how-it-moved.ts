/** How a plan moved against an earlier one: the last days, the steps that were put in, and those that are at other hours. */
import type { ShownPlan } from '../../worker/messages.ts'

export type MovedStep = {
  readonly step: string
  /** None where the step is new. */
  readonly fromMinute?: number
  readonly toMinute: number
}

export type Moved = {
  readonly launch?: { readonly fromMinute: number; readonly toMinute: number }
  readonly end?: { readonly fromMinute: number; readonly toMinute: number }
  /** By the new hours, what comes first first. */
  readonly steps: readonly MovedStep[]
  /** No longer fit into the calendar. */
  readonly lost: readonly string[]
}

export function howItMoved(was: ShownPlan, is: ShownPlan): Moved {
  const before = new Map(was.days.placed.map(({ step, startMinute }) => [step, startMinute]))
  const steps = is.days.placed
    .filter(({ step, startMinute, done }) => !done && before.get(step) !== startMinute)
    .map(({ step, startMinute }): MovedStep => {
      const fromMinute = before.get(step)
      return { step, toMinute: startMinute, ...(fromMinute === undefined ? {} : { fromMinute }) }
    })
    .sort((a, b) => a.toMinute - b.toMinute)
  const late = new Set(was.days.unplaced.map(({ step }) => step))
  return {
    ...pair('launch', was.days.launchMinute, is.days.launchMinute),
    ...pair('end', was.days.workEndMinute, is.days.workEndMinute),
    steps,
    lost: is.days.unplaced.map(({ step }) => step).filter((step) => !late.has(step)),
  }
}

function pair<Key extends 'launch' | 'end'>(key: Key, fromMinute?: number, toMinute?: number) {
  return fromMinute === undefined || toMinute === undefined ? {} : { [key]: { fromMinute, toMinute } }
}
