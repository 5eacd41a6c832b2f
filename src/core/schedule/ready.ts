/** When a step may begin: after all it waits for, each wait run at the temperature of its hours. */
import { type CureTable, clockEnd } from '#core/cure'
import type { Need, Placed, Step } from './step.ts'

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

/** The minute one need is met. */
function needMet(need: Need, after: Placed, airAt: AirAt): number | undefined {
  if (need.wait.kind === 'none') return after.endMinute
  if (need.wait.kind === 'fixed') return after.endMinute + need.wait.minutes
  return clockMinute({ table: need.wait.table, sense: 'least', fromMinute: after.endMinute, airAt })
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
    const met = needMet(need, after, input.airOf(need.step))
    if (met === undefined) return { ok: false, reason: 'clock' }
    if (met > minute) {
      minute = met
      heldBy = { step: need.step, untilMinute: met }
    }
  }
  return heldBy ? { ok: true, minute, heldBy } : { ok: true, minute }
}

/** The first window that has shut before the step would begin; it must then be keyed by sanding. */
export function shutWindow(input: {
  readonly step: Step
  readonly placed: ReadonlyMap<string, Placed>
  readonly startMinute: number
  readonly airOf: (step: string) => AirAt
}): { readonly step: string; readonly shutMinute: number; readonly keyMinutes: number } | undefined {
  for (const need of input.step.needs) {
    const after = need.window && input.placed.get(need.step)
    if (!after || !need.window) continue
    const shutMinute = clockMinute({
      table: need.window.table,
      sense: 'most',
      fromMinute: after.endMinute,
      airAt: input.airOf(need.step),
    })
    if (shutMinute !== undefined && shutMinute < input.startMinute) {
      return { step: need.step, shutMinute, keyMinutes: need.window.keyMinutes }
    }
  }
  return undefined
}
