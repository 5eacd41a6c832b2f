/**
 * A socket as the document server sees it: only messages that can be read reach it. A page that sends anything else,
 * or that does not read what it is sent, loses its socket, and nobody else notices.
 */
import { EventEmitter } from 'node:events'
import type { WebSocket } from 'ws'
import type { ServerLimits } from '../limits.ts'
import { documentKind } from './document-name.ts'
import { isWhole, readMessage, type SocketMessage } from './read-message.ts'

export type SocketLimits = Pick<ServerLimits, 'presenceBytes' | 'waitingBytes' | 'documentsOnSocket'>

/** Codes of closing, from RFC 6455 and its registry. */
export const closing = { goingAway: 1001, notUnderstood: 1008, tryAgain: 1013 } as const

export class GuardedSocket extends EventEmitter {
  readonly #socket: WebSocket
  readonly #limits: SocketLimits
  readonly #documents = new Set<string>()

  constructor(socket: WebSocket, limits: SocketLimits) {
    super()
    this.#socket = socket
    this.#limits = limits
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
    if (message === undefined || !this.#isAllowed(message)) {
      this.#socket.close(closing.notUnderstood, 'message not understood')
      return
    }
    this.emit('message', data)
  }

  #isAllowed(message: SocketMessage): boolean {
    if (message.kind === 'presence' && message.bytes > this.#limits.presenceBytes) return false
    if (documentKind(message.document) === undefined) return false
    this.#documents.add(message.document)
    return this.#documents.size <= this.#limits.documentsOnSocket && isWhole(message)
  }
}
