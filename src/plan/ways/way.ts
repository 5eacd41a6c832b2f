/**
 * How one figure came about, as data: a term over named parts, each part with how sure it is, where it was read and
 * where a person may set it. A part that was itself worked out carries its own term.
 */
import type { Certainty } from '#core/note'

/** A cell of the documents. */
export type CellAt = {
  readonly part: 'work' | 'money'
  readonly section: string
  readonly item?: string
  readonly key: string
}

/** Which figure is asked about. */
export type FigureRef =
  | { readonly kind: 'zone area'; readonly zone: string }
  | { readonly kind: 'zone litres'; readonly zone: string }
  | { readonly kind: 'rule area'; readonly rule: string }
  | { readonly kind: 'layer film'; readonly layer: string; readonly zone: string }
  | { readonly kind: 'layer litres'; readonly layer: string; readonly zones: readonly string[] }
  | {
      readonly kind: 'stripe'
      readonly mark: string
      readonly row: number
      readonly of: 'lower' | 'upper' | 'girth'
    }
  | { readonly kind: 'panel'; readonly mark: string; readonly of: 'length' | 'width' | 'area' }
  | { readonly kind: 'store'; readonly sheet: string; readonly of: 'need' | 'reserve' | 'left' }
  | { readonly kind: 'consumable'; readonly id: string; readonly sheet?: string }
  | { readonly kind: 'money line'; readonly line: string }
  | { readonly kind: 'money hours'; readonly line: string }
  | { readonly kind: 'money group'; readonly group: MoneyGroup }
  | { readonly kind: 'money sum'; readonly of: 'margin' | 'net' | 'tax' | 'total' | 'deposit' }
  | { readonly kind: 'change'; readonly change: string }
  | { readonly kind: 'air'; readonly place: string; readonly minute: number; readonly of: AirFigure }
  | { readonly kind: 'pour'; readonly step: string; readonly nr: number; readonly of: PourPart }

export type MoneyGroup = 'labour' | 'materials' | 'consumables' | 'costs'
export type AirFigure = 'skin' | 'dew' | 'margin' | 'humidity'
export type PourPart = 'base' | 'hardener' | 'thinner' | 'additive'

export type Part = {
  readonly kind: 'part'
  /** What it is, as a key of the labels `way.…`. */
  readonly name: string
  /** Of which zone, product or person. */
  readonly of?: string
  /** Says the unit of the value, as keys of notes do: `areaM2`, `coins`. */
  readonly key: string
  readonly value: number
  readonly certainty: Certainty
  readonly source?: string
  /** Where a person may set it, or set what it rests on. */
  readonly at?: CellAt
  /** How it was worked out, when it was. */
  readonly term?: Term
}

/** In the units of the parts' keys: no factor between units hides in a term. */
export type Term =
  | Part
  | { readonly kind: 'number'; readonly value: number }
  | { readonly kind: 'plus' | 'times'; readonly of: readonly Term[] }
  | { readonly kind: 'minus' | 'over'; readonly of: readonly [Term, Term] }
  | { readonly kind: 'ln'; readonly of: readonly [Term] }
  /** To a multiple of `to`: always up, or to the nearest. */
  | { readonly kind: 'up' | 'nearest'; readonly of: readonly [Term]; readonly to: number }

export type Way = {
  readonly figure: Part
  /** What it rests on, each part once. */
  readonly parts: readonly Part[]
  /** A sentence for what is no formula, or has to be said beside it. */
  readonly how?: { readonly code: string; readonly data?: Readonly<Record<string, string | number>> }
}

export const number = (value: number): Term => ({ kind: 'number', value })
export const plus = (...of: readonly Term[]): Term => (of.length === 1 ? of[0]! : { kind: 'plus', of })
export const times = (...of: readonly Term[]): Term => (of.length === 1 ? of[0]! : { kind: 'times', of })
export const minus = (a: Term, b: Term): Term => ({ kind: 'minus', of: [a, b] })
export const over = (a: Term, b: Term): Term => ({ kind: 'over', of: [a, b] })
export const up = (of: Term, to: number): Term => ({ kind: 'up', of: [of], to })
export const nearest = (of: Term, to: number): Term => ({ kind: 'nearest', of: [of], to })

/** The value of a term. A little is taken off before rounding up: 0.1 + 0.2 is no more than 0.3. */
export function valueIn(term: Term): number {
  switch (term.kind) {
    case 'part':
    case 'number':
      return term.value
    case 'plus':
      return term.of.reduce((sum, each) => sum + valueIn(each), 0)
    case 'times':
      return term.of.reduce((product, each) => product * valueIn(each), 1)
    case 'minus':
      return valueIn(term.of[0]) - valueIn(term.of[1])
    case 'over':
      return valueIn(term.of[0]) / valueIn(term.of[1])
    case 'ln':
      return Math.log(valueIn(term.of[0]))
    case 'up':
      return Math.ceil(valueIn(term.of[0]) / term.to - 1e-6) * term.to
    case 'nearest':
      return Math.floor(Number((valueIn(term.of[0]) / term.to).toPrecision(15)) + 0.5) * term.to
  }
}

/** The parts a term names, in the order in which they are read, each once. */
export function partsIn(term: Term): readonly Part[] {
  if (term.kind === 'number') return []
  if (term.kind === 'part') return [term]
  return [...new Set(term.of.flatMap(partsIn))]
}

type Known = Omit<Part, 'kind' | 'value' | 'term'>

export const given = (part: Omit<Part, 'kind'>): Part => ({ kind: 'part', ...part })

/** A part worked out by a term; its value is the term's. */
export const worked = (part: Known, term: Term): Part => ({
  kind: 'part',
  ...part,
  value: valueIn(term),
  term,
})

/** With every part that stands behind the figure, the nearest first. */
export const wayOf = (
  figure: Part,
  more: Pick<Way, 'how'> & { readonly parts?: readonly Part[] } = {},
): Way => ({
  figure,
  parts: more.parts ?? (figure.term ? partsIn(figure.term) : []),
  ...(more.how ? { how: more.how } : {}),
})
