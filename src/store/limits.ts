/** How much the store takes at once; what is larger is refused with its size before anything is written. */

const kibi = 1024
const mebi = 1024 * kibi

/**
 * Bytes of one update, of a document merged into one, of one entry's cells as JSON and of one weather row; letters of
 * a name or id; entries in one batch. Far above what a job needs: a year of edits is some hundred kilobytes, a year
 * of hourly weather two megabytes.
 */
export const storeLimits = {
  updateBytes: 16 * mebi,
  documentBytes: 256 * mebi,
  entryBytes: 64 * kibi,
  weatherBytes: 16 * mebi,
  nameLength: 256,
  entriesAtOnce: 10_000,
} as const

export const megabytes = (bytes: number): number => Math.ceil((bytes / mebi) * 10) / 10
export const kilobytes = (bytes: number): number => Math.ceil((bytes / kibi) * 10) / 10
