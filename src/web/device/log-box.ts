/**
 * The log of one job on this device: entries are written here first, sent in batches, and those of others are fetched
 * behind a cursor. An entry is never changed; sending one twice does no harm. What the server said in an earlier run is
 * not relied on: it may have been set back to an older copy meanwhile.
 */
import type { RawCells } from '#job'
import type { ServerRun } from '#replica'
import { type DeviceDb, type DeviceEntry, strictly, writeFault } from './device-db.ts'
import type { NotTaken } from './document-sync.ts'
import { createListeners, type Listeners } from './listeners.ts'
import { LogRefused, type LogServer, logServer } from './log-server.ts'
import { unsentMark } from './unsent-mark.ts'

export type LogBox = Pick<Listeners, 'listen'> & {
  readonly loaded: Promise<void>
  readonly entries: () => readonly DeviceEntry[]
  /** Several are kept all together or not at all. */
  readonly add: (entries: readonly { readonly id: string; readonly cells: RawCells }[]) => void
  /** Fetches what is new and sends what waits; does nothing without a server. */
  readonly exchange: () => Promise<void>
  /** The server is out of reach: what it has is not known until the next exchange. */
  readonly away: () => void
  /** Entries that the server has not got; undefined before the first exchange. */
  readonly waiting: () => number | undefined
  readonly notTaken: () => NotTaken | undefined
  /** Offers what was refused once more. */
  readonly again: () => void
  /** To be called when the server has every entry: the mark that it has not is taken away. */
  readonly sent: () => Promise<void>
  readonly kept: () => boolean
  readonly fault: () => string | undefined
  readonly close: () => void
}

/** As many as the server takes at once. */
const batchSize = 100

export function openLogBox(db: DeviceDb, job: string, server: LogServer = logServer(job)): LogBox {
  const listeners = createListeners()
  const tabs = new BroadcastChannel(`hardstand log:${job}`)
  const mark = unsentMark(db, `log:${job}`)
  const cursor = `cursor ${job}`
  const run = `run ${job}`
  const entries = new Map<string, DeviceEntry>()
  const unkept = new Set<string>()
  const refused = new Set<string>()
  let list: readonly DeviceEntry[] = []
  let fault: string | undefined
  let notTaken: NotTaken | undefined
  let met = false
  let running: Promise<void> | undefined

  const put = (all: readonly DeviceEntry[]): void => {
    for (const entry of all) entries.set(entry.id, entry)
    list = [...entries.values()]
    listeners.tell()
  }
  const keep = async (all: readonly DeviceEntry[]): Promise<void> => {
    try {
      const change = db.transaction(['entries', 'facts'], 'readwrite', strictly)
      const store = change.objectStore('entries')
      await Promise.all([
        ...all.map((entry) => store.put(entry)),
        ...(all.some(({ sent }) => !sent) ? [mark.put(change.objectStore('facts'))] : []),
        change.done,
      ])
      for (const { id } of all) unkept.delete(id)
      fault = undefined
      tabs.postMessage(all)
    } catch (error) {
      fault = writeFault(error)
    }
    listeners.tell()
  }
  /** Nothing counts as sent any more, and everything is fetched again. */
  const begin = async (now: ServerRun): Promise<void> => {
    const unsent = list.map((entry) => ({ ...entry, sent: false }))
    const change = db.transaction(['entries', 'facts'], 'readwrite', strictly)
    const store = change.objectStore('entries')
    const facts = change.objectStore('facts')
    await Promise.all([
      ...unsent.map((entry) => store.put(entry)),
      facts.put(0, cursor),
      facts.put(now, run),
      change.done,
    ])
    put(unsent)
    tabs.postMessage(unsent)
  }
  const fetchNew = async (): Promise<void> => {
    for (;;) {
      const after = Number((await db.get('facts', cursor)) ?? 0)
      const page = await server.page(after)
      if (page.run !== (await db.get('facts', run))) {
        await begin(page.run)
        continue
      }
      const fresh = page.entries.map(({ id, cells }) => ({ job, id, cells, sent: true }))
      put(fresh.filter(({ id }) => entries.get(id)?.sent !== true))
      await keep(fresh)
      const last = page.entries.at(-1)
      if (last && fault === undefined) await db.put('facts', last.sequence, cursor)
      if (!page.more || !last || fault !== undefined) return
    }
  }
  const give = async (batch: readonly DeviceEntry[]): Promise<void> => {
    const taken = await server.give(batch.map(({ id, cells }) => ({ id, cells })))
    // It was started anew since the fetch: the next exchange finds out what it still has.
    if (taken.run !== (await db.get('facts', run))) throw new Error('log: another run of the server')
    const sent = batch.map((entry) => ({ ...entry, sent: true }))
    put(sent)
    await keep(sent)
  }
  /** One bad entry does not hold up the others. */
  const giveOneByOne = async (batch: readonly DeviceEntry[]): Promise<void> => {
    for (const entry of batch) {
      try {
        await give([entry])
      } catch (error) {
        if (!(error instanceof LogRefused && error.lasting)) throw error
        refused.add(entry.id)
      }
    }
  }
  const send = async (): Promise<void> => {
    for (;;) {
      const batch = list.filter(({ id, sent }) => !sent && !refused.has(id)).slice(0, batchSize)
      if (batch.length === 0) return
      try {
        await give(batch)
      } catch (error) {
        if (!(error instanceof LogRefused && error.lasting)) throw error
        await giveOneByOne(batch)
      }
    }
  }
  const exchangeOnce = async (): Promise<void> => {
    try {
      await fetchNew()
      await send()
      met = true
      notTaken = refused.size > 0 ? { code: 'web.entryRefused', data: { count: refused.size } } : undefined
    } catch (error) {
      // Without a server everything waits here until the next time.
      met = false
      const atFault = error instanceof LogRefused && error.code === 'server.storeFailed'
      notTaken = atFault ? { code: 'web.serverDiskFault', data: {} } : undefined
    }
    listeners.tell()
  }
  const exchange = (): Promise<void> => {
    running ??= exchangeOnce().finally(() => {
      running = undefined
    })
    return running
  }
  tabs.onmessage = ({ data }: MessageEvent<readonly DeviceEntry[]>) => put(data)
  return {
    listen: listeners.listen,
    loaded: mark.load().then(async () => put(await db.getAllFromIndex('entries', 'job', job))),
    entries: () => list,
    add: (some) => {
      const added = some.map(({ id, cells }) => ({ job, id, cells, sent: false }))
      for (const { id } of added) unkept.add(id)
      put(added)
      // Behind an exchange that is under way, which may have looked for what waits before this one did.
      void keep(added)
        .then(() => running)
        .then(exchange)
    },
    exchange,
    away: () => {
      met = false
    },
    waiting: () => (met ? list.filter(({ sent }) => !sent).length : undefined),
    notTaken: () => notTaken,
    again: () => {
      refused.clear()
      void exchange()
    },
    sent: async () => {
      if (unkept.size === 0 && list.every(({ sent }) => sent)) await mark.clear().catch(() => undefined)
    },
    kept: () => unkept.size === 0,
    fault: () => fault,
    close: () => tabs.close(),
  }
}
