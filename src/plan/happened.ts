/** What the log says has already happened. */
import type { Interval } from '#core/schedule'
import type { Log } from '#job'

const minuteOfEntry = (at: string): number | undefined => {
  const ms = Date.parse(at)
  return Number.isNaN(ms) ? undefined : Math.floor(ms / 60_000)
}

/** Steps that are done, with their times; a later `not done` takes a `done` back. Without a start, it is the end. */
export function happened(log: Log): ReadonlyMap<string, Interval> {
  const done = new Map<string, Interval>()
  const started = new Map<string, number>()
  for (const entry of inTime(log)) {
    const { step, minute } = entry
    if (entry.kind === 'started') started.set(step, minute)
    if (entry.kind === 'done')
      done.set(step, { startMinute: Math.min(started.get(step) ?? minute, minute), endMinute: minute })
    if (entry.kind === 'not done') done.delete(step)
  }
  return done
}

/** Entries that name a step and a time, oldest first; ids settle entries of the same minute. */
function inTime(log: Log) {
  return log
    .flatMap((entry) => {
      const minute = minuteOfEntry(entry.at)
      return entry.step === undefined || minute === undefined
        ? []
        : [{ id: entry.id, kind: entry.kind, step: entry.step, minute }]
    })
    .sort((a, b) => a.minute - b.minute || (a.id < b.id ? -1 : 1))
}
