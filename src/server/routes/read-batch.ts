/** A batch of log entries from outside: every id and cell as it may be kept, or the place of the first that is not. */
import type { RawCells } from '#job'
import type { WireEntry } from '#replica'
import { isMap } from '../http/body.ts'
import { refuse } from '../http/refusal.ts'
import type { ServerLimits } from '../limits.ts'

type BatchLimits = Pick<ServerLimits, 'batchEntries' | 'entryCells' | 'cellLetters'>

/** Ids and keys may come from files that people wrote: short, and nothing in them that cannot be seen. */
const namePattern = /^[^\p{C}]{1,100}$/u

export function readBatch(body: unknown, limits: BatchLimits): readonly WireEntry[] {
  const entries = isMap(body) ? body.entries : undefined
  if (!Array.isArray(entries)) return refuse(400, 'server.bodyNotUnderstood', { at: 'entries' })
  if (entries.length > limits.batchEntries)
    refuse(413, 'server.batchTooLong', { count: entries.length, mostCount: limits.batchEntries })
  return entries.map((entry, at) => readEntry(entry, `entries/${at}`, limits))
}

function readEntry(entry: unknown, at: string, limits: BatchLimits): WireEntry {
  const { id, cells } = isMap(entry) ? entry : {}
  if (typeof id !== 'string' || !namePattern.test(id)) return wrong(`${at}/id`)
  if (!isMap(cells) || Object.keys(cells).length > limits.entryCells) return wrong(`${at}/cells`)
  return { id, cells: readCells(cells, `${at}/cells`, limits) }
}

function readCells(
  cells: Readonly<Record<string, unknown>>,
  at: string,
  { cellLetters }: BatchLimits,
): RawCells {
  const read = Object.entries(cells).map(([key, text]): readonly [string, string] => {
    if (!namePattern.test(key) || key === '__proto__') return wrong(at)
    return typeof text === 'string' && text.length <= cellLetters ? [key, text] : wrong(`${at}/${key}`)
  })
  return Object.fromEntries(read)
}

const wrong = (at: string): never => refuse(400, 'server.bodyNotUnderstood', { at })
