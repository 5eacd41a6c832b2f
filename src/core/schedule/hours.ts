/** Verdicts by the hour, laid on the quarter-hour grid of the calendar. */
import type { HourVerdicts, Verdict } from './step.ts'
import { minuteOf, type Runs, runsOf, SLOT, type Timeline } from './timeline.ts'

const badness: Readonly<Record<Verdict, number>> = { go: 0, risky: 1, unknown: 2, no: 3 }

export const worse = (a: Verdict, b: Verdict): Verdict => (badness[a] >= badness[b] ? a : b)

/** The verdict that holds at a minute; hours outside the series are not known. */
export function verdictAt(hours: HourVerdicts, minute: number): Verdict {
  return hours.verdicts[Math.floor((minute - hours.firstMinute) / 60)] ?? 'unknown'
}

/**
 * The slots the work may lie in. Go hours always; risky and unknown ones only where the caller lets them,
 * because nothing better came in time; an unknown one only where `unknownOpen` says so too.
 */
export function openRuns(input: {
  readonly timeline: Timeline
  readonly hours: HourVerdicts
  readonly allow: ReadonlySet<Verdict>
  readonly unknownOpen: Uint8Array
}): Runs {
  const open = new Uint8Array(input.timeline.slots)
  for (let slot = 0; slot < open.length; slot++) {
    const verdict = verdictAt(input.hours, minuteOf(input.timeline, slot))
    if (input.allow.has(verdict) && (verdict !== 'unknown' || input.unknownOpen[slot])) open[slot] = 1
  }
  return runsOf(open)
}

/** Worst verdict over a stretch. */
export function worstOver(
  hours: HourVerdicts | undefined,
  stretch: { readonly fromMinute: number; readonly toMinute: number },
): Verdict {
  if (!hours) return 'go'
  let worst: Verdict = 'go'
  for (let minute = stretch.fromMinute; minute < stretch.toMinute; minute += SLOT) {
    worst = worse(worst, verdictAt(hours, minute))
  }
  return worst
}
