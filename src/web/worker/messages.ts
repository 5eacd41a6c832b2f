/** What the page and the worker that plans say to each other. */
import type { Problem, RawCells } from '#job'
import type { Conditions, Plan, PlanInput, TraceEntry, ZoneHours } from '#plan'

/** Hours of a place without the limits that failed in each: those are many and are asked for one by one. */
export type ShownHours = Omit<ZoneHours, 'failing'>
export type ShownConditions = Omit<Conditions, 'zones'> & { readonly zones: readonly ShownHours[] }

/** The plan as the page holds it. */
export type ShownPlan = Omit<Plan, 'conditions'> & { readonly conditions: ShownConditions }

export type Failing = ZoneHours['failing'][number]

/** Entries of the log by id. */
export type Entries = Readonly<Record<string, RawCells>>

export type ToWorker =
  | { readonly kind: 'update'; readonly part: 'work' | 'money'; readonly update: Uint8Array }
  | { readonly kind: 'entries'; readonly entries: Entries }
  | { readonly kind: 'weather'; readonly hash: string; readonly bytes: Uint8Array }
  | { readonly kind: 'plan'; readonly turn: number; readonly nowMs: number }
  | { readonly kind: 'ask'; readonly ask: number; readonly question: Question }

export type Question =
  /** The plan with everything in it, for papers. */
  | { readonly kind: 'whole' }
  /** Which limits failed in the hour that begins at a minute. */
  | { readonly kind: 'why'; readonly key: string; readonly minute: number }
  /** How the plan would move if these entries stood in the log too. */
  | { readonly kind: 'what if'; readonly entries: Entries; readonly nowMs: number }

export type Answers = {
  readonly whole: { readonly plan: Plan; readonly work: PlanInput['work'] }
  readonly why: Failing
  readonly 'what if': Plan
}

/** What the page has to know of the document to show it. */
export type Reader = {
  readonly locale: string
  readonly system: 'metric' | 'us'
  readonly timeZone: string
  readonly currency?: string
}

export type PlannedMessage = {
  readonly kind: 'planned'
  readonly turn: number
  /** Stages that are not what they were in the message before. */
  readonly stages: Partial<ShownPlan>
  /** Stages that the plan no longer has. */
  readonly gone: readonly (keyof ShownPlan)[]
  readonly problems: readonly Problem[]
  readonly complete: boolean
  readonly readOnly: boolean
  readonly reader: Reader
  readonly trace: readonly TraceEntry[]
  /** Hash of the weather that the job names and the worker has not been given. */
  readonly wantsWeather?: string
  readonly weatherFault?: { readonly code: string; readonly data: Readonly<Record<string, unknown>> }
  /** How long reading and planning took, ms. */
  readonly tookMs: number
}

export type FromWorker =
  | PlannedMessage
  | {
      readonly kind: 'failed'
      readonly turn: number
      readonly code: string
      readonly data: Readonly<Record<string, string>>
    }
  | {
      readonly kind: 'answer'
      readonly ask: number
      readonly answer?: Answers[keyof Answers]
      readonly fault?: string
    }
