/**
 * Everything of the calendar that hangs on shifts and hours alone and not on the steps: who is free, and which
 * slots are open for which kind of hours. Made once and used for every run until shifts or hours change.
 */
import { openRuns } from './hours.ts'
import type { HourVerdicts, Interval, Person, Verdict } from './step.ts'
import { createTimeline, type Runs, slotFrom, type Timeline } from './timeline.ts'

export type GridSpan = {
  readonly firstMinute: number
  readonly lastMinute: number
  /** Stretches in which an unknown hour may be used; what time of day that is, is the caller's affair. */
  readonly unknownOpen: readonly Interval[]
}

/** What a step makes do with, best first. */
export const tiers: readonly ReadonlySet<Verdict>[] = [
  new Set<Verdict>(['go']),
  new Set<Verdict>(['go', 'risky']),
  new Set<Verdict>(['go', 'risky', 'unknown']),
]

/** One kind of hours on the grid. */
export type Openings = { readonly hours: HourVerdicts; readonly open: (tier: number) => Runs }

/** The slots open in each tier, worked when they are first asked for and kept. */
export function createOpenings(hours: HourVerdicts, span: GridSpan): Openings {
  const kept = new Map<number, Runs>()
  const open = (tier: number): Runs => {
    const made = kept.get(tier) ?? openTier(hours, span, tier)
    kept.set(tier, made)
    return made
  }
  return { hours, open }
}

function openTier(hours: HourVerdicts, span: GridSpan, tier: number): Runs {
  const timeline = createTimeline({ ...span, people: [] })
  return openRuns({ timeline, hours, allow: tiers[tier]!, unknownOpen: slotsIn(timeline, span.unknownOpen) })
}

export type Grid = {
  /** A timeline that a run may change. */
  readonly timeline: () => Timeline
  /** A step whose kind of hours is missing here may be done at any hour. */
  readonly openings: ReadonlyMap<string, Openings>
}

/** The grid of these people over this span, each kind of hours by its key. Times in whole minutes since 1970 UTC. */
export function createGrid(input: {
  readonly people: readonly Person[]
  readonly span: GridSpan
  readonly openings: ReadonlyMap<string, Openings>
}): Grid {
  const blank = createTimeline({ ...input.span, people: input.people })
  const timeline = (): Timeline => ({ ...blank, free: blank.free.map((runs) => runs.slice()) })
  return { timeline, openings: input.openings }
}

function slotsIn(timeline: Timeline, stretches: readonly Interval[]): Uint8Array {
  const inside = new Uint8Array(timeline.slots)
  for (const stretch of stretches) {
    inside.fill(1, slotFrom(timeline, stretch.startMinute), slotFrom(timeline, stretch.endMinute))
  }
  return inside
}
