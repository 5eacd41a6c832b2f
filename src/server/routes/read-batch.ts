/** A batch of log entries from outside: every id and cell as it may be kept, or the place of the first that is not. */
import type { RawCells } from '#job'
import { idPattern, type WireEntry } from '#replica'
import { isMap } from '../http/body.ts'
import { refuse } from '../http/refusal.ts'
import type { ServerLimits } from '../limits.ts'

type BatchLimits = Pick<ServerLimits, 'batchEntries' | 'entryCells' | 'cellLetters'>

/** Keys of cells: names, never text. */
const keyPattern = /^[A-Za-z][A-Za-z0-9-]{0,63}$/

export function readBatch(body: unknown, limits: BatchLimits): readonly WireEntry[] {
  const entries = isMap(body) ? body.entries : undefined
  if (!Array.isArray(entries)) return refuse(400, 'server.bodyNotUnderstood', { at: 'entries' })
  if (entries.length > limits.batchEntries)
    refuse(413, 'server.batchTooLong', { count: entries.length, mostCount: limits.batchEntries })
  return entries.map((entry, at) => readEntry(entry, `entries/${at}`, limits))
}

function readEntry(entry: unknown, at: string, limits: BatchLimits): WireEntry {
  const { id, cells } = isMap(entry) ? entry : {}
  if (typeof id !== 'string' || !idPattern.test(id)) return wrong(`${at}/id`)
  if (!isMap(cells) || Object.keys(cells).length > limits.entryCells) return wrong(`${at}/cells`)
  return { id, cells: readCells(cells, `${at}/cells`, limits) }
}

function readCells(
  cells: Readonly<Record<string, unknown>>,
  at: string,
  { cellLetters }: BatchLimits,
): RawCells {
  const read = Object.entries(cells).map(([key, text]): readonly [string, string] => {
    if (!keyPattern.test(key)) return wrong(at)
    return typeof text === 'string' && text.length <= cellLetters && isKeepable(text)
      ? [key, text]
      : wrong(`${at}/${key}`)
  })
  return Object.fromEntries(read)
}

/** What every database gives back as it was given: no NUL, no half of a character. */
const isKeepable = (text: string): boolean => !text.includes('\0') && !/\p{Surrogate}/u.test(text)

const wrong = (at: string): never => refuse(400, 'server.bodyNotUnderstood', { at })
