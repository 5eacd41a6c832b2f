/** Keeps sanding and wet coats apart: no dust is made where something is wet, and nothing is coated into dust. */
import {
  createRows,
  type Limit,
  LONGEST_WET_MINUTES,
  type Rows,
  rowOf,
  type Stretch,
  slotBehind,
  wetMinutes,
} from './limit.ts'
import type { AirAt } from './ready.ts'
import type { Step } from './step.ts'
import { type Runs, shut } from './timeline.ts'

/** Per place: slots in which nothing is wet, and slots in which nobody makes dust. Changed by the run that made it. */
export type DustBook = { readonly dry: Rows; readonly clean: Rows }

export const createDustBook = (open: Runs): DustBook => ({ dry: createRows(open), clean: createRows(open) })

/** What a step must keep clear of; nothing when dust is nothing to it. */
export function dustLimits(book: DustBook, step: Step, airAt: AirAt): readonly Limit[] {
  if (step.dust === 'neither') return []
  return step.dust === 'makes'
    ? [{ runs: rowOf(book.dry, step.air), longestMinutes: 0, tailMinutes: () => 0 }]
    : [
        {
          runs: rowOf(book.clean, step.air),
          longestMinutes: LONGEST_WET_MINUTES,
          tailMinutes: (endMinute) => wetMinutes(step, endMinute, airAt),
        },
      ]
}

/** Books a placed stretch of a step. */
export function bookDust(book: DustBook, step: Step, stretch: Stretch): void {
  if (step.dust === 'makes') shut(rowOf(book.clean, step.air), stretch)
  if (step.dust !== 'minds') return
  const dry = rowOf(book.dry, step.air)
  shut(dry, { fromSlot: stretch.fromSlot, toSlot: slotBehind(stretch, stretch.wetMinutes, dry) })
}
