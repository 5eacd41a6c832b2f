/**
 * Shared documents on the disk: an edit is appended before anybody is told that it is kept, and many are made one.
 * Counts what stands there, so that a document neither outgrows its bounds nor its number of updates.
 */
import * as Y from 'yjs'
import type { Store } from '#store'
import { Refused, refusal } from '../http/refusal.ts'
import type { ServerLimits } from '../limits.ts'
import type { Tell } from '../options.ts'
import { joinedWrites } from './joined-writes.ts'

export type KeptDocuments = {
  /** Applies everything that is kept of a document. */
  readonly load: (name: string, doc: Y.Doc) => Promise<void>
  /** Resolves when the update is on the disk; throws `Refused` when the document is full. */
  readonly append: (name: string, update: Uint8Array) => Promise<void>
  /** Forgets the counts of a document that nobody has open any more, and makes its updates one. */
  readonly leave: (name: string) => Promise<void>
  /** Resolves when nothing is on its way to the disk any more. */
  readonly settled: () => Promise<void>
}

type Counts = { updates: number; bytes: number; compacting: boolean }

export type KeptOptions = {
  readonly store: Store
  readonly limits: Pick<
    ServerLimits,
    'documents' | 'documentBytes' | 'updates' | 'updatesAtRest' | 'messageBytes'
  >
  readonly tell: Tell
}

export function createKeptDocuments(options: KeptOptions): KeptDocuments {
  const { store, limits } = options
  const counts = new Map<string, Counts>()
  const onTheirWay = new Set<Promise<unknown>>()
  const track = <Result>(work: Promise<Result>): Promise<Result> => {
    const done = work.catch(() => {}).finally(() => onTheirWay.delete(done))
    onTheirWay.add(done)
    return work
  }
  const countsOf = (name: string): Counts => {
    const known = counts.get(name) ?? { updates: 0, bytes: 0, compacting: false }
    counts.set(name, known)
    return known
  }
  const write = async (name: string, update: Uint8Array): Promise<void> => {
    const count = countsOf(name)
    if (count.updates === 0) await checkRoom(options)
    // What counts is what is left when it is put together: removals make a full document smaller.
    if (count.bytes + update.length > limits.documentBytes) await compactCounted(name, count, options, 1)
    if (count.bytes + update.length > limits.documentBytes)
      throw new Refused(
        refusal(413, 'server.documentFull', { mostMegabytes: Math.floor(limits.documentBytes / 2 ** 20) }),
      )
    await store.append(name, update)
    count.updates += 1
    count.bytes += update.length
    if (count.updates > limits.updates && !count.compacting) void track(compactCounted(name, count, options))
  }
  const append = joinedWrites(write, { mostBytes: limits.messageBytes })
  return {
    load: async (name, doc) => {
      const { updates } = await store.document(name)
      counts.set(name, { updates: updates.length, bytes: bytesOf(updates), compacting: false })
      applyAll(doc, { name, updates, tell: options.tell })
    },
    append: (name, update) => track(append(name, update)),
    leave: (name) => {
      counts.delete(name)
      return track(compact(name, limits.updatesAtRest, options))
    },
    settled: async () => {
      while (onTheirWay.size > 0) await Promise.all(onTheirWay)
    },
  }
}

async function checkRoom({ store, limits }: KeptOptions): Promise<void> {
  const names = await store.documentNames()
  if (names.length >= limits.documents)
    throw new Refused(refusal(507, 'server.documentsFull', { mostCount: limits.documents }))
}

const bytesOf = (updates: readonly Uint8Array[]): number =>
  updates.reduce((sum, { length }) => sum + length, 0)

/** One update that cannot be read does not take the others with it: what can be shown is shown, and the fault told. */
function applyAll(
  doc: Y.Doc,
  {
    name,
    updates,
    tell,
  }: { readonly name: string; readonly updates: readonly Uint8Array[]; readonly tell: Tell },
): void {
  for (const [at, update] of updates.entries()) {
    try {
      Y.applyUpdate(doc, update)
    } catch {
      tell({ code: 'server.updateDamaged', data: { document: name, at: at + 1 } })
    }
  }
}

async function compactCounted(
  name: string,
  count: Counts,
  options: KeptOptions,
  most = options.limits.updates,
): Promise<void> {
  count.compacting = true
  await compact(name, most, options)
  const { updates } = await options.store.document(name).catch(() => ({ updates: [] }))
  if (updates.length > 0) Object.assign(count, { updates: updates.length, bytes: bytesOf(updates) })
  count.compacting = false
}

/** A failure leaves the updates as they are, and is no fault of an edit. */
async function compact(name: string, most: number, { store, tell }: KeptOptions): Promise<void> {
  try {
    await store.compact(name, { most, merge: mergeUpdates })
  } catch (error) {
    const text = error instanceof Error ? error.message : String(error)
    tell({ code: 'server.notCompacted', data: { document: name, text } })
  }
}

/** By way of a document: forgets what was removed, which a merge of the updates alone would keep. */
export function mergeUpdates(updates: readonly Uint8Array[]): Uint8Array {
  const doc = new Y.Doc()
  doc.transact(() => {
    for (const update of updates) Y.applyUpdate(doc, update)
  })
  return Y.encodeStateAsUpdate(doc)
}
