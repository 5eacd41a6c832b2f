/** Who is free when, on a grid of quarter hours; a timeline lives for one run of the calendar. */
import type { Interval, Person } from './step.ts'

export const SLOT = 15

/** For each slot, how many slots in a row are open from there on; 0 is closed. One longer than the grid. */
export type Runs = Uint32Array

export type Timeline = {
  readonly firstMinute: number
  readonly slots: number
  readonly people: readonly string[]
  /** One row a person. Owned and changed by the calendar run that made it. */
  readonly free: readonly Runs[]
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
  return { firstMinute, slots, people: input.people.map((person) => person.id), free }
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
  const runs = new Uint32Array(open.length + 1)
  for (let slot = open.length - 1; slot >= 0; slot--) runs[slot] = open[slot] ? runs[slot + 1]! + 1 : 0
  return runs
}

/** A row without a closed slot. */
export function openThroughout(slots: number): Runs {
  const runs = new Uint32Array(slots + 1)
  for (let slot = 0; slot < slots; slot++) runs[slot] = slots - slot
  return runs
}

/** Shuts a stretch; only the run that led into it is counted again. */
export function shut(runs: Runs, stretch: { readonly fromSlot: number; readonly toSlot: number }): void {
  runs.fill(0, stretch.fromSlot, stretch.toSlot)
  for (let slot = stretch.fromSlot - 1; slot >= 0 && runs[slot]! > 0; slot--)
    runs[slot] = stretch.fromSlot - slot
}
