/** Structural sharing: a value equal to an older one is the older one, so that `===` tells what changed. */

const isObject = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null

/** Plain data only: numbers, texts, booleans, arrays and plain objects. */
export const equalData = (a: unknown, b: unknown): boolean => {
  if (Object.is(a, b)) return true
  if (!isObject(a) || !isObject(b) || Array.isArray(a) !== Array.isArray(b)) return false
  const keys = Object.keys(a)
  return (
    keys.length === Object.keys(b).length &&
    keys.every((key) => Object.hasOwn(b, key) && equalData(a[key], b[key]))
  )
}

/** The older value when both are equal, else the newer. */
export const share = <T>(older: T | undefined, newer: T): T =>
  older !== undefined && equalData(older, newer) ? older : newer

/** The older list when it has the very same members in the same order. */
export const shareList = <T>(older: readonly T[] | undefined, newer: readonly T[]): readonly T[] =>
  older !== undefined && older.length === newer.length && newer.every((member, at) => member === older[at])
    ? older
    : newer
