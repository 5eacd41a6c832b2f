/** Who is free when, on a grid of quarter hours; a timeline lives for one run of the calendar. */
import type { Interval, Person } from './step.ts'

export const SLOT = 15

/**
 * For each slot: how many slots in a row are open from there on; or, where it is closed, minus how many slots it is to
 * the next open one (to the end of the grid when there is none). One longer than the grid; the last is 0.
 */
export type Runs = Int32Array

export type Timeline = {
  readonly firstMinute: number
  readonly slots: number
  readonly people: readonly string[]
  /** One row a person. Owned and changed by the calendar run that made it. */
  readonly free: readonly Runs[]
  /** A row without a closed slot, to copy. */
  readonly open: Runs
}

export const minuteOf = (timeline: Timeline, slot: number): number => timeline.firstMinute + slot * SLOT

export const slotsOf = (minutes: number): number => Math.ceil(minutes / SLOT)

/** Minutes as the calendar counts them: whole quarter hours, up. */
export const wholeSlots = (minutes: number): number => slotsOf(minutes) * SLOT

/** The first slot that begins at or after the minute. */
export const slotFrom = (timeline: Timeline, minute: number): number =>
  Math.max(0, Math.ceil((minute - timeline.firstMinute) / SLOT))

/** Builds the grid; a shift counts only with its whole quarter hours. */
export function createTimeline(input: {
  readonly people: readonly Person[]
  readonly firstMinute: number
  readonly lastMinute: number
}): Timeline {
  const firstMinute = Math.floor(input.firstMinute / SLOT) * SLOT
  const slots = Math.max(0, Math.ceil((input.lastMinute - firstMinute) / SLOT))
  const free = input.people.map((person) => freeRuns({ shifts: person.shifts, firstMinute, slots }))
  return {
    firstMinute,
    slots,
    people: input.people.map((person) => person.id),
    free,
    open: openThroughout(slots),
  }
}

function freeRuns(input: {
  readonly shifts: readonly Interval[]
  readonly firstMinute: number
  readonly slots: number
}): Runs {
  const open = new Uint8Array(input.slots)
  for (const shift of input.shifts) {
    const from = Math.max(0, Math.ceil((shift.startMinute - input.firstMinute) / SLOT))
    const to = Math.min(input.slots, Math.floor((shift.endMinute - input.firstMinute) / SLOT))
    if (to > from) open.fill(1, from, to)
  }
  return runsOf(open)
}

export function runsOf(open: Uint8Array): Runs {
  const runs = new Int32Array(open.length + 1)
  for (let slot = open.length - 1; slot >= 0; slot--) {
    const next = runs[slot + 1]!
    runs[slot] = open[slot] ? Math.max(next, 0) + 1 : Math.min(next, 0) - 1
  }
  return runs
}

/** A row without a closed slot. */
export function openThroughout(slots: number): Runs {
  const runs = new Int32Array(slots + 1)
  for (let slot = 0; slot < slots; slot++) runs[slot] = slots - slot
  return runs
}

/** How far a search may jump from a closed slot. */
export const closedFor = (run: number): number => Math.max(1, -run)

/** Shuts a stretch; only the slots that led into it are counted again. */
export function shut(runs: Runs, stretch: { readonly fromSlot: number; readonly toSlot: number }): void {
  const { fromSlot, toSlot } = stretch
  if (fromSlot >= toSlot) return
  const next = toSlot + Math.max(0, -runs[toSlot]!)
  for (let slot = fromSlot; slot < toSlot; slot++) runs[slot] = slot - next
  let slot = fromSlot - 1
  for (; slot >= 0 && runs[slot]! > 0; slot--) runs[slot] = fromSlot - slot
  if (slot !== fromSlot - 1) return
  for (; slot >= 0 && runs[slot]! <= 0; slot--) runs[slot] = slot - next
}
