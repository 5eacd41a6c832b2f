/** Bytes from outside to text: bounded, and only what is text. */
import type { Problem } from './problem.ts'

export type Decoded =
  | { readonly ok: true; readonly text: string }
  | { readonly ok: false; readonly problem: Problem }

/**
 * Decodes UTF-8 text with or without a byte order mark; every line end becomes a line feed.
 * @param file.bytes the file. @param file.mostBytes largest size that is looked at at all.
 * @returns the text, or why there is none: too large, empty, binary, another encoding.
 */
export function decodeText(file: { readonly bytes: Uint8Array; readonly mostBytes: number }): Decoded {
  const { bytes, mostBytes } = file
  if (bytes.length > mostBytes) return refuse('intake.fileTooLarge', { sizeBytes: bytes.length, mostBytes })
  if (isUtf16(bytes)) return refuse('intake.notUtf8', { found: 'utf16' })
  if (looksBinary(bytes)) return refuse('intake.binary', { sizeBytes: bytes.length })
  const text = utf8(bytes)
  if (text === undefined) return refuse('intake.notUtf8', { found: 'unknown' })
  if (text.trim() === '') return refuse('intake.empty', { sizeBytes: bytes.length })
  return { ok: true, text: text.replace(/\r\n?/g, '\n') }
}

function refuse(code: string, data: Problem['data']): Decoded {
  return { ok: false, problem: { code, severity: 'error', data } }
}

function isUtf16(bytes: Uint8Array): boolean {
  return (bytes[0] === 0xff && bytes[1] === 0xfe) || (bytes[0] === 0xfe && bytes[1] === 0xff)
}

/** Control characters other than tab, line feed, form feed and return never stand in a text file. */
function looksBinary(bytes: Uint8Array): boolean {
  return bytes.some((byte) => byte < 9 || byte === 11 || (byte > 13 && byte < 32))
}

function utf8(bytes: Uint8Array): string | undefined {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes)
  } catch {
    return undefined
  }
}
