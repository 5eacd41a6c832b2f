/** Conditions with what the typical year says of the hours behind the horizon. */
import { type ConditionsInput, judgeConditions } from '../conditions.ts'
import type { Runner } from '../remember.ts'
import type { Conditions } from '../types.ts'
import type { DatedWeather } from './dated-weather.ts'
import { besides, withLikeDays, yearRound } from './like-days.ts'

export type BehindHorizonInput = {
  readonly year: DatedWeather['year'] | undefined
  readonly horizon: DatedWeather['horizon'] | undefined
  readonly conditions: Conditions
  /** What the conditions were judged from, but for the weather. */
  readonly asked: Omit<ConditionsInput, 'weather' | 'typicalYear' | 'readings'>
}

/** The very same conditions where no hour is of a typical year. */
export function behindHorizon(
  run: Runner,
  { conditions, asked, year, horizon }: BehindHorizonInput,
): Conditions {
  if (!year || !horizon) return conditions
  const likeYear = judgeConditions(besides(run), {
    ...asked,
    weather: run(yearRound, { year }),
    typicalYear: false,
    readings: nothingRead,
  })
  return withLikeDays(run, { conditions, likeYear, year, horizon })
}

/** Nobody reads in a typical year. */
const nothingRead: ConditionsInput['readings'] = []
