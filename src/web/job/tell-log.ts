/** Tells the log, so that what is told last is read last. */
import type { RawCells } from '#job'
import type { JobView } from './job-view.ts'
import { localInstant } from './local-date.ts'

export type StepTurn = 'started' | 'done' | 'not done'
export type TellView = Pick<JobView, 'log' | 'addEntry' | 'timeZone'>

const minuteMs = 60_000

/**
 * Writes an entry as of now. The log counts in minutes: what is told of a step, or of none, within a
 * minute of the entry before is told as of the next, or the two could change places.
 */
export function tellLog(
  { log, addEntry, timeZone }: TellView,
  { cells, nowMs }: { readonly cells: RawCells; readonly nowMs: number },
): void {
  const told = log
    .filter((line) => line.cells.step === cells.step)
    .map((line) => Date.parse(String(line.cells.at)))
    // An entry far ahead is a clock gone wrong, and moves no other.
    .filter((atMs) => atMs >= nowMs - minuteMs && atMs < nowMs + 10 * minuteMs)
  const least = Math.max(...told.map((atMs) => Math.floor(atMs / minuteMs) * minuteMs + minuteMs), nowMs)
  addEntry({ at: localInstant(least, timeZone), ...cells })
}

export function tellStep(
  view: TellView,
  { kind, step, nowMs }: { readonly kind: StepTurn; readonly step: string; readonly nowMs: number },
): void {
  tellLog(view, { cells: { kind, step }, nowMs })
}
