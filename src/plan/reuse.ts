/** Keeps the identity of what did not change, so that a later stage can see at a glance that it has nothing to do. */

/** `next`, but with every part that equals the same part of `previous` replaced by it. Plain data only. */
export function reuse<T>(previous: unknown, next: T): T {
  if (Object.is(previous, next)) return next
  if (Array.isArray(next)) return reuseList(previous, next) as T
  if (isPlain(next)) return reuseRecord(previous, next) as T
  return next
}

const isPlain = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value) && !ArrayBuffer.isView(value)

function reuseList(previous: unknown, next: readonly unknown[]): readonly unknown[] {
  if (!Array.isArray(previous)) return next
  const merged = next.map((value, index) => reuse(previous[index], value))
  return merged.length === previous.length &&
    merged.every((value, index) => Object.is(value, previous[index]))
    ? previous
    : merged
}

function reuseRecord(previous: unknown, next: Record<string, unknown>): Record<string, unknown> {
  if (!isPlain(previous)) return next
  const keys = Object.keys(next)
  const merged = Object.fromEntries(keys.map((key) => [key, reuse(previous[key], next[key])]))
  const same =
    keys.length === Object.keys(previous).length && keys.every((key) => Object.is(merged[key], previous[key]))
  return same ? previous : merged
}
