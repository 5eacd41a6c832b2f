/**
 * A mark in the database that something kept here has not been taken by the server. It is written with what it stands
 * for, and taken away only by who knows of the newest: another tab may have kept more meanwhile.
 */
import type { DeviceDb } from './device-db.ts'
import { newId } from './new-id.ts'

export type UnsentMark = {
  /** Finds the mark of earlier pages; to be called before what it stands for is read. */
  readonly load: () => Promise<void>
  /** Within the transaction that keeps something new. */
  readonly put: (facts: {
    readonly put: (value: string, key: string) => Promise<unknown>
  }) => Promise<unknown>
  /** The server has everything that this page knows of. */
  readonly clear: () => Promise<void>
}

const first = 'unsent '
const afterLast = 'unsent!'

export function unsentMark(db: DeviceDb, name: string): UnsentMark {
  const key = `${first}${name}`
  let token: string | number | undefined
  return {
    load: async () => {
      token = await db.get('facts', key)
    },
    put: (facts) => {
      const now = newId()
      token = now
      return facts.put(now, key)
    },
    clear: async () => {
      const known = token
      if (known === undefined) return
      const change = db.transaction('facts', 'readwrite')
      if ((await change.store.get(key)) === known) await change.store.delete(key)
      await change.done
      if (token === known) token = undefined
    },
  }
}

/** Names of documents and logs, such as `work:a1`, that the server has not got whole. */
export async function unsentNames(db: DeviceDb): Promise<readonly string[]> {
  const keys = await db.getAllKeys('facts', IDBKeyRange.bound(first, afterLast, false, true))
  return keys.map((key) => key.slice(first.length))
}
