/** Minutes that labour is charged for: what the calendar has, the opening and closing of each day, and what is done. */
import type { Work } from '#job'
import type { CalendarDays } from './calendar.ts'
import type { Days, Steps } from './types.ts'

export type LabourInput = {
  readonly people: Work['people']
  readonly steps: Steps
  readonly days: Days
  readonly calendar: Pick<CalendarDays, 'openMinutes' | 'closeMinutes'>
}

export type LabourMinutes = {
  /** At the boat, by the list of days. */
  readonly planned: number
  /** Days on which one of them is at the boat. */
  readonly sessions: number
  /** Of steps that are done, as they were planned. */
  readonly done: number
}

export type Role = 'lead' | 'helper'

/** A step that is done keeps the hours it was planned with, at the lead's rate: the sum does not shrink. */
export function labourMinutes(input: LabourInput): Readonly<Record<Role, LabourMinutes>> {
  const helpers = new Set(input.people.flatMap((person) => (person.role === 'helper' ? [person.id] : [])))
  const days = input.days.days.flatMap((day) => day.people)
  const of = (role: Role): LabourMinutes => {
    const own = days.filter(({ person }) => helpers.has(person) === (role === 'helper'))
    return {
      planned: own.reduce((sum, { minutes }) => sum + minutes, 0),
      sessions: own.length,
      done: role === 'lead' ? doneMinutes(input) : 0,
    }
  }
  return { lead: of('lead'), helper: of('helper') }
}

/** All of it, with the opening and closing of each session. */
export const minutesInAll = (
  { planned, sessions, done }: LabourMinutes,
  { openMinutes, closeMinutes }: LabourInput['calendar'],
): number => planned + sessions * (openMinutes + closeMinutes) + done

function doneMinutes({ steps, days }: LabourInput): number {
  const done = new Set(days.placed.flatMap((placed) => (placed.done ? [placed.step] : [])))
  return steps.steps.filter((step) => done.has(step.id)).reduce((sum, step) => sum + plannedMinutes(step), 0)
}

/** Person-minutes at the smallest crew, set-up and clean-up by everyone in it. */
const plannedMinutes = (step: Steps['steps'][number]): number => {
  const pace = step.paces[0]
  return pace ? pace.personMinutes + pace.crew * (step.setUpMinutes + step.cleanUpMinutes) : 0
}
