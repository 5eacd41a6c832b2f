/**
 * The planning of one open job: hands its documents, log and weather to the worker, asks for a plan when something
 * has changed, and holds the newest. Nothing is planned before there is a job, nor without weather that can be had.
 */
import { type Doc, encodeStateAsUpdate } from 'yjs'
import { partOf } from '#replica'
import { createWords } from '#words'
import type { DeviceDb } from '../device/device-db.ts'
import { createListeners, type Listeners } from '../device/listeners.ts'
import { weatherBytes } from '../device/weather-box.ts'
import {
  type Entries,
  mostWeathersHeld,
  type PlannedMessage,
  type Reader,
  type ShownPlan,
} from '../worker/messages.ts'
import { patched } from '../worker/patch.ts'
import { createPlanClient, type PlanClient } from '../worker/plan-client.ts'
import type { JobView } from './job-view.ts'

/** What is known of the plan now. */
export type Planning = Pick<JobView, 'plan' | 'before' | 'fault' | 'words'> & {
  readonly message?: PlannedMessage
  readonly reader: Reader
  readonly nowMs: number
}

export type JobPlanning = Pick<Listeners, 'listen'> & {
  readonly now: () => Planning
  readonly planning: () => boolean
  readonly setEntries: (entries: Entries) => void
  /** The clock has moved on; a plan is made to the quarter hour. */
  readonly tick: (nowMs: number) => void
  /** Weather that could not be had is asked for again. */
  readonly retry: () => void
  readonly ask: PlanClient['ask']
  readonly close: () => void
}

export type JobPlanningOptions = {
  readonly db: DeviceDb
  readonly worker: Worker
  readonly docs: Readonly<Record<'work' | 'money', Doc>>
}

const quarterMs = 15 * 60_000
/** How long the first plan waits for its weather, ms. */
const patienceMs = 4000

export function openPlanning({ db, worker, docs }: JobPlanningOptions): JobPlanning {
  const listeners = createListeners()
  const reader = readerOf(docs.work)
  let now: Planning = { reader, words: createWords(reader), nowMs: Date.now() }
  /** Hashes of the weathers the worker has, the oldest first, of those on their way, and of those that cannot be had now. */
  const weathers = { sent: [] as string[], coming: new Set<string>(), missing: new Set<string>() }
  const set = (some: Partial<Planning>): void => {
    now = { ...now, ...some }
    listeners.tell()
  }
  const client = createPlanClient({
    worker,
    planned: (message) => set(planned(now, message)),
    failed: (fault) => set({ fault }),
  })
  const plan = (): void => {
    client.plan(now.nowMs)
    listeners.tell()
  }
  const bring = async (hash: string): Promise<void> => {
    weathers.coming.add(hash)
    // Planned without it when it takes too long, and again when it comes.
    const late = setTimeout(plan, patienceMs)
    const bytes = await weatherBytes(db, hash).catch(() => undefined)
    clearTimeout(late)
    if (bytes) {
      client.send({ kind: 'weather', hash, bytes })
      weathers.sent = [...weathers.sent, hash].slice(-mostWeathersHeld)
    } else weathers.missing.add(hash)
    weathers.coming.delete(hash)
    if (weathers.coming.size === 0) plan()
  }
  const askPlan = (): void => {
    if (docs.work.share.size === 0) return
    const { hash, typicalHash, loggerHash } = partOf(docs.work).weather ?? {}
    const wanted = [hash, typicalHash, loggerHash].filter(
      (one): one is string => typeof one === 'string' && one !== '',
    )
    const absent = wanted.filter((one) => !weathers.sent.includes(one) && !weathers.missing.has(one))
    if (absent.length === 0) plan()
    for (const one of absent) if (!weathers.coming.has(one)) void bring(one)
  }
  for (const part of ['work', 'money'] as const) {
    client.send({ kind: 'update', part, update: encodeStateAsUpdate(docs[part]) })
    docs[part].on('update', (update: Uint8Array) => {
      client.send({ kind: 'update', part, update })
      askPlan()
    })
  }
  return {
    listen: listeners.listen,
    now: () => now,
    planning: client.planning,
    setEntries: (entries) => {
      client.send({ kind: 'entries', entries })
      askPlan()
    },
    tick: (nowMs) => {
      const moved = Math.floor(now.nowMs / quarterMs) !== Math.floor(nowMs / quarterMs)
      set({ nowMs })
      if (moved) askPlan()
    },
    retry: () => {
      if (weathers.missing.size === 0) return
      weathers.missing.clear()
      askPlan()
    },
    ask: client.ask,
    close: client.close,
  }
}

function planned({ plan, reader, words }: Planning, message: PlannedMessage): Partial<Planning> {
  const same = sameReader(reader, message.reader)
  return {
    message,
    plan: patched(plan, message.patch) as ShownPlan,
    ...(plan ? { before: plan } : {}),
    fault: message.weatherFault as JobView['fault'],
    reader: same ? reader : message.reader,
    words: same ? words : createWords(message.reader),
  }
}

/** Before the first plan, as far as the document says. */
function readerOf(doc: Doc): Reader {
  const { job = {}, place = {} } = partOf(doc)
  const text = (cell: unknown, otherwise: string): string =>
    typeof cell === 'string' && cell !== '' ? cell : otherwise
  return {
    locale: 'en-GB',
    system: job.units === 'us' ? 'us' : 'metric',
    timeZone: text(place.timeZone, 'UTC'),
  }
}

const sameReader = (a: Reader, b: Reader): boolean =>
  a.locale === b.locale && a.system === b.system && a.timeZone === b.timeZone && a.currency === b.currency
