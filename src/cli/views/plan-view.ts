/** The whole plan as text: the sentence with hours in it first, then each room in the order of the road. */
import type { Work } from '#job'
import { type Plan, shortHash } from '#plan'
import type { Words } from '#words'
import { boatLines } from './boat-view.ts'
import { buildUpLines } from './buildup-view.ts'
import { dateOfMinute, daysLines } from './days-view.ts'
import { marksLines } from './marks-view.ts'
import { moneyLines } from './money-view.ts'
import { cautionLines, noteLines } from './notes-view.ts'
import { repairsLines } from './repairs-view.ts'
import { storesLines } from './stores-view.ts'

export function planLines(plan: Plan, work: Work, words: Words): readonly string[] {
  return [
    headline(plan, work, words),
    ...stampLines(plan, words),
    ...boatLines(plan, words),
    ...repairsLines(plan, words),
    ...buildUpLines(plan, words),
    ...marksLines(plan, words),
    ...daysLines(plan, work, words),
    ...storesLines(plan, words),
    ...moneyLines(plan, words),
    ...cautionLines(plan, words),
    ...noteLines(plan, words),
  ]
}

/** Person-hours in the calendar, the opening and closing of sessions with them: what is clocked and paid. */
export const plannedHours = (plan: Plan): number => {
  const worked = plan.days.days.flatMap((day) => day.people.map((one) => one.minutes))
  return worked.reduce((sum, minutes) => sum + minutes, plan.days.sessionMinutes) / 60
}

export function headline(plan: Plan, work: Work, words: Words): string {
  const name = work.job.boatName ?? work.job.name
  const hours = plannedHours(plan)
  const { workEndMinute, launchMinute } = plan.days
  if (workEndMinute === undefined || plan.days.days.length === 0) {
    return words.sentence('plan.headlineOpen', { name, hours, count: plan.days.unplaced.length })
  }
  return words.sentence(launchMinute === undefined ? 'plan.headlineNoLaunch' : 'plan.headline', {
    name,
    startDate: plan.days.days[0]!.date,
    endDate: dateOfMinute(plan, workEndMinute),
    ...(launchMinute === undefined ? {} : { launchDate: dateOfMinute(plan, launchMinute) }),
    hours,
    count: plan.days.days.length,
  })
}

function stampLines(plan: Plan, words: Words): readonly string[] {
  const { stamp } = plan
  return [
    words.sentence('plan.stamp', {
      app: stamp.app,
      work: shortHash(stamp.work),
      weather:
        [stamp.weather, stamp.typical].flatMap((hash) => (hash ? [shortHash(hash)] : [])).join(' + ') ||
        words.label('stamp.none'),
      catalogue: shortHash(stamp.catalogue),
      madeAtMs: stamp.nowMs,
    }),
  ]
}
