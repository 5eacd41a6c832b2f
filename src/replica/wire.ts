/** What a page and the server say to each other: names of documents, the version of the talk, and its bodies. */
import type { RawCells } from '#job'

/** Raised when an older page could no longer be understood; the server keeps taking its edits, then it reloads. */
export const protocol = 1

/** The list of jobs: a shared document like the others, so that it is there without a signal too. */
export const shopDocument = 'shop'
/** Name of the shared document with the work of a job. */
export const workDocument = (job: string): string => `work:${job}`
/** Name of the shared document with the prices of a job. */
export const moneyDocument = (job: string): string => `money:${job}`

/** Ids that the program makes; people's own ids come in by files. */
export const idPattern = /^[a-z0-9][a-z0-9-]{0,63}$/

/** What a signed-in person may see: everything, or the work without prices. */
export type Sees = 'all' | 'work'

/** Answer to `GET /api/hello`. */
export type Hello = {
  readonly protocol: number
  readonly app: string
  /** A passphrase is asked for and this browser has not given it. */
  readonly signIn: boolean
  readonly sees: Sees
  readonly run: ServerRun
}

/** One entry of the log on its way. */
export type WireEntry = { readonly id: string; readonly cells: RawCells }

/** Body of `POST /api/jobs/:job/log`. */
export type LogBatch = { readonly entries: readonly WireEntry[] }
/** Its answer: every entry of the batch is on the disk. */
export type LogTaken = {
  readonly sequence: number
  readonly run: ServerRun
}

/**
 * Made anew whenever the server starts. Only then can its data have been set back to an older state, so a page that
 * meets another run takes nothing for kept that it was told before.
 */
export type ServerRun = string

/** Answer to `GET /api/jobs/:job/log?after=N`. */
export type LogPage = {
  readonly entries: readonly (WireEntry & { readonly sequence: number })[]
  /** There are more: ask again behind the last. */
  readonly more: boolean
  readonly run: ServerRun
}

/** The one shape of an error, on every route. */
export type ApiError = {
  readonly error: { readonly code: string; readonly data: Readonly<Record<string, string | number>> }
}
