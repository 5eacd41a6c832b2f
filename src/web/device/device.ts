/** This device: its database, its connection, and the list of jobs. Opened once for the page. */
import { type Sees, type ShopJob, shopDocument, shopJobs } from '#replica'
import { type Connection, openConnection } from './connection.ts'
import { type DeviceDb, openDeviceDb } from './device-db.ts'
import { type DeviceDocument, openDeviceDocument } from './device-document.ts'
import type { Sync } from './document-sync.ts'
import { createListeners, type Listeners } from './listeners.ts'
import { createOutbox, type Outbox } from './outbox.ts'
import { outboxPort } from './outbox-port.ts'

export type Device = Pick<Listeners, 'listen'> & {
  readonly db: DeviceDb
  readonly connection: Connection
  readonly shop: DeviceDocument
  readonly shopSync: Sync
  readonly jobs: () => readonly ShopJob[]
  /** What is wrong with keeping anything here, or the list of jobs, as a code of the words. */
  /** What is sent of jobs that are not open. */
  readonly outbox: Outbox
  readonly fault: () => string | undefined
  readonly sees: () => Sees
  /** The browser may not throw the data away; undefined until it is known. */
  readonly lasting: () => boolean | undefined
  /** Asks the browser to keep the data; to be called when a person has something to lose. */
  readonly askToLast: () => void
}

const seesFact = 'sees'
/** How often what waits of other jobs is looked for, ms. */
const lookMs = 60_000

export async function openDevice(): Promise<Device> {
  const listeners = createListeners()
  let isLost = false
  const db = await openDeviceDb(() => {
    isLost = true
    listeners.tell()
  })
  let sees: Sees = (await db.get('facts', seesFact)) === 'work' ? 'work' : 'all'
  let lasting: boolean | undefined
  const shop = openDeviceDocument(db, shopDocument)
  await shop.loaded
  const connection = openConnection(location)
  const sync = connection.share(shopDocument, shop.doc)
  let jobs = shopJobs(shop.doc)
  shop.doc.on('update', () => {
    jobs = shopJobs(shop.doc)
    listeners.tell()
  })
  const outbox = createOutbox(outboxPort({ db, connection, sees: () => sees }))
  outbox.listen(listeners.tell)
  const look = (): void => {
    if (document.visibilityState === 'visible') void outbox.look()
  }
  let reach = ''
  shop.listen(listeners.tell)
  sync.listen(listeners.tell)
  connection.listen(() => {
    // Before it let this browser in it says nothing about who sits there.
    const told = connection.mustSignIn() ? undefined : connection.hello()?.sees
    if (told && told !== sees) {
      sees = told
      void db.put('facts', told, seesFact)
    }
    const now = `${connection.online()} ${connection.mustSignIn()} ${connection.hello()?.run}`
    if (now !== reach) void outbox.lookAnew()
    reach = now
    listeners.tell()
  })
  void outbox.look()
  setInterval(look, lookMs)
  const storage = navigator.storage as StorageManager | undefined
  const told = (now: boolean): void => {
    lasting = now
    listeners.tell()
  }
  void storage?.persisted?.().then(told)
  return {
    listen: listeners.listen,
    db,
    connection,
    shop,
    shopSync: sync,
    outbox,
    jobs: () => jobs,
    fault: () => (isLost ? 'web.deviceLost' : shop.fault()),
    sees: () => sees,
    lasting: () => lasting,
    askToLast: () => {
      if (lasting !== true) void storage?.persist?.().then(told)
    },
  }
}
