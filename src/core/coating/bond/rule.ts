/** Rules of what holds on what, as data: the catalogue ships them, nothing in the code knows one by name. */
import type { Age, Selector } from './material.ts'

export type Verdict = 'yes' | 'care' | 'no'

/** A grade of paper and the mean size of its grains, m. */
export type Grit = { readonly name: string; readonly sizeM: number }

/** Where a zone lies when the boat is afloat. */
export type Where = 'above water' | 'below water'

/** What is done to a surface before it is coated, in words that rules of order use too. */
export type Act =
  | 'clear'
  | 'water wash'
  | 'dewax'
  | 'abrade'
  | 'dust off'
  | 'solvent wipe'
  | 'tack'
  | 'coat'
  | 'pinhole fill'

export type Cited = {
  /** Which source, by kind; several apart by `; `. */
  readonly source: string
  readonly certainty: 'typical' | 'assumed'
}

export type BondRule = Cited & {
  readonly id: string
  /** Rules of one aspect outrank each other by how closely they fit; aspects are judged apart, the worst counts. */
  readonly aspect: string
  readonly under: readonly Selector[]
  readonly over: readonly Selector[]
  readonly age?: Age
  /** Only on a surface in this state. */
  readonly state?: string
  readonly where?: Where
  /** Only under a coat of this shade. */
  readonly shade?: string
  readonly verdict: Verdict
  /** It speaks against the other rules of its kind: shown beside them, it does not decide. */
  readonly dissent: boolean
  /** Mechanism, by code. */
  readonly reason: string
  readonly waterWash: boolean
  readonly dewax: boolean
  /** `never`: solvent spoils the surface once it is ground. */
  readonly solvent?: 'never' | 'wipe'
  readonly grit?: { readonly coarsest: Grit; readonly finest: Grit }
  /** When it has to be sanded: always, or only past the longest wait of the coat below. */
  readonly key?: 'always' | 'past the window'
  /** What goes between to make it right. */
  readonly tie: readonly Selector[]
  /** What else makes it right, by code: `strip`, `cure under wax or film`. */
  readonly clear?: string
  /** Under which condition it holds, by code: `looks only`, `small areas`. */
  readonly only?: string
  readonly wait?: { readonly hours: number; readonly until: string }
}

/** One rule of order: the act needs another before it, or must not come after one. */
export type OrderRule = Cited & {
  readonly id: string
  readonly act: Act
  readonly needs?: Act
  readonly notAfter?: Act
  readonly on: readonly Selector[]
  readonly age?: Age
  readonly reason: string
}

/** What is usual for coats of a kind, and how thick they may get. */
export type CoatPractice = Cited & {
  readonly id: string
  readonly of: readonly Selector[]
  readonly coats: number
  /** Sanded with between its coats for looks, even where it would bond unsanded. */
  readonly between?: Grit
  /** How long a finish lasts, hours; nothing where the coat is covered. */
  readonly lifeHours?: number
  /** m of one coat and of all its coats. */
  readonly filmMostM?: number
  readonly buildMostM?: number
}

/** How many coats a colour takes to hide, and over which colour. */
export type HidingRule = Cited & {
  readonly id: string
  readonly colours: readonly string[]
  readonly shade?: string
  readonly over: readonly string[]
  readonly coats: number
}

/** A coat that can be taken off again, and what is then there. */
export type StripRule = Cited & {
  readonly id: string
  readonly of: readonly Selector[]
  readonly leaves: Selector
  readonly hoursPerM2: number
}

/** What an old surface that nobody has identified may be, by what the solvent rub showed. */
export type GuessRule = Cited & {
  readonly id: string
  readonly shows: string
  readonly maybe: readonly Selector[]
}

export type BondBook = {
  readonly rules: readonly BondRule[]
  readonly order: readonly OrderRule[]
  readonly practice: readonly CoatPractice[]
  readonly hiding: readonly HidingRule[]
  readonly strips: readonly StripRule[]
  readonly guesses: readonly GuessRule[]
}
