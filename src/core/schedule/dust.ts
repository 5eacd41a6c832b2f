/** Keeps sanding and wet coats apart: no dust is made where something is wet, and nothing is coated into dust. */
import type { Step } from './step.ts'
import { openThroughout, type Runs, shut, slotsOf } from './timeline.ts'

/** Per place: slots in which nothing is wet, and slots in which nobody makes dust. Changed by the run that made it. */
export type DustBook = {
  readonly dry: Map<string, Runs>
  readonly clean: Map<string, Runs>
  readonly slots: number
}

export const createDustBook = (slots: number): DustBook => ({ dry: new Map(), clean: new Map(), slots })

function rowOf(book: DustBook, rows: Map<string, Runs>, place: string): Runs {
  const kept = rows.get(place)
  if (kept) return kept
  const made = openThroughout(book.slots)
  rows.set(place, made)
  return made
}

export type DustLimit = {
  /** Slots that must stay open. */
  readonly runs: Runs
  /** How many slots past its end the step needs open too. */
  readonly tailSlots: number
}

/** What a step must keep clear of; `undefined` when dust is nothing to it. */
export function dustLimit(book: DustBook, step: Step): DustLimit | undefined {
  if (step.dust === 'neither') return undefined
  return step.dust === 'makes'
    ? { runs: rowOf(book, book.dry, step.air), tailSlots: 0 }
    : { runs: rowOf(book, book.clean, step.air), tailSlots: slotsOf(step.wetMinutes) }
}

/** Books a placed stretch of a step. */
export function bookDust(
  book: DustBook,
  step: Step,
  stretch: { readonly fromSlot: number; readonly toSlot: number },
): void {
  if (step.dust === 'makes') shut(rowOf(book, book.clean, step.air), stretch)
  if (step.dust !== 'minds') return
  const toSlot = Math.min(book.slots, stretch.toSlot + slotsOf(step.wetMinutes))
  shut(rowOf(book, book.dry, step.air), { fromSlot: stretch.fromSlot, toSlot })
}
