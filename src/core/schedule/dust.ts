/** Keeps sanding and wet coats apart: no dust is made where something is wet, and nothing is coated into dust. */
import { type Limit, LONGEST_WET_MINUTES, rowOf, type Stretch, slotBehind, wetMinutes } from './limit.ts'
import type { AirAt } from './ready.ts'
import type { Step } from './step.ts'
import { type Runs, shut } from './timeline.ts'

/** Per place: slots in which nothing is wet, and slots in which nobody makes dust. Changed by the run that made it. */
export type DustBook = {
  readonly dry: Map<string, Runs>
  readonly clean: Map<string, Runs>
  readonly slots: number
}

export const createDustBook = (slots: number): DustBook => ({ dry: new Map(), clean: new Map(), slots })

/** What a step must keep clear of; nothing when dust is nothing to it. */
export function dustLimits(book: DustBook, step: Step, airAt: AirAt): readonly Limit[] {
  if (step.dust === 'neither') return []
  return step.dust === 'makes'
    ? [{ runs: rowOf(book.dry, step.air, book.slots), longestMinutes: 0, tailMinutes: () => 0 }]
    : [
        {
          runs: rowOf(book.clean, step.air, book.slots),
          longestMinutes: LONGEST_WET_MINUTES,
          tailMinutes: (endMinute) => wetMinutes(step, endMinute, airAt),
        },
      ]
}

/** Books a placed stretch of a step. */
export function bookDust(book: DustBook, step: Step, stretch: Stretch): void {
  if (step.dust === 'makes') shut(rowOf(book.clean, step.air, book.slots), stretch)
  if (step.dust !== 'minds') return
  const toSlot = slotBehind(stretch, stretch.wetMinutes, book.slots)
  shut(rowOf(book.dry, step.air, book.slots), { fromSlot: stretch.fromSlot, toSlot })
}
