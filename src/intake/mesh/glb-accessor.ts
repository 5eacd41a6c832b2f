/** Numbers of a GLB file by the accessor that describes them, held against the bytes that are really there. */
import { type GlbFile, refuseCompressed } from './glb-file.ts'
import { has, type JsonPart, partAt, partFault, textIn, wholeIn } from './glb-json.ts'
import { MeshFault } from './mesh-fault.ts'

export type Numbers = {
  readonly count: number
  /** Component `k` of row `i`. */
  readonly at: (i: number, k: number) => number
}

type Component = {
  readonly bytes: number
  /** What a whole number stands for 1 with, when it is normalised. */
  readonly most: number
  readonly read: (data: DataView, at: number) => number
}

const components: ReadonlyMap<number, Component> = new Map([
  [5120, { bytes: 1, most: 0x7f, read: (data: DataView, at: number) => data.getInt8(at) }],
  [5121, { bytes: 1, most: 0xff, read: (data: DataView, at: number) => data.getUint8(at) }],
  [5122, { bytes: 2, most: 0x7fff, read: (data: DataView, at: number) => data.getInt16(at, true) }],
  [5123, { bytes: 2, most: 0xffff, read: (data: DataView, at: number) => data.getUint16(at, true) }],
  [5125, { bytes: 4, most: 0xffffffff, read: (data: DataView, at: number) => data.getUint32(at, true) }],
  [5126, { bytes: 4, most: 1, read: (data: DataView, at: number) => data.getFloat32(at, true) }],
])

/** How many numbers a row of each type has. */
const widths: Readonly<Record<string, number>> = { SCALAR: 1, VEC3: 3 }

export function numbersOf(file: GlbFile, index: number, type: 'SCALAR' | 'VEC3'): Numbers {
  const accessor = partAt(file.root, 'accessors', index)
  const component = components.get(wholeIn(accessor, 'componentType'))
  if (component === undefined) throw partFault(`${accessor.place}/componentType`)
  if (textIn(accessor, 'type') !== type) throw partFault(`${accessor.place}/type`)
  if (has(accessor, 'sparse')) throw new MeshFault('intake.meshNeeds', { found: 'sparse' })
  const width = widths[type]!
  const { from, end, stride } = blockOf(file, accessor, component.bytes * width)
  const count = wholeIn(accessor, 'count')
  const needed = count === 0 ? from : from + stride * (count - 1) + component.bytes * width
  if (needed > end) throw new MeshFault('intake.meshCutShort', { sizeBytes: end, neededBytes: needed })
  const { read, bytes, most } = component
  const share = accessor.value.normalized === true ? most : 1
  return {
    count,
    at: (i, k) => read(file.data, from + stride * i + bytes * k) / share,
  }
}

type Block = { readonly from: number; readonly end: number; readonly stride: number }

/** Where the rows of an accessor begin, where their view of the bytes ends, and how far apart they lie. */
function blockOf({ root, data }: GlbFile, accessor: JsonPart, rowBytes: number): Block {
  const view = partAt(root, 'bufferViews', wholeIn(accessor, 'bufferView'))
  refuseCompressed(view)
  const buffer = partAt(root, 'buffers', wholeIn(view, 'buffer'))
  if (buffer.place !== 'buffers/0' || has(buffer, 'uri')) throw new MeshFault('intake.meshElsewhere', {})
  const start = wholeIn(view, 'byteOffset', 0)
  const end = start + wholeIn(view, 'byteLength')
  if (end > data.byteLength)
    throw new MeshFault('intake.meshCutShort', { sizeBytes: data.byteLength, neededBytes: end })
  const stride = wholeIn(view, 'byteStride', rowBytes)
  if (stride < 1 || stride > 252 + rowBytes) throw partFault(`${view.place}/byteStride`)
  return { from: start + wholeIn(accessor, 'byteOffset', 0), end, stride }
}
