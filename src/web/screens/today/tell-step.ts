/** Tells the log of a step, so that what is told last is read last. */
import type { JobView } from '../../job/job-view.ts'
import { localInstant } from '../../job/local-date.ts'

export type StepTurn = 'started' | 'done' | 'not done'
export type TellView = Pick<JobView, 'log' | 'addEntry' | 'timeZone'>

const minuteMs = 60_000

/** The log counts in minutes: what is taken back within one is told as of the next, or the two could change places. */
export function tellStep(
  { log, addEntry, timeZone }: TellView,
  { kind, step, nowMs }: { readonly kind: StepTurn; readonly step: string; readonly nowMs: number },
): void {
  const told = log
    .filter(({ cells }) => cells.step === step)
    .map(({ cells }) => Date.parse(String(cells.at)))
    // An entry far ahead is a clock gone wrong, and moves no other.
    .filter((atMs) => atMs >= nowMs - minuteMs && atMs < nowMs + 10 * minuteMs)
  const least = Math.max(...told.map((atMs) => Math.floor(atMs / minuteMs) * minuteMs + minuteMs), nowMs)
  addEntry({ at: localInstant(least, timeZone), kind, step })
}
