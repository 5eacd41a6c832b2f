/** The browser's own database: shared documents as updates, entries of the log, weather, and small facts. */
import { type DBSchema, type IDBPDatabase, openDB } from 'idb'
import type { RawCells } from '#job'

export type DeviceEntry = {
  readonly job: string
  readonly id: string
  readonly cells: RawCells
  readonly sent: boolean
}

interface Schema extends DBSchema {
  readonly updates: {
    readonly key: number
    readonly value: { readonly name: string; readonly update: Uint8Array }
    readonly indexes: { readonly name: string }
  }
  readonly entries: {
    readonly key: [string, string]
    readonly value: DeviceEntry
    readonly indexes: { readonly job: string }
  }
  readonly weather: { readonly key: string; readonly value: Uint8Array }
  readonly facts: { readonly key: string; readonly value: string | number }
}

export type DeviceDb = IDBPDatabase<Schema>

/**
 * Opens the database. `lost` is called when it is taken away while the page is open: deleted, thrown away by the
 * browser, or wanted by a page of another version.
 */
export const openDeviceDb = (lost: () => void, name = 'hardstand'): Promise<DeviceDb> =>
  openDB<Schema>(name, 1, {
    upgrade: (db) => {
      db.createObjectStore('updates', { autoIncrement: true }).createIndex('name', 'name')
      db.createObjectStore('entries', { keyPath: ['job', 'id'] }).createIndex('job', 'job')
      db.createObjectStore('weather')
      db.createObjectStore('facts')
    },
    blocking: (_from, _to, event) => {
      ;(event.target as IDBDatabase).close()
      lost()
    },
    terminated: lost,
  })

/** What a failed write means to a person: no room, or something else. */
export const writeFault = (error: unknown): string =>
  error instanceof DOMException && error.name === 'QuotaExceededError' ? 'web.deviceFull' : 'web.deviceFault'

/** Work on the disk; rejects with the code of the words when it failed. */
export async function written(work: Promise<unknown>): Promise<void> {
  try {
    await work
  } catch (error) {
    throw new Error(writeFault(error))
  }
}

/** On the disk and not only on its way there. */
export const strictly = { durability: 'strict' } as const
