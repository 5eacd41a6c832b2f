/** Person-hours of a plan and of a day. */
import type { Plan } from '#plan'

type Day = Plan['days']['days'][number]

export const dayHours = (day: Day): number => day.people.reduce((sum, one) => sum + one.minutes, 0) / 60

/** With the opening and closing of each session. */
export const allHours = ({ days }: Plan): number =>
  days.days.reduce((sum, day) => sum + dayHours(day), 0) + days.sessionMinutes / 60
