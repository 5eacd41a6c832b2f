/**
 * What outlives a page, behind one port: shared documents as updates, the log as immutable entries, weather by hash.
 * Whatever resolves has reached the disk. Whatever fails has changed nothing, and fails with a `StoreError`. What is
 * handed in is copied at once, what comes out is the caller's own.
 */
import type { RawCells } from '#job'

export type LogEntry = {
  /** Made by the device that wrote the entry. */
  readonly id: string
  readonly cells: RawCells
}

export type StoredEntry = LogEntry & {
  /** Rises from 1 by the order in which the store took entries, with gaps; the cursor of whoever reads on. */
  readonly sequence: number
}

export type StoredDocument = {
  readonly name: string
  /** In the order in which they were appended. */
  readonly updates: readonly Uint8Array[]
}

/** Merges updates into one that means the same; handed in, so that the store knows nothing of what is in them. */
export type MergeUpdates = (updates: readonly Uint8Array[]) => Uint8Array

export type Store = {
  /** Names of the documents that hold anything, sorted. */
  readonly documentNames: () => Promise<readonly string[]>
  /** Everything appended to a document; no updates for an unknown one. */
  readonly document: (name: string) => Promise<StoredDocument>
  /** One update at the end of a document. */
  readonly append: (name: string, update: Uint8Array) => Promise<void>
  /**
   * Puts one update in the place of all that stand there now, when there are more than `most`; in one transaction,
   * so that nothing appended meanwhile is lost. Says whether it did.
   */
  readonly compact: (
    name: string,
    options: { readonly most: number; readonly merge: MergeUpdates },
  ) => Promise<boolean>
  /** Jobs that have entries, sorted. */
  readonly jobs: () => Promise<readonly string[]>
  /**
   * Inserts or ignores, all or none; an id that the job knows already keeps its first cells. Gives the newest
   * sequence of the job, 0 when it has no entry.
   */
  readonly addEntries: (job: string, entries: readonly LogEntry[]) => Promise<number>
  /** In the order of their sequence, behind `after`, at most `most`. */
  readonly entriesAfter: (
    job: string,
    cursor: { readonly after: number; readonly most: number },
  ) => Promise<readonly StoredEntry[]>
  /** The same bytes again change nothing; other bytes under a known hash are refused. */
  readonly putWeather: (hash: string, bytes: Uint8Array) => Promise<void>
  readonly weather: (hash: string) => Promise<Uint8Array | undefined>
  readonly weatherHashes: () => Promise<readonly string[]>
  /** What the database itself finds wrong with its file, in its own words; nothing when it is whole. */
  readonly integrity: () => Promise<readonly string[]>
  /** Waits for what was asked before; whatever is asked later is refused. Closing twice is no fault. */
  readonly close: () => Promise<void>
}
