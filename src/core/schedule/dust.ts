/** Keeps sanding and wet coats apart: no dust is made where something is wet, and nothing is coated into dust. */
import { type AirAt, clockMinute } from './ready.ts'
import type { Step } from './step.ts'
import { openThroughout, type Runs, shut, slotsOf } from './timeline.ts'

/** A coat that the cold keeps from drying is minded this long, and no longer. */
export const LONGEST_WET_MINUTES = 48 * 60

/** Minutes from the end of a coat until dust does it no harm, in the air it gets. */
export function wetMinutes(step: Step, endMinute: number, airAt: AirAt): number {
  if (!step.wet) return 0
  const dry = clockMinute({ table: step.wet, sense: 'least', fromMinute: endMinute, airAt })
  return dry === undefined ? LONGEST_WET_MINUTES : Math.min(LONGEST_WET_MINUTES, dry - endMinute)
}

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
  /** How many minutes past its end the step needs open too. */
  readonly tailMinutes: (endMinute: number) => number
}

/** What a step must keep clear of; `undefined` when dust is nothing to it. */
export function dustLimit(book: DustBook, step: Step, airAt: AirAt): DustLimit | undefined {
  if (step.dust === 'neither') return undefined
  return step.dust === 'makes'
    ? { runs: rowOf(book, book.dry, step.air), tailMinutes: () => 0 }
    : {
        runs: rowOf(book, book.clean, step.air),
        tailMinutes: (endMinute) => wetMinutes(step, endMinute, airAt),
      }
}

/** Books a placed stretch of a step, and how long what it leaves stays wet. */
export function bookDust(
  book: DustBook,
  step: Step,
  stretch: { readonly fromSlot: number; readonly toSlot: number; readonly wetMinutes: number },
): void {
  if (step.dust === 'makes') shut(rowOf(book, book.clean, step.air), stretch)
  if (step.dust !== 'minds') return
  const toSlot = Math.min(book.slots, stretch.toSlot + slotsOf(stretch.wetMinutes))
  shut(rowOf(book, book.dry, step.air), { fromSlot: stretch.fromSlot, toSlot })
}
