/** Which kind of mesh file this is, by what stands in it; names of files are not looked at. */
import { MeshFault } from './mesh-fault.ts'
import { stlCount, stlHead, stlRow } from './stl-binary.ts'

export type MeshFormat = 'stl' | 'stlText' | 'obj' | 'ply' | 'glb'

/** How much of the beginning is looked at, bytes: remarks may stand before the first point. */
const headBytes = 65_536

/** First bytes of files that hold others, packed. We unpack nothing. */
const packers: readonly (readonly [found: string, magic: string])[] = [
  ['zip', 'PK\x03\x04'],
  ['gzip', '\x1f\x8b'],
  ['7z', "7z\xbc\xaf'\x1c"],
  ['xz', '\xfd7zXZ'],
  ['bzip2', 'BZh'],
]

/** The format; throws when it is none that is read. */
export function formatOf(bytes: Uint8Array): MeshFormat {
  const head = latin(bytes.subarray(0, headBytes))
  if (head.startsWith('glTF')) return 'glb'
  if (/^ply\s/.test(head)) return 'ply'
  if (bytes.length >= stlHead && stlHead + stlRow * stlCount(bytes) === bytes.length) return 'stl'
  if (/^\s*solid\b/i.test(head) && /^[^\n]*\n\s*(facet|endsolid)\b/i.test(head.trimStart())) return 'stlText'
  if (isObj(bytes, head)) return 'obj'
  const packed = packers.find(([, magic]) => head.startsWith(magic))
  if (packed !== undefined) throw new MeshFault('intake.meshPacked', { found: packed[0] })
  if (/^\s*\{[\s\S]{0,4000}"(asset|meshes|buffers)"/.test(head))
    throw new MeshFault('intake.meshJsonOnly', {})
  if (mayBeStl(bytes)) return 'stl'
  throw new MeshFault('intake.meshUnknown', {})
}

function latin(bytes: Uint8Array): string {
  let text = ''
  for (let at = 0; at < bytes.length; at += 8192)
    text += String.fromCharCode(...bytes.subarray(at, at + 8192))
  return text
}

/** A point in the first lines, and nothing in them that no text has. */
function isObj(bytes: Uint8Array, head: string): boolean {
  return isText(bytes) && /(^|\n)[ \t]*v[ \t]+[-+.\d]/.test(head)
}

function isText(bytes: Uint8Array): boolean {
  return !bytes.subarray(0, 4096).some((byte) => byte < 9 || (byte > 13 && byte < 32))
}

/** The rows that are looked at in a file whose length fits no count. */
const rowsTried = 20

/** A file of STL that was cut off or that something was added to: its first rows hold directions and sane places. */
function mayBeStl(bytes: Uint8Array): boolean {
  const rows = Math.min(rowsTried, stlCount(bytes), Math.floor((bytes.length - stlHead) / stlRow))
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength)
  for (let row = 0; row < rows; row++) {
    const figures = Array.from({ length: 12 }, (_, k) =>
      view.getFloat32(stlHead + stlRow * row + 4 * k, true),
    )
    const isDirection = figures.slice(0, 3).every((figure) => Math.abs(figure) < 1.01)
    if (!isDirection || !figures.every((figure) => figure === 0 || isSane(Math.abs(figure)))) return false
  }
  return rows > 0
}

function isSane(size: number): boolean {
  return size > 1e-30 && size < 1e12
}
