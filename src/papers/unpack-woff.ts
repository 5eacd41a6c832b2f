/**
 * A `.woff` as the plain font inside it. The writer reads packed fonts too, but unpacks a table anew for every glyph.
 * SOURCE: W3C, WOFF File Format 1.0, 2012, sections 3 to 5.
 */
const headerLength = 44
const entryLength = 20
const signature = 0x774f4646

type Entry = { readonly tag: number; readonly checksum: number; readonly data: Uint8Array }

/** Bytes that are not a `.woff` come back as they are. */
export async function unpackWoff(bytes: Uint8Array): Promise<Uint8Array> {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength)
  if (bytes.length < headerLength || view.getUint32(0) !== signature) return bytes
  const entries = await Promise.all(
    Array.from({ length: view.getUint16(12) }, (_, index) =>
      readEntry(view, headerLength + index * entryLength),
    ),
  )
  return assemble(view.getUint32(4), entries)
}

async function readEntry(view: DataView, at: number): Promise<Entry> {
  const [offset, packed, plain] = [view.getUint32(at + 4), view.getUint32(at + 8), view.getUint32(at + 12)]
  const stored = new Uint8Array(view.buffer, view.byteOffset + offset, packed)
  return {
    tag: view.getUint32(at),
    checksum: view.getUint32(at + 16),
    data: packed < plain ? await inflate(stored) : stored,
  }
}

async function inflate(packed: Uint8Array): Promise<Uint8Array> {
  const stream = new Blob([packed.slice()]).stream().pipeThrough(new DecompressionStream('deflate'))
  return new Uint8Array(await new Response(stream).arrayBuffer())
}

const padded = (length: number): number => (length + 3) & ~3

function assemble(flavour: number, entries: readonly Entry[]): Uint8Array {
  const start = 12 + 16 * entries.length
  const bytes = new Uint8Array(entries.reduce((sum, entry) => sum + padded(entry.data.length), start))
  const view = new DataView(bytes.buffer)
  const log = Math.floor(Math.log2(Math.max(1, entries.length)))
  view.setUint32(0, flavour)
  view.setUint16(4, entries.length)
  view.setUint16(6, 16 * 2 ** log)
  view.setUint16(8, log)
  view.setUint16(10, 16 * entries.length - 16 * 2 ** log)
  let at = start
  entries.forEach(({ tag, checksum, data }, index) => {
    const row = 12 + 16 * index
    view.setUint32(row, tag)
    view.setUint32(row + 4, checksum)
    view.setUint32(row + 8, at)
    view.setUint32(row + 12, data.length)
    bytes.set(data, at)
    at += padded(data.length)
  })
  return bytes
}
