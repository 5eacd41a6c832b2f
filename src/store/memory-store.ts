/** The port in memory: the model that other stores are held against, and the store of tests. Nothing outlives it. */
import { checkedName, checkedSame, checkedUpdate, checkedWeather, sorted } from './checked.ts'
import { checkedCursor, checkedEntries, checkedMost } from './checked-log.ts'
import { merged } from './merged.ts'
import type { LogEntry, MergeUpdates, Store } from './port.ts'
import { StoreError } from './store-error.ts'

type Row = { readonly sequence: number; readonly id: string; readonly cells: string }

type Kept = {
  readonly documents: Map<string, Uint8Array[]>
  readonly entries: Map<string, readonly Row[]>
  readonly weather: Map<string, Uint8Array>
  newest: number
  open: boolean
}

/** An empty store. Each call checks first and changes last, so that a failure changes nothing. */
export function createMemoryStore(): Store {
  const kept: Kept = { documents: new Map(), entries: new Map(), weather: new Map(), newest: 0, open: true }
  const whenOpen =
    <Given extends readonly unknown[], Result>(work: (...given: Given) => Result) =>
    async (...given: Given): Promise<Result> => {
      if (kept.open) return work(...given)
      throw new StoreError('store.closed', {}, 'store: closed, expected to be open')
    }
  return {
    documentNames: whenOpen(() => sorted([...kept.documents.keys()])),
    document: whenOpen((name: string) => {
      const updates = kept.documents.get(checkedName('document', name)) ?? []
      return { name, updates: updates.map((update) => new Uint8Array(update)) }
    }),
    append: whenOpen((name: string, update: Uint8Array) => append(kept, name, update)),
    compact: whenOpen((name: string, options: Compaction) => compact(kept, name, options)),
    jobs: whenOpen(() => sorted([...kept.entries.keys()])),
    addEntries: whenOpen((job: string, entries: readonly LogEntry[]) => addEntries(kept, job, entries)),
    entriesAfter: whenOpen((job: string, cursor: { after: number; most: number }) => {
      const { after, most } = checkedCursor(cursor)
      const rows = kept.entries.get(checkedName('job', job)) ?? []
      const wanted = rows.filter((row) => row.sequence > after).slice(0, most)
      return wanted.map((row) => ({ ...row, cells: JSON.parse(row.cells) }))
    }),
    putWeather: whenOpen((hash: string, bytes: Uint8Array) => putWeather(kept, hash, bytes)),
    weather: whenOpen((hash: string) => {
      const bytes = kept.weather.get(checkedName('hash', hash))
      return bytes && new Uint8Array(bytes)
    }),
    weatherHashes: whenOpen(() => sorted([...kept.weather.keys()])),
    integrity: whenOpen(() => []),
    close: async () => {
      kept.open = false
    },
  }
}

type Compaction = { readonly most: number; readonly merge: MergeUpdates }

function append({ documents }: Kept, name: string, update: Uint8Array): void {
  const document = checkedName('document', name)
  const bytes = checkedUpdate(document, update)
  const updates = documents.get(document)
  if (updates) updates.push(bytes)
  else documents.set(document, [bytes])
}

function compact({ documents }: Kept, name: string, { most, merge }: Compaction): boolean {
  const document = checkedName('document', name)
  const updates = documents.get(document) ?? []
  if (updates.length <= checkedMost(most)) return false
  const copies = updates.map((update) => new Uint8Array(update))
  documents.set(document, [merged(document, { updates: copies, merge })])
  return true
}

function addEntries(kept: Kept, name: string, given: readonly LogEntry[]): number {
  const job = checkedName('job', name)
  const rows = [...(kept.entries.get(job) ?? [])]
  const known = new Set(rows.map((row) => row.id))
  for (const entry of checkedEntries(job, given)) {
    if (known.has(entry.id)) continue
    known.add(entry.id)
    kept.newest += 1
    rows.push({ ...entry, sequence: kept.newest })
  }
  if (rows.length > 0) kept.entries.set(job, rows)
  return rows.at(-1)?.sequence ?? 0
}

function putWeather({ weather }: Kept, name: string, given: Uint8Array): void {
  const hash = checkedName('hash', name)
  const bytes = checkedWeather(hash, given)
  const known = weather.get(hash)
  if (known) checkedSame(hash, { kept: known, given: bytes })
  else weather.set(hash, bytes)
}
