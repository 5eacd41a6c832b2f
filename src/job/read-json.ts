/** Strict JSON to a tree: with places, with duplicate keys found, numbers kept as they are spelled. */
import { limits } from './limits.ts'
import { below } from './pointer.ts'
import { quote } from './problem.ts'
import type { Tree, TreeEntry, TreeFault, TreeReading } from './tree.ts'

/** Thrown inside this file only: nothing after a syntax fault can be trusted. */
class JsonStop extends Error {
  readonly fault: TreeFault
  constructor(fault: TreeFault) {
    super(`JSON: ${fault.code} at ${fault.at}`)
    this.fault = fault
  }
}

type Cursor = { readonly text: string; at: number; readonly faults: TreeFault[] }

const blank = /[ \t\n\r]*/y
const number = /-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?/y
const word = /true|false|null/y
// biome-ignore lint/suspicious/noControlCharactersInRegex: JSON forbids exactly these inside a string (RFC 8259).
const string = /"(?:[^"\\\u0000-\u001f]|\\(?:["\\/bfnrt]|u[0-9a-fA-F]{4}))*"/y

/**
 * Reads `text` as JSON. SOURCE: T. Bray, The JavaScript Object Notation (JSON) Data Interchange Format, RFC 8259, 2017.
 * Differs from `JSON.parse`: duplicate keys are faults, and a number stays the text it was.
 */
export const readJson = (text: string): TreeReading => {
  const cursor: Cursor = { text, at: 0, faults: [] }
  try {
    const tree = value(cursor, '', 0)
    skipBlank(cursor)
    if (cursor.at < text.length) stop(cursor)
    return { tree, faults: cursor.faults }
  } catch (error) {
    if (!(error instanceof JsonStop)) throw error
    return { faults: [...cursor.faults, error.fault] }
  }
}

const stop = ({ text, at }: Cursor, code = 'job.json'): never => {
  const ended = at >= text.length
  throw new JsonStop({
    code: ended ? 'job.truncated' : code,
    at,
    pointer: '',
    data: ended ? {} : code === 'job.tooDeep' ? { most: limits.depth } : { found: characterAt(text, at) },
  })
}

const characterAt = (text: string, at: number): string => String.fromCodePoint(text.codePointAt(at) as number)

const match = (cursor: Cursor, pattern: RegExp): string | undefined => {
  pattern.lastIndex = cursor.at
  const found = pattern.exec(cursor.text)?.[0]
  if (found !== undefined) cursor.at += found.length
  return found
}

const skipBlank = (cursor: Cursor): void => {
  match(cursor, blank)
}

const take = (cursor: Cursor, character: string): boolean => {
  skipBlank(cursor)
  if (cursor.text[cursor.at] !== character) return false
  cursor.at++
  return true
}

const value = (cursor: Cursor, pointer: string, depth: number): Tree => {
  skipBlank(cursor)
  if (depth > limits.depth) stop(cursor, 'job.tooDeep')
  const { at } = cursor
  if (take(cursor, '{')) return map(cursor, pointer, depth)
  if (take(cursor, '[')) return list(cursor, pointer, depth)
  if (cursor.text[at] === '"') return { kind: 'text', at, text: quoted(cursor), empty: false }
  const text = match(cursor, number) ?? match(cursor, word) ?? stop(cursor)
  return text === 'null'
    ? { kind: 'text', at, text: '', empty: true }
    : { kind: 'text', at, text, empty: false }
}

const quoted = (cursor: Cursor): string => {
  const { text, at } = cursor
  const found = match(cursor, string)
  if (found !== undefined) return JSON.parse(found) as string
  cursor.at = endOfBadString(text, at)
  return stop(cursor)
}

/** Where a string goes wrong: at the first character it may not hold, or at the end of the text. */
const endOfBadString = (text: string, at: number): number => {
  let end = at + 1
  while (end < text.length) {
    const character = text[end] as string
    if (character < ' ') return end
    if (character === '\\') {
      if (end + 1 < text.length && !/^\\(?:["\\/bfnrt]|u[0-9a-fA-F]{4})/.test(text.slice(end, end + 6)))
        return end
      end++
    }
    end++
  }
  return text.length
}

const map = (cursor: Cursor, pointer: string, depth: number): Tree => {
  const at = cursor.at - 1
  const entries = new Map<string, TreeEntry>()
  if (take(cursor, '}')) return { kind: 'map', at, entries: [] }
  do {
    skipBlank(cursor)
    const keyAt = cursor.at
    if (cursor.text[keyAt] !== '"') stop(cursor)
    const key = quoted(cursor)
    if (!take(cursor, ':')) stop(cursor)
    const entry = { key, at: keyAt, value: value(cursor, below(pointer, key), depth + 1) }
    if (entries.has(key)) {
      const data = { found: quote(key) }
      cursor.faults.push({ code: 'job.duplicateKey', at: keyAt, pointer: below(pointer, key), data })
    } else entries.set(key, entry)
  } while (take(cursor, ','))
  if (!take(cursor, '}')) stop(cursor)
  return { kind: 'map', at, entries: [...entries.values()] }
}

/** A document has no lists, so what is in one is read over but not kept. */
const list = (cursor: Cursor, pointer: string, depth: number): Tree => {
  const at = cursor.at - 1
  if (take(cursor, ']')) return { kind: 'list', at }
  do value(cursor, pointer, depth + 1)
  while (take(cursor, ','))
  if (!take(cursor, ']')) stop(cursor)
  return { kind: 'list', at }
}
