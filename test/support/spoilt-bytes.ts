/** Bytes of a good file spoilt in one of many ways, by a seeded generator. */
import { uniformInt } from 'pure-rand/distribution/uniformInt'
import type { RandomGenerator } from 'pure-rand/types/RandomGenerator'
import { joined } from './mesh-files.ts'

/** What stands where a number was, in texts and in JSON. */
const oddWords = [
  'nan',
  '-inf',
  '1e999',
  '99999999999',
  '-1',
  '',
  '0x10',
  '1,5',
  'null',
  '[]',
  '{}',
  '1'.repeat(90),
]
/** Four bytes that are trouble as a float, a count or an offset. */
const oddQuads = [0xffffffff, 0x7fc00000, 0x7f800000, 0x80000000, 0x7f7fffff, 0x00000001, 0x01000000]

export function spoilt(bytes: Uint8Array, random: RandomGenerator): Uint8Array {
  const pick = (most: number) => uniformInt(random, 0, Math.max(most, 0))
  const at = pick(bytes.length)
  const few = pick(40)
  switch (pick(6)) {
    case 0:
      return bytes.slice(0, at)
    case 1:
      return joined(bytes.subarray(0, at), bytes.subarray(at + few))
    case 2:
      return joined(bytes.subarray(0, at), bytes.subarray(pick(at), at + few), bytes.subarray(at))
    case 3: {
      const changed = bytes.slice()
      for (let i = 0; i <= few; i++) changed[pick(bytes.length - 1)] = pick(255)
      return changed
    }
    case 4: {
      const changed = bytes.slice()
      const place = Math.max(0, Math.min(at, bytes.length - 4))
      if (bytes.length < 4) return changed
      new DataView(changed.buffer).setUint32(place, oddQuads[pick(oddQuads.length - 1)]!, pick(1) === 0)
      return changed
    }
    default:
      return withOddWord(bytes, at, oddWords[pick(oddWords.length - 1)]!)
  }
}

/** The first number after `from` gives way to another word. */
function withOddWord(bytes: Uint8Array, from: number, word: string): Uint8Array {
  const isDigit = (byte: number | undefined) => byte !== undefined && byte >= 48 && byte <= 57
  let start = from
  while (start < bytes.length && !isDigit(bytes[start])) start++
  let end = start
  while (isDigit(bytes[end])) end++
  return joined(bytes.subarray(0, start), new TextEncoder().encode(word), bytes.subarray(end))
}
