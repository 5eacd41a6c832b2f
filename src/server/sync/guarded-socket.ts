/**
 * A socket as the document server sees it: only messages that can be read, about documents that are open or being
 * opened, reach it. A page that sends anything else, or that does not read what it is sent, loses its socket, and
 * nobody else notices. The document server keeps, without bound, whatever comes before a document is open, and takes
 * a document that is opened again too soon for the one that is being closed: both are kept from it here.
 */
import { EventEmitter } from 'node:events'
import type { WebSocket } from 'ws'
import type { Sees } from '#replica'
import type { ServerLimits } from '../limits.ts'
import { documentKind, mayHave } from './document-name.ts'
import { isWhole, readMessage, type SocketMessage } from './read-message.ts'

export type SocketLimits = Pick<
  ServerLimits,
  'presenceBytes' | 'waitingBytes' | 'documentsOnSocket' | 'messageBytes'
>

/** Codes of closing, from RFC 6455 and its registry. */
export const closing = { goingAway: 1001, notUnderstood: 1008, tryAgain: 1013 } as const

type Standing =
  | { readonly kind: 'open' }
  /** The page has left it, and the document server has not said that it knows; what comes meanwhile waits. */
  | { readonly kind: 'leaving'; readonly waiting: Buffer[] }

export class GuardedSocket extends EventEmitter {
  readonly #socket: WebSocket
  readonly #limits: SocketLimits
  readonly #sees: Sees
  readonly #named = new Set<string>()
  readonly #standing = new Map<string, Standing>()

  constructor(socket: WebSocket, { limits, sees }: { readonly limits: SocketLimits; readonly sees: Sees }) {
    super()
    this.#socket = socket
    this.#limits = limits
    this.#sees = sees
    socket.on('message', (data, isBinary) => this.#take(data as Buffer, isBinary))
    socket.on('pong', () => this.emit('pong'))
    socket.on('close', (code, reason) => this.emit('close', code, reason))
  }

  get readyState(): number {
    return this.#socket.readyState
  }

  /** Set by the document server; messages are always Node's buffers. */
  set binaryType(_type: string) {}

  send(data: Uint8Array, done: (error?: Error) => void = () => {}): void {
    if (this.#socket.bufferedAmount > this.#limits.waitingBytes) this.#socket.terminate()
    this.#socket.send(data, done)
    const message = readMessage(data)
    if (message?.kind === 'leave') this.#closed(message.document)
  }

  ping(): void {
    this.#socket.ping()
  }

  close(code: number, reason = ''): void {
    // The document server has codes of its own; the ones below 3000 that it uses are all allowed on a socket.
    this.#socket.close(code, reason)
  }

  #take(data: Buffer, isBinary: boolean): void {
    // A socket that is being closed still delivers what came before the other side heard of it.
    if (this.#socket.readyState !== this.#socket.OPEN) return
    const message = isBinary ? readMessage(data) : undefined
    if (message !== undefined && this.#isAllowed(message)) this.#pass(message, data)
    else this.#refuse()
  }

  #refuse(): void {
    this.#socket.close(closing.notUnderstood, 'message not understood')
  }

  #isAllowed(message: SocketMessage): boolean {
    if (message.kind === 'presence' && message.bytes > this.#limits.presenceBytes) return false
    if (documentKind(message.document) === undefined) return false
    this.#named.add(message.document)
    return this.#named.size <= this.#limits.documentsOnSocket && isWhole(message)
  }

  #pass({ kind, document }: SocketMessage, data: Buffer): void {
    const standing = this.#standing.get(document)
    if (standing?.kind === 'leaving') {
      standing.waiting.push(data)
      const bytes = standing.waiting.reduce((sum, { length }) => sum + length, 0)
      if (bytes > this.#limits.messageBytes) this.#refuse()
      return
    }
    // One who may not have it is told so, and nothing else is heard.
    if (!mayHave(this.#sees, document)) {
      if (kind === 'sign-in') this.emit('message', data)
      return
    }
    // A page may have sent something before it heard that a document was closed.
    if (standing === undefined && kind !== 'sign-in') return
    this.#standing.set(document, kind === 'leave' ? { kind: 'leaving', waiting: [] } : { kind: 'open' })
    this.emit('message', data)
  }

  /** The document server has closed a document. */
  #closed(document: string): void {
    const standing = this.#standing.get(document)
    this.#standing.delete(document)
    if (standing?.kind === 'leaving') {
      for (const data of standing.waiting) this.#take(data, true)
      return
    }
    // Not as the page asked: it would stay connected, and never open the document again.
    if (standing) this.close(closing.tryAgain)
  }
}
