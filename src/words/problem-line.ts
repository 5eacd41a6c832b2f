/** One line for a problem of a file, alike wherever files are read: file, line, column, sentence, place. */
import type { Words } from './words.ts'

export type LineProblem = {
  readonly code: string
  readonly data: Readonly<Record<string, unknown>>
  /** Both counted from 1; missing where the file as a whole is meant. */
  readonly line?: number | undefined
  readonly column?: number | undefined
  /** Place in a job document; empty for the document as a whole. */
  readonly pointer?: string | undefined
}

/** `file:line:column: sentence (place)`, each part only where it is known. */
export function problemLine(words: Words, file: string, problem: LineProblem): string {
  const { code, data, line, column, pointer = '' } = problem
  const place = [line, column].filter((part) => part !== undefined).map((part) => `:${part}`)
  return `${file}${place.join('')}: ${words.sentence(code, data)}${pointer === '' ? '' : ` (${pointer})`}`
}
