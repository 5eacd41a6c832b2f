/**
 * The log of one job on this device: entries are written here first, sent in batches, and those of others are fetched
 * behind a cursor. An entry is never changed; sending one twice does no harm.
 */
import type { RawCells } from '#job'
import type { LogBatch, LogPage } from '#replica'
import { type DeviceDb, type DeviceEntry, strictly, writeFault } from './device-db.ts'
import { createListeners, type Listeners } from './listeners.ts'

export type LogBox = Pick<Listeners, 'listen'> & {
  readonly loaded: Promise<void>
  readonly entries: () => readonly DeviceEntry[]
  readonly add: (entry: { readonly id: string; readonly cells: RawCells }) => void
  /** Sends what waits and fetches what is new; does nothing without a server. */
  readonly exchange: () => Promise<void>
  readonly kept: () => boolean
  readonly fault: () => string | undefined
}

/** As many as the server takes at once. */
const batchSize = 100

export function openLogBox(db: DeviceDb, job: string): LogBox {
  const listeners = createListeners()
  const entries = new Map<string, DeviceEntry>()
  const unkept = new Set<string>()
  let list: readonly DeviceEntry[] = []
  let fault: string | undefined
  let running: Promise<void> | undefined

  const put = (all: readonly DeviceEntry[]): void => {
    for (const entry of all) entries.set(entry.id, entry)
    list = [...entries.values()]
    listeners.tell()
  }
  const keep = async (all: readonly DeviceEntry[]): Promise<void> => {
    try {
      const change = db.transaction('entries', 'readwrite', strictly)
      await Promise.all([...all.map((entry) => change.store.put(entry)), change.done])
      for (const { id } of all) unkept.delete(id)
      fault = undefined
    } catch (error) {
      fault = writeFault(error)
    }
    listeners.tell()
  }
  const send = async (): Promise<void> => {
    for (;;) {
      const batch = list.filter((entry) => !entry.sent).slice(0, batchSize)
      if (batch.length === 0) return
      await post(`/api/jobs/${job}/log`, { entries: batch.map(({ id, cells }) => ({ id, cells })) })
      const sent = batch.map((entry) => ({ ...entry, sent: true }))
      put(sent)
      await keep(sent)
    }
  }
  const fetchNew = async (): Promise<void> => {
    const cursor = `cursor ${job}`
    for (;;) {
      const after = Number((await db.get('facts', cursor)) ?? 0)
      const page = await get<LogPage>(`/api/jobs/${job}/log?after=${after}`)
      const fresh = page.entries.map(({ id, cells }) => ({ job, id, cells, sent: true }))
      put(fresh.filter(({ id }) => entries.get(id)?.sent !== true))
      await keep(fresh)
      const last = page.entries.at(-1)
      if (last && fault === undefined) await db.put('facts', last.sequence, cursor)
      if (!page.more || !last || fault !== undefined) return
    }
  }
  const exchange = async (): Promise<void> => {
    try {
      await send()
      await fetchNew()
    } catch {
      // Without a server everything waits here until the next time.
    }
  }
  return {
    listen: listeners.listen,
    loaded: db.getAllFromIndex('entries', 'job', job).then(put),
    entries: () => list,
    add: ({ id, cells }) => {
      const entry = { job, id, cells, sent: false }
      unkept.add(id)
      put([entry])
      void keep([entry]).then(exchange)
    },
    exchange: () => {
      running ??= exchange().finally(() => {
        running = undefined
      })
      return running
    },
    kept: () => unkept.size === 0,
    fault: () => fault,
  }
}

async function post(path: string, body: LogBatch): Promise<void> {
  const answer = await fetch(path, {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: JSON.stringify(body),
  })
  if (!answer.ok) throw new Error(`log: not taken, got ${answer.status}, expected 200`)
}

async function get<T>(path: string): Promise<T> {
  const answer = await fetch(path, { headers: { accept: 'application/json' } })
  if (!answer.ok) throw new Error(`log: not given, got ${answer.status}, expected 200`)
  return (await answer.json()) as T
}
