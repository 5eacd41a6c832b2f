/** How a plan moved against an earlier one: the last days, the steps that were put in or left out, and those that are at other hours. */
import { describeStep, type StepText } from '#plan'
import type { ShownPlan } from '../worker/messages.ts'

export type Named = {
  readonly step: string
  /** What it is, as a code of the words. */
  readonly text: StepText
}

export type MovedStep = Named & {
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
  readonly lost: readonly Named[]
  /** No longer part of the work. */
  readonly gone: readonly Named[]
  /** How many of each are not listed. */
  readonly more?: Readonly<Record<'steps' | 'lost' | 'gone', number>>
}

export function howItMoved(was: ShownPlan, is: ShownPlan): Moved {
  const before = new Map(was.days.placed.map(({ step, startMinute }) => [step, startMinute]))
  const steps = is.days.placed
    .filter(({ step, startMinute, done }) => !done && before.get(step) !== startMinute)
    .map(({ step, startMinute }): MovedStep => {
      const fromMinute = before.get(step)
      const named = { step, text: describeStep(is, step), toMinute: startMinute }
      return fromMinute === undefined ? named : { ...named, fromMinute }
    })
    .sort((a, b) => a.toMinute - b.toMinute)
  const late = new Set(was.days.unplaced.map(({ step }) => step))
  const now = new Set([...is.days.placed, ...is.days.unplaced].map(({ step }) => step))
  return {
    ...pair('launch', was.days.launchMinute, is.days.launchMinute),
    ...pair('end', was.days.workEndMinute, is.days.workEndMinute),
    steps,
    lost: is.days.unplaced
      .filter(({ step }) => !late.has(step))
      .map(({ step }) => ({ step, text: describeStep(is, step) })),
    gone: was.days.placed
      .filter(({ step }) => !now.has(step))
      .map(({ step }) => ({ step, text: describeStep(was, step) })),
  }
}

/** Nothing stands at other hours than it did. */
export const isStill = ({ steps, lost, gone, launch, end }: Moved): boolean =>
  steps.length + lost.length + gone.length === 0 &&
  launch?.fromMinute === launch?.toMinute &&
  end?.fromMinute === end?.toMinute

function pair<Key extends 'launch' | 'end'>(key: Key, fromMinute?: number, toMinute?: number) {
  return fromMinute === undefined || toMinute === undefined ? {} : { [key]: { fromMinute, toMinute } }
}
