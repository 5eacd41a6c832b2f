/** Tells the log, so that what is told last is read last. */
import { correctedIds, type RawCells } from '#job'
import type { JobView, LogLine } from './job-view.ts'
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

/** Lines that no other takes the place of. */
export function linesInForce(log: readonly LogLine[]): readonly LogLine[] {
  const corrected = correctedIds(log.map(({ id, cells }) => ({ id, corrects: cells.corrects })))
  return corrected.size === 0 ? log : log.filter(({ id }) => !corrected.has(id))
}

const turns: readonly string[] = ['started', 'done', 'not done']

export type PastEntry = { readonly cells: RawCells; readonly atMs: number; readonly nowMs: number }

/** Writes an entry about a moment that is past; what is now or still to come is told as of now. */
export function tellPast(view: TellView, { cells, atMs, nowMs }: PastEntry): void {
  if (atMs > nowMs - minuteMs) tellLog(view, { cells, nowMs })
  else view.addEntry(pastCells(view, { cells, atMs, nowMs }))
}

/**
 * The cells of an entry about a moment that is past: they say when it was written. What was told of the same step for
 * later than that, a tick too many or one taken back, it takes the place of: else the old tick would have the last word.
 */
export function pastCells(
  { log, timeZone }: Pick<TellView, 'log' | 'timeZone'>,
  { cells, atMs, nowMs }: PastEntry,
): RawCells {
  const own = linesInForce(log)
    .filter((line) => cells.step !== undefined && line.cells.step === cells.step)
    .map(({ id, cells: { at, kind } }) => ({ id, kind: String(kind), atMs: Date.parse(String(at)) }))
  const taken = new Set(own.map((line) => Math.floor(line.atMs / minuteMs)))
  let minute = Math.floor(atMs / minuteMs)
  while (taken.has(minute)) minute++
  const corrects = turns.includes(String(cells.kind))
    ? own.filter((line) => turns.includes(line.kind) && line.atMs >= minute * minuteMs).map(({ id }) => id)
    : []
  return {
    at: localInstant(minute * minuteMs, timeZone),
    ...cells,
    ...(corrects.length === 0 ? {} : { corrects: corrects.join(', ') }),
    written: localInstant(nowMs, timeZone),
  }
}

export function tellStep(
  view: TellView,
  { kind, step, nowMs }: { readonly kind: StepTurn; readonly step: string; readonly nowMs: number },
): void {
  tellLog(view, { cells: { kind, step }, nowMs })
}
