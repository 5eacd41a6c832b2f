/** Bytes to text: refuses what is too large, binary, empty or not UTF-8; takes off a byte order mark. */
import { limits } from './limits.ts'
import type { ProblemData } from './problem.ts'

export type Decoded =
  | { readonly ok: true; readonly text: string }
  | { readonly ok: false; readonly code: string; readonly data: ProblemData }

const refuse = (code: string, data: ProblemData = {}): Decoded => ({ ok: false, code, data })

/** The size is looked at first, so that a huge file costs nothing. */
export const decodeBytes = (bytes: Uint8Array): Decoded => {
  if (bytes.length > limits.bytes) return refuse('job.tooLarge', { bytes: bytes.length, most: limits.bytes })
  if (startsLikeUtf16(bytes)) return refuse('job.notUtf8', {})
  if (bytes.includes(0)) return refuse('job.binary', { byte: bytes.indexOf(0) })
  const text = decodeUtf8(bytes)
  if (text === undefined) return refuse('job.notUtf8', {})
  if (text.trim() === '') return refuse('job.empty')
  return { ok: true, text }
}

const startsLikeUtf16 = ([first, second]: Uint8Array): boolean =>
  (first === 0xff && second === 0xfe) || (first === 0xfe && second === 0xff)

const decodeUtf8 = (bytes: Uint8Array): string | undefined => {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes)
  } catch {
    return undefined
  }
}
