/** What the calendar has to say of coats that stand on hours behind the horizon of the forecast. */
import type { Note } from '#core/note'
import type { Stage } from '../remember.ts'
import type { Conditions, Days, Steps } from '../types.ts'
import { likeDaysOfWork } from './like-days.ts'

export type DaysBehindInput = {
  readonly conditions: Conditions
  readonly steps: Steps
  readonly days: Days
}

export const daysBehind: Stage<DaysBehindInput, { readonly notes: readonly Note[] }> = {
  name: 'days behind horizon',
  run: ({ conditions, steps, days }) => {
    const keys = new Map(
      steps.steps.flatMap(({ id, hoursKey }) => (hoursKey ? [[id, hoursKey] as const] : [])),
    )
    const coats = days.placed.filter(({ step, done }) => keys.has(step) && !done)
    const behind = coats.flatMap(({ step, pieces }) => {
      const like = likeDaysOfWork({ zones: conditions.zones, hoursKey: keys.get(step), pieces })
      return like ? [{ step, ...like }] : []
    })
    if (behind.length === 0) return { notes: [] }
    const worst = behind.reduce((least, one) => (one.least < least.least ? one : least))
    const data = {
      count: behind.length,
      of: coats.length,
      step: worst.step,
      goCount: worst.least,
      likeCount: worst.of,
    }
    return { notes: [{ code: 'days.beyondForecast', severity: 'caution', data }] }
  },
}
