/** Bytes from outside to text: bounded, and only what is text. */
import type { Problem } from './problem.ts'

export type Encoding = 'utf-8' | 'utf-16le' | 'utf-16be' | 'windows-1252'

export type Decoded =
  | { readonly ok: true; readonly text: string; readonly encoding: Encoding }
  | { readonly ok: false; readonly problem: Problem }

/**
 * Decodes UTF-8, UTF-16 with its byte order mark, and what is neither as Windows-1252, in which every byte is a letter;
 * every line end becomes a line feed.
 * @param file.bytes the file. @param file.mostBytes largest size that is looked at at all.
 * @returns the text, or why there is none: too large, empty, binary.
 */
export function decodeText(file: { readonly bytes: Uint8Array; readonly mostBytes: number }): Decoded {
  const { bytes, mostBytes } = file
  if (bytes.length > mostBytes) return refuse('intake.fileTooLarge', { sizeBytes: bytes.length, mostBytes })
  const marked = markedEncoding(bytes)
  if (marked === undefined && looksBinary(bytes)) return refuse('intake.binary', { sizeBytes: bytes.length })
  const encoding = marked ?? 'utf-8'
  const whole = decodeAs(bytes, encoding)
  const text = whole ?? new TextDecoder('windows-1252').decode(bytes)
  if (marked !== undefined && (whole === undefined || hasControls(text)))
    return refuse('intake.binary', { sizeBytes: bytes.length })
  if (text.trim() === '') return refuse('intake.empty', { sizeBytes: bytes.length })
  return {
    ok: true,
    text: text.includes('\r') ? text.replace(/\r\n?/g, '\n') : text,
    encoding: whole === undefined ? 'windows-1252' : encoding,
  }
}

function refuse(code: string, data: Problem['data']): Decoded {
  return { ok: false, problem: { code, severity: 'error', data } }
}

function markedEncoding(bytes: Uint8Array): 'utf-16le' | 'utf-16be' | undefined {
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return 'utf-16le'
  return bytes[0] === 0xfe && bytes[1] === 0xff ? 'utf-16be' : undefined
}

/** Control characters other than tab, line feed, form feed and return never stand in a text file. */
function looksBinary(bytes: Uint8Array): boolean {
  for (let at = 0; at < bytes.length; at++) {
    const byte = bytes[at]!
    if (byte < 32 && (byte < 9 || byte === 11 || byte > 13)) return true
  }
  return false
}

function hasControls(text: string): boolean {
  for (let at = 0; at < text.length; at++) {
    const unit = text.charCodeAt(at)
    if (unit < 32 && (unit < 9 || unit === 11 || unit > 13)) return true
  }
  return false
}

function decodeAs(bytes: Uint8Array, encoding: Encoding): string | undefined {
  try {
    return new TextDecoder(encoding, { fatal: true }).decode(bytes)
  } catch {
    return undefined
  }
}
