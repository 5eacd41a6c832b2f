/** Verdicts by the hour, laid on the quarter-hour grid of the calendar. */
import type { HourVerdicts, Verdict } from './step.ts'
import { type Runs, runsOf, SLOT, slotFrom, type Timeline } from './timeline.ts'

const badness: Readonly<Record<Verdict, number>> = { go: 0, risky: 1, unknown: 2, no: 3 }

/** The worse of two verdicts: go, risky, unknown, no. */
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
  const { timeline, hours, allow, unknownOpen } = input
  // Hours outside the series are unknown, so they start from the stretches opened for those.
  const open = allow.has('unknown') ? unknownOpen.slice() : new Uint8Array(timeline.slots)
  hours.verdicts.forEach((verdict, hour) => {
    if (verdict === 'unknown') return
    const fromSlot = slotFrom(timeline, hours.firstMinute + hour * 60)
    const toSlot = slotFrom(timeline, hours.firstMinute + (hour + 1) * 60)
    if (toSlot > fromSlot) open.fill(allow.has(verdict) ? 1 : 0, fromSlot, toSlot)
  })
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
