/** The header of a PLY file: which elements follow, how many, and of what. */
import { shown } from '../problem.ts'
import { MeshFault } from './mesh-fault.ts'
import { mostHeaderBytes } from './mesh-limits.ts'

export type PlyCoding = 'ascii' | 'binary_little_endian' | 'binary_big_endian'

/** How one number stands in the file. */
export type PlyScalar = 'i1' | 'u1' | 'i2' | 'u2' | 'i4' | 'u4' | 'f4' | 'f8'

export type PlyProperty = {
  readonly name: string
  readonly type: PlyScalar
  /** Of a list: how its length stands before it. */
  readonly count?: PlyScalar
}

export type PlyElement = {
  readonly name: string
  readonly rows: number
  readonly properties: readonly PlyProperty[]
}

export type PlyHeader = {
  readonly coding: PlyCoding
  readonly elements: readonly PlyElement[]
  /** Where the data begin, and in which line. */
  readonly at: number
  readonly line: number
}

const scalars: ReadonlyMap<string, PlyScalar> = new Map([
  ['char', 'i1'],
  ['int8', 'i1'],
  ['uchar', 'u1'],
  ['uint8', 'u1'],
  ['short', 'i2'],
  ['int16', 'i2'],
  ['ushort', 'u2'],
  ['uint16', 'u2'],
  ['int', 'i4'],
  ['int32', 'i4'],
  ['uint', 'u4'],
  ['uint32', 'u4'],
  ['float', 'f4'],
  ['float32', 'f4'],
  ['double', 'f8'],
  ['float64', 'f8'],
])

const codings: readonly string[] = ['ascii', 'binary_little_endian', 'binary_big_endian']
const [mostLine, mostParts] = [100_000, 1000]

type Draft = { coding: PlyCoding | undefined; parts: number; readonly elements: MutableElement[] }
type MutableElement = { readonly name: string; readonly rows: number; readonly properties: PlyProperty[] }

export function readPlyHeader(bytes: Uint8Array): PlyHeader {
  const draft: Draft = { coding: undefined, parts: 0, elements: [] }
  let at = 0
  for (let line = 1; at < bytes.length && at < mostHeaderBytes; line++) {
    const feed = bytes.indexOf(10, at)
    const end = feed === -1 ? bytes.length : feed
    if (end - at > mostLine) break
    const text = String.fromCharCode(...bytes.subarray(at, Math.min(end, at + 1000))).trim()
    at = end + 1
    if (text === 'end_header') return finished(draft, { at, line: line + 1 })
    takeLine(draft, text.split(/\s+/), { text, line })
  }
  throw new MeshFault('intake.meshCutShort', { sizeBytes: bytes.length })
}

type HeaderLine = { readonly text: string; readonly line: number }

function takeLine(draft: Draft, words: readonly string[], here: HeaderLine): void {
  const [keyword] = words
  if (++draft.parts > mostParts && keyword !== 'comment') notUnderstood(here)
  if (keyword === 'format') {
    if (!codings.includes(words[1] ?? '')) notUnderstood(here)
    draft.coding = words[1] as PlyCoding
  } else if (keyword === 'element') {
    const rows = Number(words[2])
    if (words.length !== 3 || !/^\d+$/.test(words[2]!) || !Number.isSafeInteger(rows)) notUnderstood(here)
    draft.elements.push({ name: words[1]!, rows, properties: [] })
  } else if (keyword === 'property') {
    const element = draft.elements.at(-1) ?? notUnderstood(here)
    element.properties.push(propertyOf(words, here))
  } else if (keyword !== 'ply' && keyword !== 'comment' && keyword !== 'obj_info' && keyword !== '') {
    notUnderstood(here)
  }
}

function propertyOf(words: readonly string[], here: HeaderLine): PlyProperty {
  const isList = words[1] === 'list'
  const type = scalars.get(words[isList ? 3 : 1] ?? '') ?? notUnderstood(here)
  const name = words[isList ? 4 : 2] ?? notUnderstood(here)
  if (!isList) return { name, type }
  const count = scalars.get(words[2] ?? '')
  if (count === undefined || count.startsWith('f')) return notUnderstood(here)
  return { name, type, count }
}

function finished({ coding, elements }: Draft, place: { at: number; line: number }): PlyHeader {
  if (coding === undefined) throw new MeshFault('intake.meshHeader', { found: 'end_header' }, place.line - 1)
  return { coding, elements, ...place }
}

function notUnderstood({ text, line }: HeaderLine): never {
  throw new MeshFault('intake.meshHeader', { found: shown(text) }, line)
}
