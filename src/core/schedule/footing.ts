/** Keeps feet off wet decks: nobody works from a floor that must not be trodden yet, and none is coated under feet. */
import { clockTail, type Limit, rowOf, type Stretch, slotBehind } from './limit.ts'
import type { AirAt } from './ready.ts'
import type { Step } from './step.ts'
import { type Runs, shut } from './timeline.ts'

/** Per floor: slots in which it can be trodden, and slots in which nobody stands on it. Changed by the run that made it. */
export type FootingBook = {
  readonly firm: Map<string, Runs>
  readonly empty: Map<string, Runs>
  readonly slots: number
}

export const createFootingBook = (slots: number): FootingBook => ({
  firm: new Map(),
  empty: new Map(),
  slots,
})

/** However cold it stays, a floor is kept off no longer than this. */
const LONGEST_TREAD_MINUTES = 7 * 24 * 60

/** What a step must keep clear of: floors it is done from, and feet on floors it makes wet. */
export function footingLimits(book: FootingBook, step: Step, airAt: AirAt): readonly Limit[] {
  const from = step.standsOn.map((floor) => ({
    runs: rowOf(book.firm, floor, book.slots),
    longestMinutes: 0,
    tailMinutes: () => 0,
  }))
  const wets = wettedBy(step).map((floor) => ({
    runs: rowOf(book.empty, floor, book.slots),
    longestMinutes: LONGEST_TREAD_MINUTES,
    tailMinutes: (endMinute: number) => treadMinutes(step, endMinute, airAt),
  }))
  return [...from, ...wets]
}

/** Books a placed stretch of a step. */
export function bookFooting(book: FootingBook, step: Step, stretch: Stretch, airAt: AirAt): void {
  for (const floor of step.standsOn) shut(rowOf(book.empty, floor, book.slots), stretch)
  const floors = wettedBy(step)
  if (floors.length === 0) return
  const toSlot = slotBehind(stretch, treadMinutes(step, stretch.endMinute, airAt), book.slots)
  for (const floor of floors)
    shut(rowOf(book.firm, floor, book.slots), { fromSlot: stretch.fromSlot, toSlot })
}

const wettedBy = ({ tread }: Step): readonly string[] => tread?.floors ?? []

const treadMinutes = ({ tread }: Step, endMinute: number, airAt: AirAt): number =>
  clockTail(tread?.table, { endMinute, airAt, longestMinutes: LONGEST_TREAD_MINUTES })
