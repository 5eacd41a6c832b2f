/** What the log says has already happened, and what of it went wrong. */
import type { Interval } from '#core/schedule'
import { inForce, type Log } from '#job'
import { mendId } from './steps/draft.ts'

/** The last thing that went wrong with a step. */
export type Mishap = Interval & {
  readonly step: string
  readonly atMinute: number
  /** Whether the coat stands, was wiped off wet, or has to be sanded off. */
  readonly film: 'stands' | 'wiped off' | 'sanded off'
  readonly grit?: string
  readonly sandedShare: number
  readonly waitHours: number
  /** It has been put right: the coat was done again after it. */
  readonly over: boolean
  /** How often the coat was lost, this time with it. */
  readonly lost: number
}

export type Happened = {
  /** Steps that are done, with their times. */
  readonly done: ReadonlyMap<string, Interval>
  /** In the order in which they happened. */
  readonly mishaps: readonly Mishap[]
}

const minuteOfEntry = (at: string): number | undefined => {
  const ms = Date.parse(at)
  return Number.isNaN(ms) ? undefined : Math.floor(ms / 60_000)
}

type Told = {
  readonly done: Map<string, Interval>
  readonly started: Map<string, number>
  readonly mishaps: Map<string, Mishap>
}

/**
 * A later `not done` takes a `done` back, and so does a mishap that the coat did not survive; done again, it is over.
 * Without a start, a step begins when it ends.
 */
export function happened(log: Log): Happened {
  const told: Told = { done: new Map(), started: new Map(), mishaps: new Map() }
  for (const entry of inTime(log)) tell(told, entry)
  return { done: told.done, mishaps: [...told.mishaps.values()] }
}

function tell(told: Told, { step, minute, entry }: Entry): void {
  const { done, started, mishaps } = told
  if (entry.kind === 'started') started.set(step, minute)
  if (entry.kind === 'not done') done.delete(step)
  if (entry.kind === 'mishap') goWrong(told, { step, minute, entry })
  if (entry.kind !== 'done') return
  done.set(step, { startMinute: Math.min(started.get(step) ?? minute, minute), endMinute: minute })
  const mishap = mishaps.get(step)
  if (mishap && mishap.film !== 'stands') mishaps.set(step, { ...mishap, over: true })
}

function goWrong({ done, started, mishaps }: Told, { step, minute, entry }: Entry): void {
  const film = entry.film ?? 'stands'
  const lostBefore = mishaps.get(step)?.lost ?? 0
  // What nobody sands and nobody waits for leaves the plan as it is, and an older mishap too.
  if (film === 'stands' && entry.grit === undefined) return
  const startMinute = Math.min(started.get(step) ?? done.get(step)?.startMinute ?? minute, minute)
  const endMinute = film === 'stands' ? (done.get(step)?.endMinute ?? minute) : minute
  done.delete(mendId(step))
  if (film !== 'stands') {
    done.delete(step)
    started.delete(step)
  }
  mishaps.delete(step)
  mishaps.set(step, {
    step,
    atMinute: minute,
    startMinute,
    endMinute,
    film,
    ...(entry.grit === undefined ? {} : { grit: entry.grit }),
    sandedShare: film === 'stands' ? (entry.share?.value ?? 1) : 1,
    waitHours: entry.wait?.value ?? 0,
    over: false,
    lost: lostBefore + (film === 'stands' ? 0 : 1),
  })
}

type Entry = { readonly step: string; readonly minute: number; readonly entry: Log[number] }

/** Entries that count and name a step and a time, oldest first; ids settle entries of the same minute. */
const inTime = (log: Log): readonly Entry[] =>
  inForce(log)
    .flatMap((entry): readonly Entry[] => {
      const minute = minuteOfEntry(entry.at)
      return entry.step === undefined || minute === undefined ? [] : [{ step: entry.step, minute, entry }]
    })
    .sort((a, b) => a.minute - b.minute || (a.entry.id < b.entry.id ? -1 : 1))
