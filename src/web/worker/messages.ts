/** What the page and the worker that plans say to each other. */
import type { Problem, RawCells } from '#job'
import type {
  Conditions,
  FigureRef,
  HoursAsked,
  MadeHour,
  Plan,
  PlanInput,
  Solid,
  Suggestions,
  TraceEntry,
  Way,
  WeatherAtHand,
  ZoneHours,
} from '#plan'
import type { Patch } from './patch.ts'

/** The worker holds so many weathers, the newest: what the job names now, and named before, for an undo. */
export const mostWeathersHeld = 4

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
  /** The guesses that the plan rests on. */
  | { readonly kind: 'candidates' }
  /** How far one of them moves it. */
  | { readonly kind: 'weigh'; readonly candidate: Candidate; readonly nowMs: number }
  /** The plan with everything in it, for papers. */
  | { readonly kind: 'whole' }
  /** Which limits failed in the hour that begins at a minute. */
  | { readonly kind: 'why'; readonly key: string; readonly minute: number }
  /** What would make an hour that takes a coat, where these have none. */
  | ({ readonly kind: 'make an hour' } & HoursAsked)
  /** How a figure came about. */
  | { readonly kind: 'figure'; readonly figure: FigureRef }
  /** Build-ups from the sheets of the job that hold, for zones that stand alike. */
  | { readonly kind: 'suggest'; readonly family?: string }
  /** The boat as triangles. */
  | { readonly kind: 'solid' }
  /** Where the weather is from, and the sun and skins it makes hour by hour. */
  | { readonly kind: 'weather' }
  /** How the plan would move if these entries stood in the log too. */
  | { readonly kind: 'what if'; readonly entries: Entries; readonly nowMs: number }

/** A cell that nobody has measured, and two texts to try in it. */
export type Candidate = {
  readonly place: {
    readonly part: 'work' | 'money'
    readonly section: string
    readonly item?: string
    readonly key: string
  }
  readonly low: string
  readonly high: string
}

/** How far a guess moves the plan between its two texts. */
export type Effect = { readonly days: number; readonly litres: number; readonly coins?: number }

export type Answers = {
  readonly candidates: readonly Candidate[]
  readonly weigh: Effect
  readonly whole: {
    readonly plan: Plan
    readonly work: PlanInput['work']
    /** How far off the finish is judged. */
    readonly judgedFromM: number | undefined
  }
  readonly why: Failing
  readonly 'make an hour': MadeHour | undefined
  readonly figure: Way | undefined
  readonly suggest: Suggestions
  readonly solid: Solid | undefined
  readonly weather: WeatherAtHand | undefined
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
  /** Makes the plan of the message before into this one; the first puts it whole. */
  readonly patch: Patch
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
