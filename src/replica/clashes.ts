/**
 * Where two devices wrote the same cell without knowing of each other's value: one of the two stands on both, and the
 * device that wrote the other one must be told. Read from a transaction before its old values are thrown away.
 */
import * as Y from 'yjs'
import type { SharedCell } from './edits.ts'

/** A value of this device that lost, and the one that took its place. */
export type Overwritten = SharedCell & { readonly mine: string; readonly theirs: string }

/** Where an item stands and whether it was taken away are nobody's words. */
const silent: ReadonlySet<string> = new Set(['order', 'gone'])

/**
 * Cells whose value was written by one of `own` writers and gave way, in this transaction, to a value of another that
 * was written without having seen it. A value that was written over it knowingly is an edit like any other. To be
 * called while the transaction is told of (`afterTransaction`).
 */
export function overwrittenIn(
  { doc, changed, beforeState }: Y.Transaction,
  own: ReadonlySet<number>,
): readonly Overwritten[] {
  const found: Overwritten[] = []
  for (const [type, keys] of changed) {
    const place = placeOf(doc, type)
    if (!place) continue
    for (const key of keys) {
      if (key === null || silent.has(key)) continue
      const now = type._map.get(key)
      const was = now && wasBefore(now, beforeState)
      if (!now || !was || !own.has(was.id.client) || own.has(now.id.client)) continue
      const [mine, theirs] = [textOf(was), now.deleted ? undefined : textOf(now)]
      if (mine === undefined || theirs === undefined || mine === theirs) continue
      if (!hasSeen(doc, now, was)) found.push({ ...place, key, mine, theirs })
    }
  }
  return found.sort((a, b) => (pathOf(a) < pathOf(b) ? -1 : 1))
}

const pathOf = ({ section, item = '', key }: SharedCell): string => [section, item, key].join('\n')

type AnyType = Parameters<Y.Transaction['changed']['get']>[0]

/** A section, or an item of one; anything deeper is no cell of a job. */
function placeOf(doc: Y.Doc, type: AnyType): Omit<SharedCell, 'key'> | undefined {
  const holder = type._item
  if (holder === null) {
    const section = nameOf(doc, type)
    return section === undefined ? undefined : { section }
  }
  const section = nameOf(doc, holder.parent)
  return section === undefined || holder.parentSub === null ? undefined : { section, item: holder.parentSub }
}

const nameOf = (doc: Y.Doc, type: unknown): string | undefined =>
  [...doc.share].find(([, root]) => root === type)?.[0]

/** The value that a cell had before: the last of those that were there already. */
function wasBefore(now: Y.Item, before: ReadonlyMap<number, number>): Y.Item | undefined {
  const isNew = ({ id }: Y.Item): boolean => id.clock >= (before.get(id.client) ?? 0)
  if (!isNew(now)) return undefined
  let was = now.left
  while (was && isNew(was)) was = was.left
  return was ?? undefined
}

/** Each value of a cell names the one that its writer saw there. */
function hasSeen(doc: Y.Doc, now: Y.Item, was: Y.Item): boolean {
  for (let seen = now.origin; seen !== null; ) {
    if (seen.client === was.id.client && seen.clock >= was.id.clock) return true
    // What was thrown away with its item says nothing any more; then nobody is troubled.
    const item: Y.Item | Y.GC = Y.getItem(doc.store, seen)
    if (!(item instanceof Y.Item)) return true
    seen = item.origin
  }
  return false
}

/** The text of a cell, also of one that was written over just now. */
function textOf({ content }: Y.Item): string | undefined {
  const text: unknown = content.getContent().at(-1)
  return typeof text === 'string' ? text : undefined
}
