/**
 * Re-reads whatever a store holds and tells what cannot be read any more. A damaged row hides no other; a damaged name
 * hides the list that it stands in.
 */
import type { Store, StoredEntry } from './port.ts'
import { StoreError, type StoreErrorCode, type StoreErrorData } from './store-error.ts'

/** What the store cannot judge by itself: each throws when it cannot read what it is given. */
export type Readers = {
  readonly document: (name: string, updates: readonly Uint8Array[]) => void
  readonly weather: (hash: string, bytes: Uint8Array) => void
}

/**
 * `store.documentDamaged` `document`, `text`; `store.weatherDamaged` `hash`, `text`; `store.fileDamaged` `text`, in
 * the words of the database; or what the store failed with, with its data.
 */
export type StoreFault = {
  readonly code: StoreErrorCode | 'store.documentDamaged' | 'store.weatherDamaged' | 'store.fileDamaged'
  readonly data: StoreErrorData
}

/** How much was read, damaged or not, and what is wrong with it: nothing when all is whole. */
export type Examined = {
  readonly documents: number
  readonly updates: number
  readonly jobs: number
  readonly entries: number
  readonly weather: number
  readonly faults: readonly StoreFault[]
}

/** Changes nothing. Work may go on meanwhile; what is written during the examination may be read or not. */
export async function examine(store: Store, readers: Readers): Promise<Examined> {
  const faults: StoreFault[] = []
  for (const text of (await attempt(faults, () => store.integrity())) ?? [])
    faults.push({ code: 'store.fileDamaged', data: { text } })
  const documents = await examineDocuments(store, { faults, read: readers.document })
  const log = await examineLog(store, faults)
  const weather = await examineWeather(store, { faults, read: readers.weather })
  return { ...documents, ...log, weather, faults }
}

/** Gives nothing when it fails, and notes why. A closed store is no damage: that is thrown on. */
async function attempt<Result>(
  faults: StoreFault[],
  work: () => Promise<Result>,
): Promise<Result | undefined> {
  try {
    return await work()
  } catch (error) {
    if (!(error instanceof StoreError) || error.code === 'store.closed') throw error
    faults.push({ code: error.code, data: error.data })
    return undefined
  }
}

type DocumentPart = { readonly faults: StoreFault[]; readonly read: Readers['document'] }

async function examineDocuments(store: Store, { faults, read }: DocumentPart) {
  const names = (await attempt(faults, () => store.documentNames())) ?? []
  let updates = 0
  for (const name of names) {
    const document = await attempt(faults, () => store.document(name))
    if (!document) continue
    updates += document.updates.length
    const text = failureOf(() => read(name, document.updates))
    if (text !== undefined) faults.push({ code: 'store.documentDamaged', data: { document: name, text } })
  }
  return { documents: names.length, updates }
}

async function examineLog(store: Store, faults: StoreFault[]) {
  const names = (await attempt(faults, () => store.jobs())) ?? []
  let entries = 0
  for (const job of names) entries += await examineEntries(store, { job, faults })
  return { jobs: names.length, entries }
}

const pageOfEntries = 500

type JobPart = { readonly job: string; readonly faults: StoreFault[] }

/** By pages as long as they can be read, then one by one, so that a damaged entry hides none of its page. */
async function examineEntries(store: Store, part: JobPart): Promise<number> {
  let read = 0
  let after = 0
  for (;;) {
    const page = await pageAfter(store, { job: part.job, after })
    const last = page?.at(-1)
    if (!page || !last) break
    read += page.length
    after = last.sequence
  }
  return read + (await examineOneByOne(store, { ...part, after }))
}

type Place = { readonly job: string; readonly after: number }

async function pageAfter(store: Store, { job, after }: Place): Promise<readonly StoredEntry[] | undefined> {
  const missed: StoreFault[] = []
  return attempt(missed, () => store.entriesAfter(job, { after, most: pageOfEntries }))
}

/** Ends at the end of the job, or where the database cannot say which entry is next. */
async function examineOneByOne(store: Store, { job, after, faults }: JobPart & Place): Promise<number> {
  let read = 0
  let at: number | undefined = after
  while (at !== undefined) {
    const found: StoreFault[] = []
    const cursor: { readonly after: number; readonly most: number } = { after: at, most: 1 }
    const page: readonly StoredEntry[] | undefined = await attempt(found, () =>
      store.entriesAfter(job, cursor),
    )
    faults.push(...found)
    at = page ? page[0]?.sequence : sequenceOf(found[0])
    if (at !== undefined) read += 1
  }
  return read
}

const sequenceOf = (fault: StoreFault | undefined): number | undefined => {
  const sequence = fault?.data.sequence
  return typeof sequence === 'number' ? sequence : undefined
}

type WeatherPart = { readonly faults: StoreFault[]; readonly read: Readers['weather'] }

async function examineWeather(store: Store, { faults, read }: WeatherPart): Promise<number> {
  const hashes = (await attempt(faults, () => store.weatherHashes())) ?? []
  for (const hash of hashes) {
    const bytes = await attempt(faults, () => store.weather(hash))
    if (!bytes) continue
    const text = failureOf(() => read(hash, bytes))
    if (text !== undefined) faults.push({ code: 'store.weatherDamaged', data: { hash, text } })
  }
  return hashes.length
}

/** What a reader said; its errors are of any kind, since it is another room's. */
function failureOf(read: () => void): string | undefined {
  try {
    read()
    return undefined
  } catch (error) {
    return error instanceof Error ? error.message : String(error)
  }
}
