/** What a quick sum is: its inputs, and a function from plain values to results, the way there, and notes. */
import type { Note } from '#core/note'
import type { Dimension } from '#units'
import type { SumField, SumValues } from './field.ts'
import { type Given, given } from './given.ts'

export type SumId = 'dew' | 'spread' | 'wet' | 'mix' | 'catalyst' | 'ply' | 'bevel' | 'vent' | 'sun' | 'cure'

export type SumResultValue = number | string | boolean | readonly number[] | readonly string[]

export type SumResult = {
  /** Ends in its unit: `dewPointC`, `wetFilmUm`. */
  readonly key: string
  /** In the unit of the key. */
  readonly value: SumResultValue
  readonly dimension: Dimension | 'text' | 'flag'
}

/** One line of the way to a result: the code of a formula, and the figures that went into it and came out. */
export type HowLine = {
  readonly code: string
  readonly data: Readonly<Record<string, number | string>>
}

export type SumAnswer = {
  /** What was asked for first. */
  readonly results: readonly SumResult[]
  readonly how: readonly HowLine[]
  readonly notes: readonly Note[]
  readonly sources: readonly string[]
}

export type Sum = {
  readonly id: SumId
  readonly doc: string
  readonly inputs: readonly SumField[]
  /** Values in SI by input name; throws a SumError for a missing, unknown or impossible one. */
  readonly run: (values: SumValues) => SumAnswer
}

/** A sum from its inputs and its work, which sees only values that were checked against the inputs. */
export function defineSum(sum: Omit<Sum, 'run'> & { readonly work: (given: Given) => SumAnswer }): Sum {
  const { id, doc, inputs, work } = sum
  return { id, doc, inputs, run: (values) => plainAnswer(work(given(inputs, values))) }
}

/** Figures without the last digits that binary arithmetic leaves: 74, not 74.00000000000001. */
function plainAnswer({ results, how: lines, notes, sources }: SumAnswer): SumAnswer {
  return {
    results: results.map((line) => ({ ...line, value: plain(line.value) as SumResultValue })),
    how: lines.map((line) => ({ ...line, data: plainData(line.data) })),
    notes: notes.map((note) => ({ ...note, data: plainData(note.data) })),
    sources,
  }
}

function plainData<Data extends Readonly<Record<string, unknown>>>(data: Data): Data {
  return Object.fromEntries(Object.entries(data).map(([key, value]) => [key, plain(value)])) as Data
}

function plain(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(plain)
  return typeof value === 'number' ? Number(value.toPrecision(12)) : value
}

export function result(key: string, value: SumResultValue, dimension: SumResult['dimension']): SumResult {
  return { key, value, dimension }
}

export function how(code: string, data: HowLine['data']): HowLine {
  return { code, data }
}
