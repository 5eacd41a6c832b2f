/** A problem before its place in the file is known. */
import type { Locate, Problem, ProblemData, ProblemSeverity } from './problem.ts'

export type FoundProblem = {
  readonly code: string
  readonly severity: ProblemSeverity
  readonly pointer: string
  /** Whether the key or the value is what is wrong. */
  readonly part: 'key' | 'value'
  readonly data: ProblemData
}

export const errorAt = (
  pointer: string,
  code: string,
  data: ProblemData = {},
  part: 'key' | 'value' = 'value',
): FoundProblem => ({ code, severity: 'error', pointer, part, data })

export const noteAt = (
  pointer: string,
  code: string,
  data: ProblemData = {},
  part: 'key' | 'value' = 'value',
): FoundProblem => ({ code, severity: 'note', pointer, part, data })

/** Adds line and column when the document came from a file. */
export const placed = ({ part, ...problem }: FoundProblem, locate: Locate | undefined): Problem => {
  const place = locate?.(problem.pointer, part)
  return place ? { ...problem, line: place.line, column: place.column } : problem
}
