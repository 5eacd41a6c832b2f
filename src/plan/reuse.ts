/** Keeps the identity of what did not change, so that a later stage can see at a glance that it has nothing to do. */

/**
 * `next`, but with every part that equals the same part of `previous` replaced by it; `previous` itself when all of
 * it is equal. Plain data only; what stayed the same costs no new objects.
 */
export function reuse<T>(previous: unknown, next: T): T {
  if (Object.is(previous, next)) return next
  if (Array.isArray(next)) return (Array.isArray(previous) ? reuseList(previous, next) : next) as T
  if (isPlain(next)) return (isPlain(previous) ? reuseRecord(previous, next) : next) as T
  return next
}

const isPlain = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value) && !ArrayBuffer.isView(value)

function reuseList(previous: readonly unknown[], next: readonly unknown[]): readonly unknown[] {
  let same = previous.length === next.length
  let merged: unknown[] | undefined
  for (let index = 0; index < next.length; index++) {
    const was = previous[index]
    const is = next[index]
    // Most parts are numbers and texts that did not change: nothing is called for those.
    if (Object.is(was, is)) continue
    const part = reuse(was, is)
    if (!Object.is(part, was)) same = false
    if (Object.is(part, is)) continue
    merged ??= next.slice()
    merged[index] = part
  }
  return same ? previous : (merged ?? next)
}

function reuseRecord(
  previous: Record<string, unknown>,
  next: Record<string, unknown>,
): Record<string, unknown> {
  let same = true
  let merged: Record<string, unknown> | undefined
  let keys = 0
  for (const key in next) {
    keys++
    const was = previous[key]
    const is = next[key]
    if (Object.is(was, is)) continue
    const part = reuse(was, is)
    if (!Object.is(part, was)) same = false
    if (Object.is(part, is)) continue
    merged ??= { ...next }
    merged[key] = part
  }
  for (const _key in previous) keys--
  return same && keys === 0 ? previous : (merged ?? next)
}
