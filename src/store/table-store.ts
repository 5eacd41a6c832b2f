/** The port over tables, whichever database they are in: every write is one transaction, and they never overlap. */
import type { Kysely } from 'kysely'
import { checkedName, checkedSame, checkedUpdate, checkedWeather, sorted } from './checked.ts'
import { checkedCursor, checkedEntries, checkedMost } from './checked-log.ts'
import { merged } from './merged.ts'
import type { MergeUpdates, Store } from './port.ts'
import type { Queue } from './queue.ts'
import type { Tables } from './schema.ts'
import { bytesOf, storedName } from './stored-text.ts'
import { addEntries, entriesAfter, jobs } from './table-log.ts'

type Behind = {
  readonly db: Kysely<Tables>
  readonly queue: Queue
  readonly integrity: () => readonly string[]
  readonly close: () => Promise<void>
}

/** The only writer of its database: `queue` carries all that is asked. */
export function createTableStore({ db, queue, integrity, close }: Behind): Store {
  return {
    documentNames: () => queue.run(() => documentNames(db)),
    document: async (name) => {
      const document = checkedName('document', name)
      return queue.run(async () => ({
        name,
        updates: (await updatesOf(db, document)).map((row) => row.bytes),
      }))
    },
    append: async (name, update) => {
      const document = checkedName('document', name)
      const bytes = checkedUpdate(document, update)
      await queue.run(() => db.insertInto('document_update').values({ document, bytes }).execute())
    },
    compact: async (name, { most, merge }) => {
      const options = { document: checkedName('document', name), most: checkedMost(most), merge }
      return queue.run(() => compact(db, options))
    },
    ...logOf(db, queue),
    ...weatherOf(db, queue),
    integrity: () => queue.run(async () => integrity()),
    close: () => queue.close(close),
  }
}

type LogPart = Pick<Store, 'jobs' | 'addEntries' | 'entriesAfter'>

const logOf = (db: Kysely<Tables>, queue: Queue): LogPart => ({
  jobs: () => queue.run(() => jobs(db)),
  addEntries: async (name, entries) => {
    const job = checkedName('job', name)
    const texts = checkedEntries(job, entries)
    return queue.run(() => addEntries(db, { job, entries: texts }))
  },
  entriesAfter: async (name, cursor) => {
    const asked = { job: checkedName('job', name), ...checkedCursor(cursor) }
    return queue.run(() => entriesAfter(db, asked))
  },
})

type WeatherPart = Pick<Store, 'putWeather' | 'weather' | 'weatherHashes'>

const weatherOf = (db: Kysely<Tables>, queue: Queue): WeatherPart => ({
  putWeather: async (name, given) => {
    const hash = checkedName('hash', name)
    const bytes = checkedWeather(hash, given)
    await queue.run(() => putWeather(db, { hash, bytes }))
  },
  weather: async (name) => {
    const hash = checkedName('hash', name)
    return queue.run(() => weather(db, hash))
  },
  weatherHashes: () =>
    queue.run(async () => {
      const rows = await db.selectFrom('weather').select(bytesOf('hash').as('name')).execute()
      return sorted(rows.map((row) => storedName('hash', row.name)))
    }),
})

async function documentNames(db: Kysely<Tables>): Promise<readonly string[]> {
  const rows = await db
    .selectFrom('document_update')
    .select(bytesOf('document').as('name'))
    .distinct()
    .execute()
  return sorted(rows.map((row) => storedName('document', row.name)))
}

const updatesOf = (db: Kysely<Tables>, document: string) =>
  db
    .selectFrom('document_update')
    .select(['sequence', 'bytes'])
    .where('document', '=', document)
    .orderBy('sequence')
    .execute()

type Compaction = { readonly document: string; readonly most: number; readonly merge: MergeUpdates }

/** The merged row takes the place of the last that went into it, so that what came after stays after. */
const compact = (db: Kysely<Tables>, { document, most, merge }: Compaction): Promise<boolean> =>
  db.transaction().execute(async (work) => {
    const rows = await updatesOf(work, document)
    const last = rows.at(-1)
    if (!last || rows.length <= most) return false
    const bytes = merged(document, { updates: rows.map((row) => row.bytes), merge })
    await work
      .deleteFrom('document_update')
      .where('document', '=', document)
      .where('sequence', '<=', last.sequence)
      .execute()
    await work.insertInto('document_update').values({ sequence: last.sequence, document, bytes }).execute()
    return true
  })

async function weather(db: Kysely<Tables>, hash: string): Promise<Uint8Array | undefined> {
  const row = await db.selectFrom('weather').select('bytes').where('hash', '=', hash).executeTakeFirst()
  return row?.bytes
}

type WeatherRow = { readonly hash: string; readonly bytes: Uint8Array }

const putWeather = (db: Kysely<Tables>, { hash, bytes }: WeatherRow): Promise<void> =>
  db.transaction().execute(async (work) => {
    const kept = await weather(work, hash)
    if (kept) checkedSame(hash, { kept, given: bytes })
    else await work.insertInto('weather').values({ hash, bytes }).execute()
  })
