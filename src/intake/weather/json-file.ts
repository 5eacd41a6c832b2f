/** Answers of weather services as plain values: nothing is taken for what it does not look like. */
import { addProblem, type ProblemList, shown } from '../problem.ts'

export type JsonMap = Readonly<Record<string, unknown>>

export const isMap = (value: unknown): value is JsonMap =>
  typeof value === 'object' && value !== null && !Array.isArray(value)

/** A map inside a map; an empty one when there is none. */
export const mapIn = (map: JsonMap, key: string): JsonMap => {
  const value = Object.hasOwn(map, key) ? map[key] : undefined
  return isMap(value) ? value : {}
}

export const listIn = (map: JsonMap, key: string): readonly unknown[] => {
  const value = Object.hasOwn(map, key) ? map[key] : undefined
  return Array.isArray(value) ? value : []
}

export const textIn = (map: JsonMap, key: string): string => {
  const value = Object.hasOwn(map, key) ? map[key] : undefined
  return typeof value === 'string' ? value : ''
}

/** A second entry for hours that have one: a note where it says the same, else an error, both with its place. */
export function tellTwice(
  found: { readonly at: string; readonly atMs: number; readonly same: boolean },
  { errors, notes }: { readonly errors: ProblemList; readonly notes: ProblemList },
): void {
  const data = { at: found.at, foundAtMs: found.atMs }
  if (found.same) addProblem(notes, { code: 'intake.jsonRepeated', severity: 'note', data })
  else addProblem(errors, { code: 'intake.jsonTwice', severity: 'error', data })
}

/** A figure: NaN for null and what is left out; anything else that is no number is an error with its place. */
export function numberOf(value: unknown, at: string, errors: ProblemList): number {
  if (value === null || value === undefined) return Number.NaN
  if (typeof value === 'number' && Number.isFinite(value)) return value
  const found = shown(typeof value === 'string' ? value : (JSON.stringify(value) ?? ''))
  addProblem(errors, { code: 'intake.jsonNumber', severity: 'error', data: { at, found } })
  return Number.NaN
}
