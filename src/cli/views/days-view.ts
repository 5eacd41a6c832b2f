/** The days: who does what, when, and the dates that matter. */

import type { Work } from '#job'
import { type Day, describeStep, likeDaysOfWork, type Plan } from '#plan'
import type { Words } from '#words'
import { section } from './table.ts'

export function daysLines(plan: Plan, work: Work, words: Words): readonly string[] {
  return section(
    words.label('heading.days'),
    plan.days.days.flatMap((day) => dayLines(plan, day, { work, words })),
  )
}

type Setting = { readonly work: Work; readonly words: Words }

export const personName = (work: Work, id: string): string =>
  work.people.find((person) => person.id === id)?.name ?? id

function dayLines(plan: Plan, day: Day, { work, words }: Setting): readonly string[] {
  const zone = plan.days.timeZone
  const people = day.people.map(
    (one) => `${personName(work, one.person)} ${words.figure('minutes', one.minutes)}`,
  )
  return [
    `${words.date(day.date)}   ${people.join(', ')}`,
    ...day.pieces.map((piece) => {
      const { code, data } = describeStep(plan, piece.step)
      const part = piece.parts > 1 ? ` (${piece.part}/${piece.parts})` : ''
      const who = piece.people.map((id) => personName(work, id)).join(' + ')
      return `  ${words.time(piece.startMinute * 60_000, zone)}–${words.time(piece.endMinute * 60_000, zone)}  ${words.sentence(code, data)}${part}  [${who}]${likeText(plan, piece, words)}`
    }),
  ]
}

/** Of a coat behind the forecast, on how many days like its own its least sure hour would be good. */
function likeText(plan: Plan, piece: Day['pieces'][number], words: Words): string {
  const like = likeDays(plan, piece.step, [piece])
  return like ? `  ${words.sentence('days.likeDays', { least: like.least, of: like.of })}` : ''
}

const likeDays = (plan: Plan, id: string, pieces: Plan['days']['placed'][number]['pieces']) =>
  likeDaysOfWork({
    zones: plan.conditions.zones,
    hoursKey: plan.steps.steps.find((step) => step.id === id)?.hoursKey,
    pieces,
  })

/** The date on which a minute falls, from the days of the plan or by the clock of the place. */
export function dateOfMinute(plan: Plan, minute: number): string {
  return new Intl.DateTimeFormat('en-CA', {
    timeZone: plan.days.timeZone,
    year: 'numeric',
    month: '2-digit',
    day: '2-digit',
  }).format(minute * 60_000)
}

export const daysJson = (plan: Plan) => ({
  ...(plan.days.workEndMinute === undefined ? {} : { workEndAtMs: plan.days.workEndMinute * 60_000 }),
  ...(plan.days.launchMinute === undefined ? {} : { launchAtMs: plan.days.launchMinute * 60_000 }),
  timeZone: plan.days.timeZone,
  sessions: plan.days.sessions,
  sessionHours: plan.days.sessionMinutes / 60,
  days: plan.days.days.map((day) => ({
    date: day.date,
    people: day.people.map((one) => ({ person: one.person, hours: one.minutes / 60 })),
    pieces: day.pieces.map((piece) => ({
      step: piece.step,
      startAtMs: piece.startMinute * 60_000,
      endAtMs: piece.endMinute * 60_000,
      people: piece.people,
      part: piece.part,
      parts: piece.parts,
    })),
  })),
  steps: plan.days.placed.map((placed) => ({
    step: placed.step,
    startAtMs: placed.startMinute * 60_000,
    endAtMs: placed.endMinute * 60_000,
    verdict: placed.verdict,
    done: placed.done,
    ...likeJson(plan, placed),
    ...(placed.heldBy ? { waitsFor: placed.heldBy.step, readyAtMs: placed.heldBy.untilMinute * 60_000 } : {}),
  })),
  unplaced: plan.days.unplaced,
})

function likeJson(plan: Plan, { step, pieces, done }: Plan['days']['placed'][number]) {
  const like = done ? undefined : likeDays(plan, step, pieces)
  return like ? { goOnDays: like.least, likeDays: like.of } : {}
}
