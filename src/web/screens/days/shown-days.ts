/** Which days are shown, and the whole job as one bar a day. */
import { localDate } from '../../job/local-date.ts'
import { addDays, daysBetween, minuteAt } from '../../job/local-days.ts'
import type { ShownPlan } from '../../worker/messages.ts'

export type ShownDay = { readonly date: string; readonly fromMinute: number; readonly toMinute: number }

export function shownDays(from: string, count: number, timeZone: string): readonly ShownDay[] {
  return Array.from({ length: count }, (_, at): ShownDay => {
    const date = addDays(from, at)
    return {
      date,
      fromMinute: minuteAt(date, 0, timeZone),
      toMinute: minuteAt(addDays(date, 1), 0, timeZone),
    }
  })
}

/** Dates of the first and the last work; undefined where nothing is planned. */
export function jobDates({ days }: ShownPlan): { readonly first: string; readonly last: string } | undefined {
  const [first, last] = [days.days[0], days.days.at(-1)]
  return first && last ? { first: first.date, last: last.date } : undefined
}

/** Today while the job runs, else the day of its first work. */
export function startDate(plan: ShownPlan, nowMs: number, timeZone: string): string {
  const today = localDate(Math.floor(nowMs / 60_000), timeZone)
  const dates = jobDates(plan)
  if (!dates || (today >= dates.first && today <= dates.last)) return today
  return today < dates.first ? dates.first : dates.last
}

export type DayLoad = { readonly date: string; readonly hours: number; readonly coats: number }

/** More days than a strip can show are cut off at its end. */
const MOST_DAYS = 400

/** Every calendar day from the first work to the last, with its person-hours and coats. */
export function dayLoads(plan: ShownPlan): readonly DayLoad[] {
  const dates = jobDates(plan)
  if (!dates) return []
  const coats = new Set(plan.steps.steps.flatMap(({ id, inOneGo }) => (inOneGo ? [id] : [])))
  const known = new Map(plan.days.days.map((day) => [day.date, day]))
  const count = Math.min(MOST_DAYS, daysBetween(dates.first, dates.last) + 1)
  return Array.from({ length: count }, (_, at): DayLoad => {
    const date = addDays(dates.first, at)
    const day = known.get(date)
    return {
      date,
      hours: day?.people.reduce((sum, { minutes }) => sum + minutes / 60, 0) ?? 0,
      coats: day?.pieces.filter(({ step }) => coats.has(step)).length ?? 0,
    }
  })
}

/** As many as there is room for: 5 at 1600 px; 3 at 900, and on a phone, where they stand. */
export const daysFor = (width: number): number => (width >= 1150 ? 5 : 3)
