/** What was found wrong or worth knowing in a file from outside, and a list of it that stays short. */

export type ProblemData = Readonly<Record<string, number | string | boolean>>

export type Problem = {
  /** `intake.what`; `words/` has a sentence for each. */
  readonly code: string
  /** With an `error` the file is not taken; a `note` says what was done about something. */
  readonly severity: 'error' | 'note'
  /** Line of the file, from 1; left out when the whole file is meant. */
  readonly line?: number
  /** Field of the line, from 1. */
  readonly column?: number
  readonly data: ProblemData
}

/** How many problems are told one by one; of the rest only the number. */
export const problemsTold = 50

export type ProblemList = {
  readonly first: Problem[]
  count: number
}

export function problemList(): ProblemList {
  return { first: [], count: 0 }
}

/** Adds a problem; past the first fifty only the count grows. */
export function addProblem(list: ProblemList, problem: Problem): void {
  list.count++
  if (list.first.length < problemsTold) list.first.push(problem)
}

/**
 * Joins lists, each in the order of its lines, into one in the order of lines: those of the whole file first.
 * After the first fifty stands one problem with the number left out.
 */
export function tellProblems(
  lists: readonly ProblemList[],
  more: Pick<Problem, 'code' | 'severity'>,
): readonly Problem[] {
  const count = lists.reduce((sum, list) => sum + list.count, 0)
  const first = lists.flatMap((list) => list.first).sort((a, b) => (a.line ?? 0) - (b.line ?? 0))
  const told = first.slice(0, problemsTold)
  return count > told.length ? [...told, { ...more, data: { count: count - told.length } }] : told
}

/** Text from a file made safe to show on one line: no control or direction characters, at most so many letters. */
export function oneLine(text: string, most: number): string {
  const plain = text
    .slice(0, 8 * most)
    .replace(/[\p{Cc}\p{Cf}\p{Zl}\p{Zp}]+/gu, ' ')
    .trim()
  const letters = [...plain]
  return letters.length > most ? `${letters.slice(0, most - 1).join('')}…` : plain
}

/** What stood in a field, short enough for a sentence. */
export function shown(text: string): string {
  return oneLine(text, 40)
}
