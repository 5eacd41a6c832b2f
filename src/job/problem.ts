/** What is wrong with a job document, where, and how badly. Sentences are in `words/`. */

/** Strings and plain numbers; `found` is what stood there, `nearest` a likely meaning, `accepted` what would do. */
export type ProblemData = Readonly<Record<string, string | number>>

/** With an `error` the document is not as its writer meant it; a `note` is worth knowing. */
export type ProblemSeverity = 'error' | 'note'

export type Problem = {
  readonly code: string
  readonly severity: ProblemSeverity
  /** Place in the document after RFC 6901; empty for the document as a whole. */
  readonly pointer: string
  /** Place in the file, both counted from 1; missing for a document that has no file. */
  readonly line?: number
  readonly column?: number
  readonly data: ProblemData
}

export type Place = { readonly line: number; readonly column: number }

/** Finds where the key or the value at a pointer stands in the file. */
export type Locate = (pointer: string, part: 'key' | 'value') => Place | undefined

const longestQuote = 60

/** A piece of the document short enough to show. */
export const quote = (text: string): string => {
  const characters = [...text.slice(0, longestQuote * 2 + 2)]
  return characters.length > longestQuote ? `${characters.slice(0, longestQuote).join('')}…` : text
}

/** By place in the file, then by pointer; problems without a place come first. */
export const byPlace = (a: Problem, b: Problem): number =>
  (a.line ?? 0) - (b.line ?? 0) ||
  (a.column ?? 0) - (b.column ?? 0) ||
  compareText(a.pointer, b.pointer) ||
  compareText(a.code, b.code)

/** By code unit, the same on every engine and in every locale. */
export const compareText = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0)
