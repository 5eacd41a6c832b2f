/** The next hours that take a coat, place by place, and the minute at which the dew margin closes behind them. */
import type { ShownHours, ShownPlan } from '../../worker/messages.ts'
import { airThen } from '../air-now.ts'
import { hourSpans, hoursOfZone, type Minutes, openStretch } from '../hour-spans.ts'

export type NextStretch = {
  readonly hours: ShownHours
  /** Zones that are judged alike. */
  readonly zones: readonly string[]
  /** Undefined where no hour of the days takes a coat. */
  readonly open: Minutes | undefined
}

/** One for each kind of hours that these zones go by, in the order of the zones. */
export function nextStretches(
  plan: ShownPlan,
  zones: readonly string[],
  within: Minutes,
): readonly NextStretch[] {
  const byKey = new Map<string, { readonly hours: ShownHours; readonly zones: string[] }>()
  for (const zone of zones) {
    const hours = hoursOfZone(plan, zone, within.fromMinute)
    if (!hours) continue
    const known = byKey.get(hours.key) ?? { hours, zones: [] }
    known.zones.push(zone)
    byKey.set(hours.key, known)
  }
  return [...byKey.values()].map(({ hours, zones: alike }) => {
    const stretch = openStretch(hourSpans(hours, within), within.fromMinute)
    const open = stretch && { fromMinute: stretch.fromMs / 60_000, toMinute: stretch.toMs / 60_000 }
    return { hours, zones: alike, open }
  })
}

/**
 * When the skin comes within a margin of the dew point, on a straight line between the hours beside it.
 * @param at.minute start of the first hour whose margin is too small. @returns whole minutes; undefined where no hour
 * before it is known, or that one was too close as well.
 */
export function marginCloses(
  plan: ShownPlan,
  at: { readonly place: string; readonly minute: number; readonly neededK: number },
): number | undefined {
  const [before, then] = [at.minute - 60, at.minute].map((minute) => airThen(plan, at.place, minute)?.marginK)
  if (before === undefined || then === undefined || before < at.neededK || then >= at.neededK)
    return undefined
  return Math.floor(at.minute - 60 + (60 * (before - at.neededK)) / (before - then))
}
