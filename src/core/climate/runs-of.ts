/** Runs of paintable hours long enough for a coat. */
import type { HourVerdict } from './paint-limits.ts'

export type Run = {
  /** Index of the first hour. */
  readonly fromHour: number
  readonly hours: number
}

/**
 * Unbroken runs of `go` hours.
 * @param verdicts one an hour, in order. @param hours the shortest run wanted, 1 or more.
 * @returns the runs in order; a run is never cut, so they never touch.
 */
export function runsOf(verdicts: readonly HourVerdict[], hours: number): readonly Run[] {
  const runs: Run[] = []
  let fromHour = 0
  for (let hour = 0; hour <= verdicts.length; hour++) {
    if (verdicts[hour]?.verdict === 'go') continue
    if (hour - fromHour >= hours) runs.push({ fromHour, hours: hour - fromHour })
    fromHour = hour + 1
  }
  return runs
}
