/** The numbers of a PLY file one after the other, in letters or in bytes of either order. */
import { ByteScan } from './byte-scan.ts'
import { MeshFault } from './mesh-fault.ts'
import { look, type MeshWatch } from './mesh-watch.ts'
import type { PlyHeader, PlyScalar } from './ply-header.ts'

export type PlySource = {
  /** The next number, of this type where the file is in bytes. */
  readonly next: (type: PlyScalar) => number
  /** The length of the list that follows. */
  readonly count: (type: PlyScalar) => number
  /** Past so many numbers of a type. */
  readonly skip: (type: PlyScalar, many: number) => void
  readonly look: (watch: MeshWatch) => void
}

/** Bytes of one number. */
export function sizeOf(type: PlyScalar): number {
  return type.charCodeAt(1) - 48
}

export function plySource(bytes: Uint8Array, header: PlyHeader): PlySource {
  return header.coding === 'ascii' ? fromText(bytes, header) : fromBytes(bytes, header)
}

function fromText(bytes: Uint8Array, { at, line }: PlyHeader): PlySource {
  const scan = new ByteScan(bytes, { at, line })
  const next = () => {
    scan.skipSpace()
    return scan.number()
  }
  return {
    next,
    count: () => wholeLength(next(), scan.line),
    skip: (_, many) => {
      for (let i = 0; i < many; i++) next()
    },
    look: (watch) => look(watch, scan.at, bytes.length),
  }
}

function fromBytes(bytes: Uint8Array, { at: start, coding }: PlyHeader): PlySource {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength)
  const little = coding === 'binary_little_endian'
  let at = start
  /** Steps over `size` bytes and tells where they began. */
  const over = (size: number): number => {
    const from = at
    at += size
    if (at > bytes.length)
      throw new MeshFault('intake.meshCutShort', { sizeBytes: bytes.length, neededBytes: at })
    return from
  }
  const next = (type: PlyScalar): number => {
    const from = over(sizeOf(type))
    if (type === 'f4') return view.getFloat32(from, little)
    if (type === 'i4') return view.getInt32(from, little)
    if (type === 'u4') return view.getUint32(from, little)
    if (type === 'u1') return view.getUint8(from)
    if (type === 'f8') return view.getFloat64(from, little)
    if (type === 'i2') return view.getInt16(from, little)
    if (type === 'u2') return view.getUint16(from, little)
    return view.getInt8(from)
  }
  return {
    next,
    count: (type) => wholeLength(next(type)),
    skip: (type, many) => void over(many * sizeOf(type)),
    look: (watch) => look(watch, at, bytes.length),
  }
}

function wholeLength(value: number, line?: number): number {
  if (Number.isInteger(value) && value >= 0) return value
  throw new MeshFault('intake.meshNumberNotRead', { found: String(value) }, line)
}
