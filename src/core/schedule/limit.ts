/** What a step must keep clear of, and for how long after its work. */
import { type AirAt, clockMinute } from './ready.ts'
import type { Step } from './step.ts'
import { openThroughout, type Runs } from './timeline.ts'

/** A coat that the cold keeps from drying is minded this long, and no longer. */
export const LONGEST_WET_MINUTES = 48 * 60

/** Minutes from the end of a coat until it is dry to touch, in the air it gets. */
export function wetMinutes(step: Step, endMinute: number, airAt: AirAt): number {
  if (!step.wet) return 0
  const dry = clockMinute({ table: step.wet, sense: 'least', fromMinute: endMinute, airAt })
  return dry === undefined ? LONGEST_WET_MINUTES : Math.min(LONGEST_WET_MINUTES, dry - endMinute)
}

export type Limit = {
  /** Slots that must stay open. */
  readonly runs: Runs
  /** How many minutes past its end the step needs open too. */
  readonly tailMinutes: (endMinute: number) => number
}

/** A stretch of slots of a placed step, and how long what it leaves stays wet. */
export type Stretch = { readonly fromSlot: number; readonly toSlot: number; readonly wetMinutes: number }

/** The row kept under a key, open throughout when it is first asked for. */
export function rowOf(rows: Map<string, Runs>, key: string, slots: number): Runs {
  const kept = rows.get(key)
  if (kept) return kept
  const made = openThroughout(slots)
  rows.set(key, made)
  return made
}
