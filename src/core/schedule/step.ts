/**
 * One piece of work and what it waits for. Times inside this room are whole minutes since 1970 UTC,
 * so that the calendar is the same on every engine.
 */
import type { CureTable, WindowHole } from '#core/cure'

/** What must pass between the end of another step and the start of this one. */
export type Wait =
  | { readonly kind: 'none' }
  | { readonly kind: 'fixed'; readonly minutes: number }
  /** A clock that runs with the temperature, read to the safe side outside its table. */
  | { readonly kind: 'clock'; readonly clock: string; readonly table: CureTable }

export type Need = {
  readonly step: string
  readonly wait: Wait
  readonly window?: Window
  /** Stretches after the other step in which this one may not begin, sanded or not. */
  readonly holes?: readonly WindowHole[]
}

/** How long the next coat may come without sanding; past it the surface is keyed first. */
export type Window = {
  readonly table: CureTable
  readonly keyMinutes: number
  /** What the film must have done before it can be keyed. */
  readonly keyAfter: readonly Wait[]
  /** People who must not key it, by id. */
  readonly barred: readonly string[]
}

/** Person-minutes the work takes when this many people do it. */
export type Pace = { readonly crew: number; readonly personMinutes: number }

export type Step = {
  readonly id: string
  readonly kind: string
  /** Ascending by crew; the first is the fewest people it can be done with. */
  readonly paces: readonly Pace[]
  /** `inOneGo` is never broken by a night or a lost hour: coats. The rest may be split over sessions. */
  readonly inOneGo: boolean
  /** Clock minutes before and after the work itself, by the same people: wiping and mixing, cleaning up. */
  readonly setUpMinutes: number
  readonly cleanUpMinutes: number
  readonly needs: readonly Need[]
  /** Key of the hours it may be done in; absent when any hour will do. */
  readonly hoursKey?: string
  /** Key of the temperature its clocks run at. */
  readonly air: string
  /** What it has to do with dust: sanding makes it, a wet coat minds it until it is dry to touch. */
  readonly dust: 'makes' | 'minds' | 'neither'
  /** How long after the work a coat still minds dust: its clock to touch-dry. */
  readonly wet?: CureTable
  /** Floors one stands on to do it, by id. */
  readonly standsOn: readonly string[]
  /** Floors it makes wet, and the clock until they can be trodden. */
  readonly tread?: { readonly floors: readonly string[]; readonly table: CureTable }
  /** People who must not do it, by id. */
  readonly barred: readonly string[]
}

export type Interval = { readonly startMinute: number; readonly endMinute: number }
export type Person = { readonly id: string; readonly shifts: readonly Interval[] }

export type Verdict = 'go' | 'risky' | 'no' | 'unknown'
/** A verdict an hour, from `firstMinute` on; hours outside are unknown. */
export type HourVerdicts = { readonly firstMinute: number; readonly verdicts: readonly Verdict[] }

/** A stretch of work by the same people. */
export type Piece = Interval & { readonly people: readonly string[] }

export type Placed = {
  readonly step: string
  readonly startMinute: number
  readonly endMinute: number
  readonly pieces: readonly Piece[]
  /** The need that held it back longest, when one did. */
  readonly heldBy?: { readonly step: string; readonly untilMinute: number }
  /** Worst verdict among its hours. */
  readonly verdict: Verdict
  /** Put in by the calendar: the recoat window had shut, so the surface is keyed first. */
  readonly keyFor?: string
  /** It already happened, by the log. */
  readonly done: boolean
}

export type Unplaced = {
  readonly step: string
  readonly reason: 'needs' | 'clock' | 'horizon' | 'people' | 'together'
}
