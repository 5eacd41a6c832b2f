/** Limits of sun, light, wind and wet that failed, as rows: what else an hour is judged by always has its row. */
import { limitNote } from '#plan'
import { labelOf } from '#words'
import type { JobView } from '../../job/job-view.ts'
import type { Failing } from '../../worker/messages.ts'
import { missedBy } from './failing-hours.ts'
import type { LimitRow } from './limit-rows.ts'

/** By how much, in the unit of the limit. */
const missedKeys = {
  wind: 'missedMps',
  wetSince: 'missedHours',
  hotSun: 'missedK',
  dark: 'missedHours',
  evening: 'missedHours',
} as const

type WithRow = keyof typeof missedKeys

const hasRow = (limit: string): limit is WithRow => limit in missedKeys

export function failedRows({ words }: Pick<JobView, 'words'>, failing: Failing): readonly LimitRow[] {
  return failing.flatMap((one) => {
    const { limit, effect } = one
    if (!hasRow(limit)) return []
    const { data } = limitNote(one)
    const missed = missedBy(one)
    return [
      {
        id: limit,
        limit: labelOf(`daysScreen.${limit}Limit`),
        had:
          one.had === null ? labelOf('daysScreen.notKnown') : words.sentence(`daysscreen.${limit}Had`, data),
        needed: words.sentence(`daysscreen.${limit}Needed`, data),
        ...(Number.isFinite(missed) ? { by: words.figure(missedKeys[limit], missed) } : {}),
        so: effect === 'no' ? 'not' : effect === 'unknown' ? 'notKnown' : 'risky',
      },
    ]
  })
}
