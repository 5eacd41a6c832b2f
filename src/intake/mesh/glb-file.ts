/** The container of a GLB file: its JSON and its one block of bytes. */
import { asPart, has, type JsonPart, listIn } from './glb-json.ts'
import { MeshFault } from './mesh-fault.ts'
import { mostHeaderBytes } from './mesh-limits.ts'

export type GlbFile = { readonly root: JsonPart; readonly data: DataView }

const [headBytes, chunkHeadBytes] = [12, 8]
const [jsonChunk, dataChunk] = [0x4e4f534a, 0x004e4942]

/** Extensions without which the shapes still come out right: surfaces' looks, lights, remarks. */
const harmless = /^(KHR_(materials|texture|lights|xmp|mesh_quantization)|EXT_texture)/
const compressed: readonly string[] = [
  'KHR_draco_mesh_compression',
  'EXT_meshopt_compression',
  'KHR_meshopt_compression',
]

export function readGlbFile(bytes: Uint8Array): GlbFile {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength)
  if (bytes.length < headBytes + chunkHeadBytes) throw cutShort(bytes, headBytes + chunkHeadBytes)
  const version = view.getUint32(4, true)
  if (version !== 2) throw new MeshFault('intake.meshVersion', { found: version })
  const whole = view.getUint32(8, true)
  if (whole > bytes.length) throw cutShort(bytes, whole)
  const json = chunkAt(view, headBytes, whole)
  if (json.kind !== jsonChunk) throw new MeshFault('intake.meshPart', { part: 'JSON' })
  const root = parsed(bytes.subarray(json.from, json.end))
  const next = json.end + ((4 - (json.end % 4)) % 4)
  const data = next + chunkHeadBytes <= whole ? chunkAt(view, next, whole) : undefined
  const block = data?.kind === dataChunk ? bytes.subarray(data.from, data.end) : new Uint8Array(0)
  checkExtensions(root)
  return { root, data: new DataView(block.buffer, block.byteOffset, block.byteLength) }
}

type Chunk = { readonly kind: number; readonly from: number; readonly end: number }

function chunkAt(view: DataView, at: number, whole: number): Chunk {
  const from = at + chunkHeadBytes
  const end = from + view.getUint32(at, true)
  if (end > whole) throw new MeshFault('intake.meshCutShort', { sizeBytes: whole, neededBytes: end })
  return { kind: view.getUint32(at + 4, true), from, end }
}

function cutShort(bytes: Uint8Array, neededBytes: number): MeshFault {
  return new MeshFault('intake.meshCutShort', { sizeBytes: bytes.length, neededBytes })
}

function parsed(bytes: Uint8Array): JsonPart {
  if (bytes.length > mostHeaderBytes)
    throw new MeshFault('intake.meshHeaderTooLong', { sizeBytes: bytes.length, mostBytes: mostHeaderBytes })
  let value: unknown
  try {
    value = JSON.parse(new TextDecoder('utf-8', { fatal: true }).decode(bytes))
  } catch {
    throw new MeshFault('intake.meshPart', { part: 'JSON' })
  }
  return asPart(value, 'JSON')
}

/** Refuses what would change the shape and is not understood. */
function checkExtensions(root: JsonPart): void {
  for (const name of listIn(root, 'extensionsRequired')) {
    if (typeof name !== 'string') throw new MeshFault('intake.meshPart', { part: 'extensionsRequired' })
    if (compressed.includes(name)) throw new MeshFault('intake.meshCompressed', { found: name })
    if (!harmless.test(name)) throw new MeshFault('intake.meshNeeds', { found: name.slice(0, 40) })
  }
}

/** Refuses a part that is there only in compressed form. */
export function refuseCompressed(part: JsonPart): void {
  if (!has(part, 'extensions')) return
  const extensions = asPart(part.value.extensions, `${part.place}/extensions`)
  const name = compressed.find((each) => has(extensions, each))
  if (name !== undefined) throw new MeshFault('intake.meshCompressed', { found: name })
}
