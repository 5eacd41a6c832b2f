/** The sentences over the sheet Days, and why a step finds no place. */
import { describeStep } from '#plan'
import { cellOf, type JobView } from '../../job/job-view.ts'
import { localDate } from '../../job/local-date.ts'
import { daysBetween, isDate } from '../../job/local-days.ts'
import { notesOf } from '../../job/notes-of.ts'
import type { ShownPlan } from '../../worker/messages.ts'

export function daysTitle(view: JobView, plan: ShownPlan): { readonly title: string; readonly say: string } {
  const { words } = view
  const { days, sessions } = { days: plan.days.days, sessions: plan.days.days.length }
  const hours = days.flatMap(({ people }) => people).reduce((sum, { minutes }) => sum + minutes / 60, 0)
  const coats = plan.steps.steps.filter(({ kind }) => kind === 'coat').length
  return {
    title: titleOf(view, plan),
    // The quote charges the second figure: without it the two sheets seem to disagree.
    say: words.sentence('daysscreen.say', {
      hours,
      days: sessions,
      coats,
      withSessionsPersonHours: hours + plan.days.sessionMinutes / 60,
    }),
  }
}

function titleOf(view: JobView, { days }: ShownPlan): string {
  const { words, timeZone } = view
  const { workEndMinute, launchMinute, unplaced } = days
  if (workEndMinute === undefined || unplaced.length > 0)
    return words.sentence('daysscreen.titleOpen', { count: unplaced.length })
  const endDate = localDate(workEndMinute, timeZone)
  if (launchMinute === undefined) return words.sentence('daysscreen.titleEnd', { endDate })
  const launchDate = localDate(launchMinute, timeZone)
  const wish = cellOf(view, { part: 'work', section: 'job', key: 'launch' })
  if (!isDate(wish)) return words.sentence('daysscreen.title', { endDate, launchDate })
  const spare = daysBetween(launchDate, wish)
  return spare >= 0
    ? words.sentence('daysscreen.titleWish', { endDate, launchDate, spare })
    : words.sentence('daysscreen.titleLate', { endDate, launchDate, late: -spare })
}

/** The causes, each with its reason; the steps that only wait for one of them are named in one breath. */
export function unplacedSentences({ words }: JobView, plan: ShownPlan): readonly string[] {
  const named = (step: string): string => {
    const { code, data } = describeStep(plan, step)
    return words.sentence(code, data)
  }
  const causes = plan.days.unplaced.filter(({ reason }) => reason !== 'needs')
  const waiting = plan.days.unplaced.filter(({ reason }) => reason === 'needs')
  const said = causes.map(({ step, reason }) =>
    words.sentence('daysscreen.unplaced', { step: named(step), reason }),
  )
  if (waiting.length === 0) return said
  const steps = waiting.map(({ step }) => named(step)).join('; ')
  return [...said, words.sentence('daysscreen.waiting', { count: waiting.length, steps })]
}

/** Notes on hours and days, with steps by what they are; what finds no place is told apart from them. */
export function namedNotes({ words }: JobView, plan: ShownPlan): ShownPlan['notes'] {
  const named = (value: unknown): unknown => {
    if (typeof value !== 'string' || !plan.steps.steps.some(({ id }) => id === value)) return value
    const { code, data } = describeStep(plan, value)
    return words.sentence(code, data)
  }
  return notesOf(plan, /^(days|calendar|conditions)\./)
    .filter(({ code }) => code !== 'days.unplaced')
    .map((note) => ({
      ...note,
      data: Object.fromEntries(
        Object.entries(note.data).map(([key, value]) => [key, named(value)]),
      ) as typeof note.data,
    }))
}
