/** Keeps people away from what they are barred from: not only off that work, but off the job while it is done and wet. */
import {
  createRows,
  type Limit,
  LONGEST_WET_MINUTES,
  rowOf,
  type Stretch,
  slotBehind,
  wetMinutes,
} from './limit.ts'
import type { AirAt } from './ready.ts'
import type { Step } from './step.ts'
import { type Runs, shut, type Timeline } from './timeline.ts'

/** Per person who is barred from anything: slots in which they are not at work. Changed by the run that made it. */
export type ExposureBook = { readonly away: ReadonlyMap<string, Runs>; readonly timeline: Timeline }

export function createExposureBook(steps: readonly Step[], timeline: Timeline): ExposureBook {
  const rows = createRows(timeline.open)
  for (const person of steps.flatMap(barredFrom)) rowOf(rows, person)
  return { away: rows.byKey, timeline }
}

/** Also those who may not key it, should its window shut. */
const barredFrom = (step: Step): readonly string[] =>
  [step.barred, ...step.needs.map((need) => need.window?.barred ?? [])].flat()

export const exposureLimits = (book: ExposureBook, step: Step, airAt: AirAt): readonly Limit[] =>
  step.barred.map((person) => ({
    runs: book.away.get(person)!,
    longestMinutes: LONGEST_WET_MINUTES,
    tailMinutes: (endMinute) => wetMinutes(step, endMinute, airAt),
  }))

/** Books a placed stretch of a step: its people are at work, and whoever is barred from it is not free. */
export function bookExposure(
  { away, timeline }: ExposureBook,
  step: Step,
  stretch: Stretch & { readonly people: readonly string[] },
): void {
  for (const person of stretch.people) {
    const row = away.get(person)
    if (row) shut(row, stretch)
  }
  const toSlot = slotBehind(stretch, stretch.wetMinutes, timeline.open)
  for (const person of step.barred) {
    const row = timeline.free[timeline.people.indexOf(person)]
    if (row) shut(row, { fromSlot: stretch.fromSlot, toSlot })
  }
}
