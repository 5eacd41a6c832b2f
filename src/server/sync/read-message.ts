/** A message on the socket, taken apart as far as the server needs: whatever is not one is told, never guessed. */
import * as Y from 'yjs'

export type SocketMessage =
  | { readonly kind: 'ask'; readonly document: string; readonly vector: Uint8Array }
  | {
      readonly kind: 'edit'
      readonly document: string
      readonly update: Uint8Array
      /** Everything the page has and the server had not; else one edit as it was made. */
      readonly isMeeting: boolean
    }
  | { readonly kind: 'presence'; readonly document: string; readonly bytes: number }
  | { readonly kind: 'sign-in' | 'who' | 'leave'; readonly document: string }

/** Numbers of the protocol: of a message, and of one that carries a part of a document. */
const types = { sync: 0, presence: 1, signIn: 2, who: 3, syncReply: 4, leave: 7 } as const
const parts = { ask: 0, meeting: 1, edit: 2 } as const

const mostNameBytes = 80

/** Undefined for anything that a page never sends, notes to all other pages included. */
export function readMessage(bytes: Uint8Array): SocketMessage | undefined {
  const cursor: Cursor = { bytes, at: 0 }
  try {
    const name = readBytes(cursor)
    if (name.length > mostNameBytes) return undefined
    const document = new TextDecoder('utf-8', { fatal: true }).decode(name)
    return readBody(cursor, document)
  } catch {
    return undefined
  }
}

/** Throws where the message ends too early. */
function readBody(cursor: Cursor, document: string): SocketMessage | undefined {
  switch (readNumber(cursor)) {
    case types.sync:
    case types.syncReply:
      return readPart(cursor, document)
    case types.presence:
      return { kind: 'presence', document, bytes: readBytes(cursor).length }
    case types.signIn:
      return { kind: 'sign-in', document }
    case types.who:
      return { kind: 'who', document }
    case types.leave:
      return { kind: 'leave', document }
    default:
      return undefined
  }
}

function readPart(cursor: Cursor, document: string): SocketMessage | undefined {
  const part = readNumber(cursor)
  const given = readBytes(cursor)
  if (part === parts.ask) return { kind: 'ask', document, vector: given }
  if (part !== parts.meeting && part !== parts.edit) return undefined
  return { kind: 'edit', document, update: given, isMeeting: part === parts.meeting }
}

/**
 * Whether the bytes inside can be read to their end. A torn update would be on the disk before the document refuses
 * it, and stand in the way of every later reader.
 */
export function isWhole(message: SocketMessage): boolean {
  try {
    if (message.kind === 'ask') Y.decodeStateVector(message.vector)
    if (message.kind === 'edit') {
      Y.decodeUpdate(message.update)
      Y.applyUpdate(new Y.Doc(), message.update)
    }
    return true
  } catch {
    return false
  }
}

/** An update with neither content nor removals. */
export const isEmpty = (update: Uint8Array): boolean =>
  update.length === 2 && update[0] === 0 && update[1] === 0

type Cursor = { readonly bytes: Uint8Array; at: number }

/** Seven bits a byte, the lowest first. */
function readNumber(cursor: Cursor): number {
  let number = 0
  for (let factor = 1; factor <= 2 ** 28; factor *= 128) {
    const byte = cursor.bytes[cursor.at]
    if (byte === undefined) break
    cursor.at += 1
    number += (byte & 127) * factor
    if (byte < 128) return number
  }
  throw new RangeError('message: ends within a number')
}

function readBytes(cursor: Cursor): Uint8Array {
  const length = readNumber(cursor)
  const end = cursor.at + length
  if (end > cursor.bytes.length) throw new RangeError('message: ends within its bytes')
  const found = cursor.bytes.subarray(cursor.at, end)
  cursor.at = end
  return found
}
