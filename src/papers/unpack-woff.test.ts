import { readFile } from 'node:fs/promises'
import { createRequire } from 'node:module'
import { describe, expect, it } from 'vitest'
import { unpackWoff } from './unpack-woff.ts'

const packed = new Uint8Array(
  await readFile(
    createRequire(import.meta.url).resolve('@fontsource/dosis/files/dosis-latin-600-normal.woff'),
  ),
)

describe('unpackWoff', () => {
  it('gives back the font inside, as long as its head says, with sums that match', async () => {
    const font = await unpackWoff(packed)
    expect(font.length).toBe(new DataView(packed.buffer).getUint32(16))
    const view = new DataView(font.buffer)
    for (let row = 12; row < 12 + 16 * view.getUint16(4); row += 16) {
      const tag = String.fromCharCode(...font.slice(row, row + 4))
      if (tag === 'head') continue
      const [offset, length] = [view.getUint32(row + 8), view.getUint32(row + 12)]
      let sum = 0
      for (let at = offset; at < offset + length; at += 4)
        sum = (sum + (view.byteLength >= at + 4 ? view.getUint32(at) : 0)) >>> 0
      expect(sum, tag).toBe(view.getUint32(row + 4))
    }
  })

  it('leaves alone what is not packed', async () => {
    const plain = new Uint8Array([0, 1, 0, 0])
    expect(await unpackWoff(plain)).toBe(plain)
  })
})
