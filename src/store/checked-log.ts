/** Entries of the log and cursors into it, checked before they wait their turn. */
import { checkedName } from './checked.ts'
import { kilobytes, storeLimits } from './limits.ts'
import type { LogEntry } from './port.ts'
import { StoreError } from './store-error.ts'

/** An entry as it is kept: JSON escapes whatever a text cannot hold, so every cell comes back as it went in. */
export type EntryText = { readonly id: string; readonly cells: string }

export function checkedEntries(job: string, entries: readonly LogEntry[]): readonly EntryText[] {
  const most = storeLimits.entriesAtOnce
  if (entries.length > most)
    throw new StoreError(
      'store.tooManyEntries',
      { count: entries.length, mostCount: most },
      `entries: too many at once, got ${entries.length}, expected at most ${most}`,
    )
  return entries.map((entry) => checkedEntry(job, entry))
}

function checkedEntry(job: string, entry: LogEntry): EntryText {
  const id = checkedName('entry', entry.id)
  const given: unknown = entry.cells
  if (!isMapOfTexts(given))
    throw new StoreError('store.badCells', { job, id }, 'cells: not all texts, expected a map of texts')
  const cells = JSON.stringify(given)
  const bytes = Buffer.byteLength(cells)
  if (bytes <= storeLimits.entryBytes) return { id, cells }
  const sizes = { kilobytes: kilobytes(bytes), mostKilobytes: kilobytes(storeLimits.entryBytes) }
  throw new StoreError(
    'store.entryTooLarge',
    { job, id, ...sizes },
    `entry: too large, got ${sizes.kilobytes} kB, expected at most ${sizes.mostKilobytes} kB`,
  )
}

/** The shape of an entry's cells. */
export const isMapOfTexts = (value: unknown): value is Readonly<Record<string, string>> =>
  typeof value === 'object' &&
  value !== null &&
  !Array.isArray(value) &&
  Object.values(value).every((text) => typeof text === 'string')

type Cursor = { readonly after: number; readonly most: number }

export function checkedCursor({ after, most }: Cursor): Cursor {
  if (Number.isSafeInteger(after) && after >= 0 && Number.isSafeInteger(most) && most >= 1)
    return { after, most }
  throw badCursor(`after ${after}, most ${most}`)
}

export function checkedMost(most: number): number {
  if (Number.isSafeInteger(most) && most >= 0) return most
  throw badCursor(`most ${most}`)
}

const badCursor = (text: string): StoreError =>
  new StoreError(
    'store.badCursor',
    { text },
    `cursor: not usable, got ${text}, expected whole numbers from 0`,
  )
