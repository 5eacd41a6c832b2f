/** When a step may begin: after all it waits for, each wait run at the temperature of its hours. */
import { type CureTable, clockEnd } from '#core/cure'
import type { Placed, Step, Wait, Window } from './step.ts'

/** Temperature of a zone's surroundings at an hour since 1970 UTC. */
export type AirAt = (hour: number) => number

export type Ready =
  | {
      readonly ok: true
      readonly minute: number
      readonly heldBy?: { readonly step: string; readonly untilMinute: number }
    }
  | { readonly ok: false; readonly reason: 'needs' | 'clock' }

/** Less than this past a whole minute is that minute: the sum of shares is not exact. */
const ROUNDING_MINUTES = 1e-6

/** The minute a clock started at `fromMinute` has run out, or `undefined` when the cold stops it. */
export function clockMinute(input: {
  readonly table: CureTable
  readonly sense: 'least' | 'most'
  readonly fromMinute: number
  readonly airAt: AirAt
}): number | undefined {
  const end = clockEnd({
    table: input.table,
    sense: input.sense,
    startHours: input.fromMinute / 60,
    temperatureAt: input.airAt,
  })
  return end === undefined ? undefined : Math.ceil(end.endHours * 60 - ROUNDING_MINUTES)
}

/** The minute a wait that began at `fromMinute` is over, or `undefined` when the cold stops its clock. */
function waitOver(wait: Wait, fromMinute: number, airAt: AirAt): number | undefined {
  if (wait.kind === 'none') return fromMinute
  if (wait.kind === 'fixed') return fromMinute + wait.minutes
  return clockMinute({ table: wait.table, sense: 'least', fromMinute, airAt })
}

export function readyAt(input: {
  readonly step: Step
  readonly placed: ReadonlyMap<string, Placed>
  readonly earliestMinute: number
  readonly airOf: (step: string) => AirAt
}): Ready {
  let minute = input.earliestMinute
  let heldBy: { step: string; untilMinute: number } | undefined
  for (const need of input.step.needs) {
    const after = input.placed.get(need.step)
    if (!after) return { ok: false, reason: 'needs' }
    const met = waitOver(need.wait, after.endMinute, input.airOf(need.step))
    if (met === undefined) return { ok: false, reason: 'clock' }
    if (met > minute) {
      minute = met
      heldBy = { step: need.step, untilMinute: met }
    }
  }
  return heldBy ? { ok: true, minute, heldBy } : { ok: true, minute }
}

export type ShutWindow = {
  /** The coat whose window has shut. */
  readonly step: string
  readonly shutMinute: number
  readonly window: Window
  /** The first minute its film can be keyed, or `undefined` when the cold keeps it soft. */
  readonly keyMinute: number | undefined
}

/** The first window that has shut before the step would begin; it must then be keyed by sanding. */
export function shutWindow(input: {
  readonly step: Step
  readonly placed: ReadonlyMap<string, Placed>
  readonly startMinute: number
  readonly airOf: (step: string) => AirAt
}): ShutWindow | undefined {
  for (const { step, window } of input.step.needs) {
    const after = input.placed.get(step)
    if (!after || !window) continue
    const airAt = input.airOf(step)
    const fromMinute = after.endMinute
    const shutMinute = clockMinute({ table: window.table, sense: 'most', fromMinute, airAt })
    if (shutMinute === undefined || shutMinute >= input.startMinute) continue
    const over = window.keyAfter.map((wait) => waitOver(wait, fromMinute, airAt))
    const keyMinute = over.includes(undefined) ? undefined : Math.max(fromMinute, ...(over as number[]))
    return { step, shutMinute, window, keyMinute }
  }
  return undefined
}

/**
 * The minute from which a start is out of every hole in the windows of what it needs: the start itself when it is in
 * none, `undefined` when the cold keeps a hole open for ever.
 */
export function outOfHoles(input: {
  readonly step: Step
  readonly placed: ReadonlyMap<string, Placed>
  readonly startMinute: number
  readonly airOf: (step: string) => AirAt
}): number | undefined {
  let minute = input.startMinute
  // A later hole may reach over the end of an earlier one, and another coat's over both.
  for (let moved = true; moved; ) {
    moved = false
    for (const { step, holes = [] } of input.step.needs) {
      const after = input.placed.get(step)
      if (!after) continue
      const airAt = input.airOf(step)
      for (const { shuts, opens } of holes) {
        const clock = { fromMinute: after.endMinute, airAt }
        const shutMinute = clockMinute({ ...clock, table: shuts, sense: 'most' })
        if (shutMinute === undefined || minute <= shutMinute) continue
        const openMinute = clockMinute({ ...clock, table: opens, sense: 'least' })
        if (openMinute === undefined) return undefined
        if (minute >= openMinute) continue
        minute = openMinute
        moved = true
      }
    }
  }
  return minute
}
