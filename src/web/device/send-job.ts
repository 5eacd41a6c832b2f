/** Everything this device has of a job that is not open, to the server: documents, log and weather. */
import { moneyDocument, type Sees, workDocument } from '#replica'
import { browserShelf } from './browser-shelf.ts'
import { openClashBox } from './clash-box.ts'
import type { Connection } from './connection.ts'
import type { DeviceDb } from './device-db.ts'
import { openDeviceDocument } from './device-document.ts'
import type { Sync } from './document-sync.ts'
import { openLogBox } from './log-box.ts'
import { openWeatherOffers } from './weather-offers.ts'

export type SendOptions = {
  readonly db: DeviceDb
  readonly connection: Connection
  readonly sees: Sees
}

/** The rows of hours that a job may name by their hash. */
const marks = ['hash', 'typicalHash', 'loggerHash'] as const

/** A server that does not answer is asked again later, ms. */
const patienceMs = 20_000

export async function sendJob(
  { db, connection, sees }: SendOptions,
  { job, stop }: { readonly job: string; readonly stop: AbortSignal },
): Promise<boolean> {
  const work = openDeviceDocument(db, workDocument(job))
  const documents = [work, ...(sees === 'all' ? [openDeviceDocument(db, moneyDocument(job))] : [])]
  const log = openLogBox(db, job)
  const weather = openWeatherOffers(db, marks.length)
  const clashes = openClashBox(browserShelf(), job)
  const syncs: Sync[] = []
  try {
    await Promise.all([log.loaded, ...documents.map(({ loaded }) => loaded)])
    clashes.watch('work', work.doc)
    if (documents[1]) clashes.watch('money', documents[1].doc)
    if (stop.aborted) return false
    for (const { name, doc } of documents) syncs.push(connection.share(name, doc))
    if (!(await settled({ connection, syncs, stop }))) return false
    await log.exchange()
    const named = marks.map((key) => work.doc.getMap('weather').get(key))
    await weather.offer(named.map((hash) => (typeof hash === 'string' && hash !== '' ? hash : undefined)))
    if (stop.aborted || [log, weather, ...syncs].some((one) => one.waiting() !== 0)) return false
    if (log.entries().some(({ sent }) => !sent)) return false
    await Promise.all([log, ...documents].map((one) => one.sent()))
    return true
  } finally {
    for (const one of [...syncs, clashes, log, ...documents]) one.close()
  }
}

type Settling = Pick<SendOptions, 'connection'> & {
  readonly syncs: readonly Sync[]
  readonly stop: AbortSignal
}

/** True once the server has said of every document that it has it; false when that cannot be waited for. */
function settled({ connection, syncs, stop }: Settling): Promise<boolean> {
  return new Promise((resolve) => {
    const end = (there: boolean): void => {
      clearTimeout(late)
      for (const quiet of heard) quiet()
      resolve(there)
    }
    const look = (): void => {
      if (stop.aborted || !connection.online() || syncs.some((sync) => sync.notTaken())) end(false)
      else if (syncs.every((sync) => sync.waiting() === 0)) end(true)
    }
    const late = setTimeout(() => end(false), patienceMs)
    const heard = [connection, ...syncs].map((one) => one.listen(look))
    stop.addEventListener('abort', look, { once: true })
    look()
  })
}
