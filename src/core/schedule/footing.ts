/** Keeps feet off wet decks: nobody works from a floor that must not be trodden yet, and none is coated under feet. */
import { clockTail, createRows, type Limit, type Rows, rowOf, type Stretch, slotBehind } from './limit.ts'
import type { AirAt } from './ready.ts'
import type { Step } from './step.ts'
import { type Runs, shut } from './timeline.ts'

/** Per floor: slots in which it can be trodden, and slots in which nobody stands on it. Changed by the run that made it. */
export type FootingBook = { readonly firm: Rows; readonly empty: Rows }

export const createFootingBook = (open: Runs): FootingBook => ({
  firm: createRows(open),
  empty: createRows(open),
})

/** However cold it stays, a floor is kept off no longer than this. */
const LONGEST_TREAD_MINUTES = 7 * 24 * 60

/** What a step must keep clear of: floors it is done from, and feet on floors it makes wet. */
export function footingLimits(book: FootingBook, step: Step, airAt: AirAt): readonly Limit[] {
  const from = step.standsOn.map((floor) => ({
    runs: rowOf(book.firm, floor),
    longestMinutes: 0,
    tailMinutes: () => 0,
  }))
  const wets = wettedBy(step).map((floor) => ({
    runs: rowOf(book.empty, floor),
    longestMinutes: LONGEST_TREAD_MINUTES,
    tailMinutes: (endMinute: number) => treadMinutes(step, endMinute, airAt),
  }))
  return [...from, ...wets]
}

/** Books a placed stretch of a step. */
export function bookFooting(book: FootingBook, step: Step, stretch: Stretch, airAt: AirAt): void {
  for (const floor of step.standsOn) shut(rowOf(book.empty, floor), stretch)
  const floors = wettedBy(step)
  if (floors.length === 0) return
  const lasts = treadMinutes(step, stretch.endMinute, airAt)
  for (const floor of floors) {
    const firm = rowOf(book.firm, floor)
    shut(firm, { fromSlot: stretch.fromSlot, toSlot: slotBehind(stretch, lasts, firm) })
  }
}

const wettedBy = ({ tread }: Step): readonly string[] => tread?.floors ?? []

const treadMinutes = ({ tread }: Step, endMinute: number, airAt: AirAt): number =>
  clockTail(tread?.table, { endMinute, airAt, longestMinutes: LONGEST_TREAD_MINUTES })
