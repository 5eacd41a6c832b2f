/** Parts of the JSON in a GLB file, each looked at before it is trusted; a wrong one is named by its place. */
import { MeshFault } from './mesh-fault.ts'

export type JsonPart = {
  readonly value: Readonly<Record<string, unknown>>
  /** Where it stands: `accessors/3`. */
  readonly place: string
}

export function partFault(place: string): MeshFault {
  return new MeshFault('intake.meshPart', { part: place.slice(0, 80) })
}

export function asPart(value: unknown, place: string): JsonPart {
  if (typeof value !== 'object' || value === null || Array.isArray(value)) throw partFault(place)
  return { value: value as Record<string, unknown>, place }
}

/** An array of a part; empty when it is not there. */
export function listIn({ value, place }: JsonPart, key: string): readonly unknown[] {
  const list = Object.hasOwn(value, key) ? value[key] : []
  if (!Array.isArray(list)) throw partFault(`${place}/${key}`)
  return list
}

/** The part at a place of a list of the root: `accessors/3`. */
export function partAt(root: JsonPart, key: string, index: number): JsonPart {
  return asPart(listIn(root, key)[index], `${key}/${index}`)
}

export function has({ value }: JsonPart, key: string): boolean {
  return Object.hasOwn(value, key) && value[key] !== undefined
}

/** A whole number of 0 or more, or `otherwise` when it is not there. */
export function wholeIn(part: JsonPart, key: string, otherwise?: number): number {
  const value = has(part, key) ? part.value[key] : otherwise
  if (typeof value !== 'number' || !Number.isSafeInteger(value) || value < 0)
    throw partFault(`${part.place}/${key}`)
  return value
}

export function textIn(part: JsonPart, key: string): string {
  const value = part.value[key]
  if (typeof value !== 'string') throw partFault(`${part.place}/${key}`)
  return value
}

/** So many finite numbers, or undefined when they are not there. */
export function numbersIn(part: JsonPart, key: string, count: number): readonly number[] | undefined {
  if (!has(part, key)) return undefined
  const list = listIn(part, key)
  if (list.length !== count || !list.every(Number.isFinite)) throw partFault(`${part.place}/${key}`)
  return list as readonly number[]
}
