/**
 * Everything of the calendar that hangs on shifts and hours alone and not on the steps: who is free, and which
 * slots are open for which kind of hours. Made once and used for every run until shifts or hours change.
 */
import { openRuns } from './hours.ts'
import type { HourVerdicts, Interval, Person, Verdict } from './step.ts'
import { createTimeline, type Runs, slotFrom, type Timeline } from './timeline.ts'

export type GridInput = {
  readonly people: readonly Person[]
  readonly firstMinute: number
  readonly lastMinute: number
  /** Hours by key; a step whose key is missing here may be done at any hour. */
  readonly hours: ReadonlyMap<string, HourVerdicts>
  /** Stretches in which an unknown hour may be used; what time of day that is, is the caller's affair. */
  readonly unknownOpen: readonly Interval[]
}

export type Grid = {
  /** A timeline that a run may change. */
  readonly timeline: () => Timeline
  readonly hours: ReadonlyMap<string, HourVerdicts>
  /** Open slots of a kind of hours for one tier of `tiers`; `undefined` when the key has no hours. */
  readonly open: (key: string, tier: number) => Runs | undefined
}

/** What a step makes do with, best first. */
export const tiers: readonly ReadonlySet<Verdict>[] = [
  new Set<Verdict>(['go']),
  new Set<Verdict>(['go', 'risky']),
  new Set<Verdict>(['go', 'risky', 'unknown']),
]

/** Open slots are worked when they are first asked for, and kept with the grid. */
export function createGrid(input: GridInput): Grid {
  const blank = createTimeline(input)
  const unknownOpen = slotsIn(blank, input.unknownOpen)
  const kept = new Map<string, Runs>()
  const open: Grid['open'] = (key, tier) => {
    const hours = input.hours.get(key)
    if (!hours) return undefined
    const name = `${tier} ${key}`
    const made = kept.get(name) ?? openRuns({ timeline: blank, hours, allow: tiers[tier]!, unknownOpen })
    kept.set(name, made)
    return made
  }
  const timeline = (): Timeline => ({ ...blank, free: blank.free.map((runs) => runs.slice()) })
  return { timeline, hours: input.hours, open }
}

function slotsIn(timeline: Timeline, stretches: readonly Interval[]): Uint8Array {
  const inside = new Uint8Array(timeline.slots)
  for (const stretch of stretches) {
    inside.fill(1, slotFrom(timeline, stretch.startMinute), slotFrom(timeline, stretch.endMinute))
  }
  return inside
}
