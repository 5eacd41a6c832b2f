/** A job as two shared documents: reading them, editing them, and what a page and the server say to each other. */
export type { ApiError, Hello, LogBatch, LogPage, LogTaken, Sees, WireEntry } from './wire.ts'
export { idPattern, moneyDocument, protocol, shopDocument, workDocument } from './wire.ts'
