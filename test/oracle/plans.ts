/** The plan of each job, made once, with look-ups that several oracles need. */
import { type Plan, plan, type WorkStep } from '#plan'
import { planInput, projectRaw, sampleWeather } from '../support/samples.ts'
import { allCoats, type Coat } from './coats.ts'
import { type AirOfHour, type ClockSense, type CureRow, clockFullMinute } from './cure-clock.ts'
import { type JobName, jobs, programDocument } from './jobs.ts'
import { type RawSample, readRawSample } from './raw-sample.ts'

export type PlacedStep = Plan['days']['placed'][number]

export type Subject = {
  readonly raw: RawSample
  readonly plan: Plan
  readonly steps: ReadonlyMap<string, WorkStep>
  readonly placed: ReadonlyMap<string, PlacedStep>
  readonly airs: Readonly<Record<string, AirOfHour>>
}

const made = new Map<JobName, Subject>()

export function subjectOf(name: JobName): Subject {
  const known = made.get(name)
  if (known) return known
  const job = jobs[name]
  const worked = plan(planInput(projectRaw(programDocument(job)), sampleWeather(job.sample)))
  const subject = {
    raw: readRawSample(job),
    plan: worked,
    steps: new Map(worked.steps.steps.map((step) => [step.id, step])),
    placed: new Map(worked.days.placed.map((one) => [one.step, one])),
    airs: Object.fromEntries(worked.conditions.air.map((air) => [air.key, airOf(air)])),
  }
  made.set(name, subject)
  return subject
}

const keptHours = 7 * 24

/** Air of a place by hours since 1970; past the weather, the mean of that hour of the day over its last week. */
function airOf(air: Plan['conditions']['air'][number]): AirOfHour {
  const first = air.firstMinute / 60
  const count = air.airC.length
  return (hour) => {
    const index = hour - first
    if (index < count) return air.airC[Math.max(0, index)]!
    const seen = air.airC.filter((_airC, at) => at >= count - keptHours && (index - at) % 24 === 0)
    return seen.reduce((sum, airC) => sum + airC, 0) / seen.length
  }
}

export type ClockFrom = {
  readonly subject: Subject
  readonly rows: readonly CureRow[]
  readonly sense: ClockSense
  /** A placed step; the clock runs from its end, in the air of its place. */
  readonly after: string
}

const never = Number.POSITIVE_INFINITY

/** When a step starts and ends; never when it has no place. */
export const startOf = (subject: Subject, step: string): number =>
  subject.placed.get(step)?.startMinute ?? never
export const endOf = (subject: Subject, step: string): number => subject.placed.get(step)?.endMinute ?? never

/** Minute at which a clock that starts at the end of a step is full. */
export function fullAfter({ subject, rows, sense, after }: ClockFrom): number {
  const fromMinute = endOf(subject, after)
  if (fromMinute === never) return never
  const airC = subject.airs[subject.steps.get(after)!.air]!
  return clockFullMinute({ rows, sense, fromMinute, airC }) ?? never
}

/** Longest a coat that the cold keeps from drying is minded by the calendar. */
const longestWetMinutes = 48 * 60

/** Minute from which dust does a coat that ended at `endMinute` no harm. */
export function dryMinute(subject: Subject, step: WorkStep, endMinute: number): number {
  if (!step.wet) return endMinute
  const airC = subject.airs[step.air]!
  const full = clockFullMinute({ rows: step.wet, sense: 'least', fromMinute: endMinute, airC })
  return Math.min(endMinute + longestWetMinutes, full ?? never)
}

/** Coats that have a place. */
export const placedCoats = (subject: Subject): readonly Coat[] =>
  allCoats(subject.raw).filter((coat) => subject.placed.has(coat.step))

/** The calendar's grid, minutes. */
export const slotMinutes = 15
export const toSlots = (minutes: number): number => Math.ceil(minutes / slotMinutes) * slotMinutes

/** The span of a coat in which the product goes on: without wiping, mixing and cleaning up, in whole slots. */
export function workSpan(
  step: WorkStep,
  placed: PlacedStep,
): { readonly from: number; readonly until: number } {
  return {
    from: placed.startMinute + toSlots(step.setUpMinutes),
    until: placed.endMinute - toSlots(step.cleanUpMinutes),
  }
}

/** For messages: UTC. */
export const shown = (minute: number): string =>
  Number.isFinite(minute) ? new Date(minute * 60_000).toISOString().slice(0, 16) : 'for ever'
