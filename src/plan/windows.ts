/** The stretches in which a coat may go on another without sanding, as they fall in the calendar. */
import { clockMinute } from '#core/schedule'
import { airAt } from './air-at.ts'
import type { AirHours, Days, Steps } from './types.ts'

export type CoatWindow = {
  /** The coat below, and the one that may go on it. */
  readonly after: string
  readonly step: string
  readonly fromMinute: number
  /** From here on the next coat may go on. */
  readonly openMinute: number
  /** Past this it is sanded first; undefined where the cold stops the clock. */
  readonly shutMinute?: number
}

export type WindowsInput = {
  readonly steps: Pick<Steps, 'steps'>
  readonly days: Pick<Days, 'placed'>
  readonly conditions: { readonly air: readonly AirHours[] }
}

/** Of every placed coat that something placed goes on. */
export function coatWindows({ steps, days, conditions }: WindowsInput): readonly CoatWindow[] {
  const placed = new Map(days.placed.map((one) => [one.step, one]))
  const known = new Map(steps.steps.map((step) => [step.id, step]))
  const readers = new Map(conditions.air.map((air) => [air.key, airAt(air)]))
  const none = airAt(undefined)
  return steps.steps.flatMap((step) =>
    step.needs.flatMap((need): readonly CoatWindow[] => {
      const below = placed.get(need.step)
      if (!need.window || !below || !placed.has(step.id)) return []
      const fromMinute = below.endMinute
      const air = readers.get(known.get(need.step)?.air ?? '') ?? none
      const { wait } = need
      const openMinute =
        wait.kind === 'clock'
          ? clockMinute({ table: wait.table, sense: 'least', fromMinute, airAt: air })
          : fromMinute + (wait.kind === 'fixed' ? wait.minutes : 0)
      const shutMinute = clockMinute({ table: need.window.table, sense: 'most', fromMinute, airAt: air })
      if (openMinute === undefined) return []
      return [
        {
          after: need.step,
          step: step.id,
          fromMinute,
          openMinute,
          ...(shutMinute === undefined ? {} : { shutMinute }),
        },
      ]
    }),
  )
}
