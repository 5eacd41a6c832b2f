/** What a step must keep clear of, and for how long after its work. */
import type { CureTable } from '#core/cure'
import { type AirAt, clockMinute } from './ready.ts'
import type { Step } from './step.ts'
import { type Runs, slotsOf } from './timeline.ts'

/** A coat that the cold keeps from drying is minded this long, and no longer. */
export const LONGEST_WET_MINUTES = 48 * 60

/** Minutes from the end of a coat until it is dry to touch, in the air it gets. */
export const wetMinutes = (step: Step, endMinute: number, airAt: AirAt): number =>
  clockTail(step.wet, { endMinute, airAt, longestMinutes: LONGEST_WET_MINUTES })

export type Tail = {
  readonly endMinute: number
  readonly airAt: AirAt
  /** It is not minded for longer, though the clock may still run. */
  readonly longestMinutes: number
}

/** Minutes from the end of a coat until one of its clocks has run, in the air it gets; 0 without a clock. */
export function clockTail(table: CureTable | undefined, { endMinute, airAt, longestMinutes }: Tail): number {
  if (!table) return 0
  const over = clockMinute({ table, sense: 'least', fromMinute: endMinute, airAt })
  return over === undefined ? longestMinutes : Math.min(longestMinutes, over - endMinute)
}

export type Limit = {
  /** Slots that must stay open. */
  readonly runs: Runs
  /** How many minutes past its end the step needs open too, and more than which that never is. */
  readonly tailMinutes: (endMinute: number) => number
  readonly longestMinutes: number
}

/** A stretch of slots of a placed step, and how long what it leaves stays wet. */
export type Stretch = {
  readonly fromSlot: number
  readonly toSlot: number
  readonly endMinute: number
  /** How long before the grid begins it ended, when it did. */
  readonly agoMinutes: number
  readonly wetMinutes: number
}

/** The slot behind a stretch and what it leaves, which lasts so many minutes from its end. */
export const slotBehind = ({ toSlot, agoMinutes }: Stretch, lastsMinutes: number, row: Runs): number =>
  Math.min(row.length - 1, toSlot + slotsOf(Math.max(0, lastsMinutes - agoMinutes)))

/** Rows by key, each a copy of one that is open throughout when it is first asked for. */
export type Rows = { readonly byKey: Map<string, Runs>; readonly open: Runs }

export const createRows = (open: Runs): Rows => ({ byKey: new Map(), open })

export function rowOf({ byKey, open }: Rows, key: string): Runs {
  const kept = byKey.get(key)
  if (kept) return kept
  const made = open.slice()
  byKey.set(key, made)
  return made
}
