/**
 * A shared document kept in the browser's database. An edit counts as kept when the database says that it is on the
 * disk; until then, and when it fails, the document says so.
 */
import * as Y from 'yjs'
import { type DeviceDb, strictly, writeFault } from './device-db.ts'
import { createListeners, type Listeners } from './listeners.ts'

export type DeviceDocument = Pick<Listeners, 'listen'> & {
  readonly name: string
  readonly doc: Y.Doc
  /** Everything the database held is in the document. */
  readonly loaded: Promise<void>
  readonly kept: () => boolean
  readonly fault: () => string | undefined
  readonly close: () => void
}

/** More rows than this are put together when the document is opened. */
const mostRows = 100
const retryMs = 5000

/** Origins of edits that are in the database already. */
const fromDatabase = Symbol('database')
const fromTab = Symbol('tab')

export function openDeviceDocument(db: DeviceDb, name: string): DeviceDocument {
  const doc = new Y.Doc()
  const listeners = createListeners()
  const tabs = new BroadcastChannel(`hardstand ${name}`)
  const waiting: Uint8Array[] = []
  let writing = false
  let fault: string | undefined
  let retry: ReturnType<typeof setTimeout> | undefined

  const flush = async (): Promise<void> => {
    if (writing) return
    writing = true
    while (waiting.length > 0) {
      const batch = [...waiting]
      try {
        await writeUpdates(db, name, batch)
        waiting.splice(0, batch.length)
        fault = undefined
      } catch (error) {
        fault = writeFault(error)
        clearTimeout(retry)
        retry = setTimeout(flush, retryMs)
        break
      }
    }
    writing = false
    listeners.tell()
  }
  const changed = (update: Uint8Array, origin: unknown): void => {
    if (origin === fromDatabase || origin === fromTab) return
    waiting.push(update)
    tabs.postMessage(update)
    listeners.tell()
    void flush()
  }
  tabs.onmessage = ({ data }) => {
    if (data instanceof Uint8Array) Y.applyUpdate(doc, data, fromTab)
  }
  const loaded = load(db, name, doc)
  doc.on('update', changed)
  return {
    name,
    doc,
    loaded,
    listen: listeners.listen,
    kept: () => waiting.length === 0,
    fault: () => fault,
    close: () => {
      clearTimeout(retry)
      tabs.close()
      doc.destroy()
    },
  }
}

async function writeUpdates(db: DeviceDb, name: string, updates: readonly Uint8Array[]): Promise<void> {
  const change = db.transaction('updates', 'readwrite', strictly)
  await Promise.all([...updates.map((update) => change.store.add({ name, update })), change.done])
}

/** Reads every row, and puts many into one in the same transaction, so that no row written meanwhile is lost. */
async function load(db: DeviceDb, name: string, doc: Y.Doc): Promise<void> {
  const change = db.transaction('updates', 'readwrite', strictly)
  const index = change.store.index('name')
  const [rows, keys] = [await index.getAll(name), await index.getAllKeys(name)]
  doc.transact(() => {
    for (const { update } of rows) Y.applyUpdate(doc, update, fromDatabase)
  }, fromDatabase)
  if (rows.length > mostRows) {
    for (const key of keys) await change.store.delete(key)
    await change.store.add({ name, update: Y.encodeStateAsUpdate(doc) })
  }
  await change.done
}
