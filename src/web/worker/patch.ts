/** What of a value is not what it was, said to somebody who holds the value before. Plain data only. */

export type Patch =
  | { readonly put: unknown }
  | { readonly keys: Readonly<Record<string, Patch>>; readonly gone: readonly string[] }
  /** Where each item stood in the list before, with what is new about it. */
  | { readonly items: readonly (number | readonly [number, Patch])[] }

/**
 * The patch that makes `before` into `next`; undefined where they are the same object. It looks at identity alone:
 * parts that are equal but another object are said again.
 */
export function patchOf(before: unknown, next: unknown): Patch | undefined {
  if (Object.is(before, next)) return undefined
  if (isListOfRecords(before) && isListOfRecords(next)) return { items: itemsOf(before, next) }
  if (isRecord(before) && isRecord(next)) return keysOf(before, next)
  return { put: next }
}

/** `before` with a patch applied; what the patch leaves out keeps its identity. */
export function patched(before: unknown, patch: Patch): unknown {
  if ('put' in patch) return patch.put
  if ('items' in patch) {
    const list = before as readonly unknown[]
    return patch.items.map((item) =>
      typeof item === 'number' ? list[item] : patched(list[item[0]], item[1]),
    )
  }
  const next = { ...(before as Record<string, unknown>) }
  for (const key of patch.gone) delete next[key]
  for (const [key, part] of Object.entries(patch.keys)) next[key] = patched(next[key], part)
  return next
}

const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value) && !ArrayBuffer.isView(value)

/** Lists of hours and the like are long and cheap to copy whole. */
const isListOfRecords = (value: unknown): value is readonly Readonly<Record<string, unknown>>[] =>
  Array.isArray(value) && value.every(isRecord)

function itemsOf(
  before: readonly unknown[],
  next: readonly unknown[],
): Extract<Patch, { readonly items: unknown }>['items'] {
  // An item put in or taken out moves all behind it.
  const places = new Map(before.map((item, index) => [item, index]))
  return next.map((item, index) => {
    const place = places.get(item)
    if (place !== undefined) return place
    return [index, patchOf(before[index], item) ?? { put: item }]
  })
}

function keysOf(before: Readonly<Record<string, unknown>>, next: Readonly<Record<string, unknown>>): Patch {
  const keys: Record<string, Patch> = {}
  for (const key of Object.keys(next)) {
    const part = key in before ? patchOf(before[key], next[key]) : { put: next[key] }
    if (part) keys[key] = part
  }
  return { keys, gone: Object.keys(before).filter((key) => !(key in next)) }
}
