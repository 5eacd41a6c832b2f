// The stores that the contract of src/store/ is run on. Another database joins by one line in `stores`.
import { mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { createMemoryStore, openSqliteStore, type Store } from '#store'

export type Opened = {
  readonly store: Store
  /** Closes, and opens what was kept again; nothing for a store that keeps nothing. */
  readonly reopen: (() => Promise<Store>) | undefined
}

export type StoreCase = {
  readonly name: string
  /** Runs `work` on an empty store, and leaves nothing behind. */
  readonly use: (work: (opened: Opened) => Promise<void>) => Promise<void>
}

export const stores: readonly StoreCase[] = [
  { name: 'in memory', use: (work) => useMemory(work) },
  { name: 'in SQLite', use: (work) => inFolder((folder) => useSqlite(join(folder, 'jobs.db'), work)) },
]

async function useMemory(work: (opened: Opened) => Promise<void>): Promise<void> {
  await work({ store: createMemoryStore(), reopen: undefined })
}

async function useSqlite(path: string, work: (opened: Opened) => Promise<void>): Promise<void> {
  const opened: Store[] = []
  const open = async (): Promise<Store> => {
    const store = await openSqliteStore({ path })
    opened.push(store)
    return store
  }
  const store = await open()
  const reopen = async (): Promise<Store> => {
    await store.close()
    return open()
  }
  try {
    await work({ store, reopen })
  } finally {
    for (const each of opened) await each.close()
  }
}

/** A folder of its own, removed in the end. */
export async function inFolder<Result>(work: (folder: string) => Promise<Result>): Promise<Result> {
  const folder = await mkdtemp(join(tmpdir(), 'hardstand-store-'))
  try {
    return await work(folder)
  } finally {
    await rm(folder, { recursive: true, force: true })
  }
}

/** One behind the other, so that a test can see which went in and in what order. */
export const joinUpdates = (updates: readonly Uint8Array[]): Uint8Array =>
  Uint8Array.from(Buffer.concat(updates))

/** The code and data of what a promise fails with; fails itself when the promise does not. */
export async function faultOf(promise: Promise<unknown>): Promise<{ code: unknown; data: unknown }> {
  const error: unknown = await promise.then(
    () => undefined,
    (reason: unknown) => reason,
  )
  if (error instanceof Error && 'code' in error && 'data' in error)
    return { code: error.code, data: error.data }
  throw new Error(`expected a StoreError, got ${String(error)}`)
}
