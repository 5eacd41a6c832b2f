/** How much the server takes of everything that comes from outside. */

const kibi = 1024
const mebi = 1024 * kibi

export type ServerLimits = {
  /** Bytes of a JSON body. */
  readonly jsonBytes: number
  /** Bytes of a body with a weather file. */
  readonly weatherBytes: number
  /** Weather series kept. */
  readonly weatherSeries: number
  /** Entries of the log in one batch, and on one page of it. */
  readonly batchEntries: number
  readonly pageEntries: number
  /** Cells of an entry, letters of a cell. */
  readonly entryCells: number
  readonly cellLetters: number
  /** Bytes of one message on a socket. */
  readonly messageBytes: number
  /** Bytes of what a page says of itself to the others on a document. */
  readonly presenceBytes: number
  /** Bytes that wait for a page that does not read. */
  readonly waitingBytes: number
  /** Sockets at once, and documents open on one. */
  readonly sockets: number
  readonly documentsOnSocket: number
  /** Documents kept, and bytes of one. */
  readonly documents: number
  readonly documentBytes: number
  /** Updates of a document before they are made one. */
  readonly updates: number
  /** The same, once nobody has it open. */
  readonly updatesAtRest: number
  /** Between two looks whether a socket still answers, ms. */
  readonly heartbeatMs: number
  /** How long a socket may take to close when the server stops, ms. */
  readonly closeMs: number
}

/**
 * Far above what a shop needs: a job is some hundred kilobytes, and a year of hourly weather half a megabyte. The
 * longest weather that is read from a file, with every column to its last digit, has to fit too.
 */
export const serverLimits: ServerLimits = {
  jsonBytes: mebi,
  weatherBytes: 12 * mebi,
  weatherSeries: 5000,
  batchEntries: 200,
  pageEntries: 500,
  entryCells: 40,
  cellLetters: 8000,
  messageBytes: 4 * mebi,
  presenceBytes: 16 * kibi,
  waitingBytes: 64 * mebi,
  sockets: 200,
  documentsOnSocket: 40,
  documents: 5000,
  documentBytes: 32 * mebi,
  updates: 400,
  updatesAtRest: 20,
  heartbeatMs: 30_000,
  closeMs: 2000,
}
