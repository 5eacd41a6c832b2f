/** Hours that are lost to the dark or the evening, whatever the product: worked once for all of them. */
import type { FailingLimit, HourVerdict } from './paint-limits.ts'
import { limitRounding } from './paint-limits.ts'
import type { HourlyColumn } from './series.ts'

/** What dark and evening alone make of each hour; undefined where neither fails. */
export type LightLimits = readonly (HourVerdict | undefined)[]

export type LightQuestion = {
  readonly hours: number
  /** How far each hour reaches into the dark, h: what `daylight` gives; left out where lamps light the work. */
  readonly darkHours?: HourlyColumn | undefined
  /** How long after the evening stop each hour ends, h, negative before it; left out under a roof. */
  readonly pastStopHours?: HourlyColumn | undefined
  /** What an hour past the evening stop is: a risk where nobody has set one. */
  readonly eveningEffect: 'risky' | 'no'
}

/**
 * Limits of dark and evening, by the hour. An hour that is not light to its end is lost, as is one that is not over at
 * the evening stop.
 * Source: dark is civil twilight, see `daylight`; the evening stop is common practice, assumed.
 */
export function lightLimits(question: LightQuestion): LightLimits {
  const { hours, darkHours, pastStopHours, eveningEffect } = question
  return Array.from({ length: hours }, (_, hour) => {
    const dark = darkHours?.[hour] ?? Number.NaN
    const past = pastStopHours?.[hour] ?? Number.NaN
    const failing: readonly FailingLimit[] = [
      ...(dark > limitRounding ? [failed('dark', 'no', dark)] : []),
      ...(past > limitRounding ? [failed('evening', eveningEffect, past)] : []),
    ]
    if (failing.length === 0) return undefined
    return { verdict: dark > limitRounding ? 'no' : eveningEffect, failing }
  })
}

const failed = (limit: 'dark' | 'evening', effect: 'risky' | 'no', had: number): FailingLimit => ({
  limit,
  effect,
  needed: 0,
  had,
  inHours: 0,
})
