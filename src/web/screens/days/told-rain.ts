/** Rain as a person tells it: its hours, the entry of the log, and the coats it may have fallen on. */
import type { RawCells } from '#job'
import type { LogLine } from '../../job/job-view.ts'
import { localDate, localInstant } from '../../job/local-date.ts'
import { addDays, isDate, minuteAt } from '../../job/local-days.ts'
import type { ShownPlan } from '../../worker/messages.ts'
import type { Minutes } from '../hour-spans.ts'
import { lastTurns } from '../today/day-rows.ts'
import { stepOf } from '../today/today-state.ts'
import { afterMinutes } from './limit-rows.ts'

/** As it stands in the boxes. */
export type RainTold = {
  readonly date: string
  /** `07:30`. */
  readonly from: string
  /** Not later than `from`, it is the next day. */
  readonly until: string
}

/** The last hour, to the quarter: what somebody means who has just come in. */
export function rainJustNow(nowMs: number, timeZone: string): RainTold {
  const until = Math.floor(nowMs / 900_000) * 15
  const clock = (minute: number): string => localInstant(minute * 60_000, timeZone).slice(11, 16)
  return { date: localDate(until - 60, timeZone), from: clock(until - 60), until: clock(until) }
}

/** Undefined while a box holds no date or no time. */
export function rainMinutes({ date, from, until }: RainTold, timeZone: string): Minutes | undefined {
  const [begins, ends] = [minuteOfDay(from), minuteOfDay(until)]
  if (!isDate(date) || begins === undefined || ends === undefined) return undefined
  return {
    fromMinute: minuteAt(date, begins, timeZone),
    toMinute: minuteAt(ends > begins ? date : addDays(date, 1), ends, timeZone),
  }
}

function minuteOfDay(text: string): number | undefined {
  const [, hour, minute] = /^(\d\d):(\d\d)/.exec(text) ?? []
  return hour === undefined ? undefined : Number(hour) * 60 + Number(minute)
}

export const rainCells = (
  { fromMinute, toMinute }: Minutes,
  { amount, timeZone }: { readonly amount: string; readonly timeZone: string },
): RawCells => ({
  at: localInstant(fromMinute * 60_000, timeZone),
  kind: 'rain',
  until: localInstant(toMinute * 60_000, timeZone),
  ...(amount.trim() === '' ? {} : { rain: amount.trim() }),
})

export type CaughtInput = {
  readonly plan: ShownPlan
  readonly log: readonly LogLine[]
  readonly rain: Minutes
}

/** Coats that by the log were on the hull and had not dried so far that rain does no harm; the latest first. */
export function caughtCoats({ plan, log, rain }: CaughtInput): readonly string[] {
  const turns = lastTurns(log)
  return plan.days.placed
    .filter(({ step, done, startMinute, endMinute }) => {
      const hours = hoursFor(plan, step)
      if (hours === undefined || hours.place === 'indoors' || startMinute >= rain.toMinute) return false
      if (turns.get(step) === 'started') return true
      return done && endMinute + afterMinutes(hours, endMinute) > rain.fromMinute
    })
    .sort((a, b) => b.startMinute - a.startMinute)
    .map(({ step }) => step)
}

const hoursFor = (plan: ShownPlan, step: string) => {
  const key = step.startsWith('key:') ? undefined : stepOf(plan, step)?.hoursKey
  return plan.conditions.zones.find((zone) => zone.key === key)
}
