/** On how many like days of a typical year a coat or an hour behind the forecast would be good. */
import { type HourOrigin, likeDaysOf, likeDaysOfWork, originOf } from '#plan'
import { labelOf } from '#words'
import type { JobView } from '../../job/job-view.ts'
import type { ShownHours, ShownPlan } from '../../worker/messages.ts'
import { stepOf } from '../today/today-state.ts'

/** Of a step that is placed and not done; undefined where no hour of it is behind the forecast. */
export function likeDaysOfStep(plan: ShownPlan, id: string) {
  const placed = plan.days.placed.find(({ step }) => step === id)
  if (!placed || placed.done) return undefined
  const hoursKey = stepOf(plan, id)?.hoursKey
  return likeDaysOfWork({ zones: plan.conditions.zones, hoursKey, pieces: placed.pieces })
}

/** The sentence for a bar; undefined where there is nothing to count. */
export function barLikeText({ words }: JobView, plan: ShownPlan, id: string): string | undefined {
  const like = likeDaysOfStep(plan, id)
  return like && words.sentence('daysscreen.likeBar', { least: like.least, of: like.of })
}

export function hourLikeText({ words }: JobView, hours: ShownHours, minute: number): string | undefined {
  const like = likeDaysOf(hours, { fromMinute: minute, toMinute: minute + 60 })
  return like && words.sentence('daysscreen.likeHour', { count: like.least, of: like.of })
}

export const originLabel = (plan: ShownPlan, minute: number): string => {
  const origin: HourOrigin = originOf(plan.conditions.horizon, minute)
  return labelOf(`hourOrigin.${origin}`)
}
