/** Who is free when, on a grid of quarter hours; a timeline lives for one run of the calendar. */
import type { Interval, Person } from './step.ts'

export const SLOT = 15

export type Timeline = {
  readonly firstMinute: number
  readonly slots: number
  readonly people: readonly string[]
  /** One row a person, one byte a slot: 1 is free. Owned and changed by the calendar run that made it. */
  readonly free: readonly Uint8Array[]
}

export const minuteOf = (timeline: Timeline, slot: number): number => timeline.firstMinute + slot * SLOT

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
  const free = input.people.map((person) => freeSlots({ shifts: person.shifts, firstMinute, slots }))
  return { firstMinute, slots, people: input.people.map((person) => person.id), free }
}

function freeSlots(input: {
  readonly shifts: readonly Interval[]
  readonly firstMinute: number
  readonly slots: number
}): Uint8Array {
  const row = new Uint8Array(input.slots)
  for (const shift of input.shifts) {
    const from = Math.max(0, Math.ceil((shift.startMinute - input.firstMinute) / SLOT))
    const to = Math.min(input.slots, Math.floor((shift.endMinute - input.firstMinute) / SLOT))
    if (to > from) row.fill(1, from, to)
  }
  return row
}

/** For each slot, how many slots in a row the person is free from there on. */
export function runLengths(row: Uint8Array): Uint32Array {
  const runs = new Uint32Array(row.length + 1)
  for (let slot = row.length - 1; slot >= 0; slot--) runs[slot] = row[slot] ? runs[slot + 1]! + 1 : 0
  return runs
}

/** Takes the people's time away; indices are rows of `free`. */
export function occupy(
  timeline: Timeline,
  taken: { readonly rows: readonly number[]; readonly fromSlot: number; readonly toSlot: number },
): void {
  for (const row of taken.rows) timeline.free[row]!.fill(0, taken.fromSlot, taken.toSlot)
}
