/**
 * A shared document kept in the browser's database. An edit counts as kept when the database says that it is on the
 * disk; until then, and when it fails, the document says so.
 */
import * as Y from 'yjs'
import { type DeviceDb, strictly, writeFault } from './device-db.ts'
import { leaveGuard } from './leave-guard.ts'
import { createListeners, type Listeners } from './listeners.ts'
import { type UnsentMark, unsentMark } from './unsent-mark.ts'

export type DeviceDocument = Pick<Listeners, 'listen'> & {
  readonly name: string
  readonly doc: Y.Doc
  /** Everything the database held is in the document. */
  readonly loaded: Promise<void>
  readonly kept: () => boolean
  readonly fault: () => string | undefined
  /** To be called when the server has everything of it: the mark that it has not is taken away. */
  readonly sent: () => Promise<void>
  /** Once everything is kept; nobody has to wait for it. */
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
  const waiting: Change[] = []
  const mark = unsentMark(db, name)
  const guard = leaveGuard()
  let writing = false
  let closed = false
  let fault: string | undefined
  let retry: ReturnType<typeof setTimeout> | undefined

  const flush = async (): Promise<void> => {
    if (writing) return
    writing = true
    while (waiting.length > 0) {
      const batch = [...waiting]
      try {
        await writeUpdates(db, { name, mark }, batch)
        waiting.splice(0, batch.length)
        fault = undefined
        // Other tabs count as kept what they hear here.
        for (const { update } of batch) tabs.postMessage(update)
      } catch (error) {
        fault = writeFault(error)
        clearTimeout(retry)
        retry = setTimeout(flush, retryMs)
        break
      }
    }
    writing = false
    guard.set(waiting.length > 0)
    if (closed && waiting.length === 0) end()
    listeners.tell()
  }
  const end = (): void => {
    tabs.close()
    doc.destroy()
  }
  const changed = (update: Uint8Array, origin: unknown): void => {
    if (origin === fromDatabase || origin === fromTab) return
    // What came from the server comes by way of the copy that is shared.
    waiting.push({ update, own: !(origin instanceof Y.Doc) })
    guard.set(true)
    listeners.tell()
    void flush()
  }
  tabs.onmessage = ({ data }) => {
    if (data instanceof Uint8Array) Y.applyUpdate(doc, data, fromTab)
  }
  const loaded = mark.load().then(() => load(db, name, doc))
  doc.on('update', changed)
  return {
    name,
    doc,
    loaded,
    listen: listeners.listen,
    kept: () => waiting.length === 0,
    fault: () => fault,
    sent: async () => {
      // A mark that stays has the server asked once more, and nothing else.
      if (waiting.length === 0) await mark.clear().catch(() => undefined)
    },
    close: () => {
      // What is not on the disk yet is not let go of: it is tried again until it is.
      closed = true
      if (waiting.length === 0) end()
    },
  }
}

/** A row that cannot be read does not take the others with it, and stays where it is. Gives how many there are. */
function applyAll(doc: Y.Doc, updates: readonly Uint8Array[]): number {
  let unread = 0
  doc.transact(() => {
    for (const update of updates) {
      try {
        Y.applyUpdate(doc, update, fromDatabase)
      } catch {
        unread += 1
      }
    }
  }, fromDatabase)
  return unread
}

type Change = {
  readonly update: Uint8Array
  /** Made here, and not brought by the server. */
  readonly own: boolean
}

type Place = { readonly name: string; readonly mark: UnsentMark }

async function writeUpdates(db: DeviceDb, { name, mark }: Place, changes: readonly Change[]): Promise<void> {
  const change = db.transaction(['updates', 'facts'], 'readwrite', strictly)
  const updates = change.objectStore('updates')
  await Promise.all([
    ...changes.map(({ update }) => updates.add({ name, update })),
    ...(changes.some(({ own }) => own) ? [mark.put(change.objectStore('facts'))] : []),
    change.done,
  ])
}

/** Reads every row, and puts many into one in the same transaction, so that no row written meanwhile is lost. */
async function load(db: DeviceDb, name: string, doc: Y.Doc): Promise<void> {
  const change = db.transaction('updates', 'readwrite', strictly)
  const index = change.store.index('name')
  const [rows, keys] = [await index.getAll(name), await index.getAllKeys(name)]
  const unread = applyAll(
    doc,
    rows.map(({ update }) => update),
  )
  if (rows.length > mostRows && unread === 0) {
    for (const key of keys) await change.store.delete(key)
    await change.store.add({ name, update: Y.encodeStateAsUpdate(doc) })
  }
  await change.done
}
