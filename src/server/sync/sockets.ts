/** The sockets of `/sync`: who may open one, who still answers, and how they all end. */
import type { IncomingMessage } from 'node:http'
import type { Duplex } from 'node:stream'
import { type WebSocket, WebSocketServer } from 'ws'
import type { Sees } from '#replica'
import { answerRefused } from '../http/raw-answer.ts'
import type { Refusal } from '../http/refusal.ts'
import { refusal } from '../http/refusal.ts'
import type { Session } from '../http/session.ts'
import type { ServerLimits } from '../limits.ts'
import type { ServerOptions } from '../options.ts'
import { closing, GuardedSocket } from './guarded-socket.ts'
import type { SharedDocuments, SocketContext } from './shared-documents.ts'

export type Sockets = {
  /** Opens the socket, or answers with the refusal. */
  readonly upgrade: (asked: Upgrade, gate: SocketGate) => void
  /** Closes the sockets that were opened with these cookies. */
  readonly signedOut: (cookies: string) => void
  /** Closes all; resolves when they are closed and every edit that came is on the disk. */
  readonly close: () => Promise<void>
}

export type Upgrade = {
  readonly request: IncomingMessage
  readonly socket: Duplex
  readonly head: Buffer
}

/** Who opened a socket, and until when they may. */
type Bearer = { readonly cookies: string; readonly untilMs: number }

export type SocketGate = {
  readonly refused: Refusal | undefined
  readonly session: Session | undefined
}

export type SocketsOptions = Pick<ServerOptions, 'limits' | 'nowMs'>

export function createSockets(documents: SharedDocuments, { limits, nowMs }: SocketsOptions): Sockets {
  const server = new WebSocketServer({
    noServer: true,
    maxPayload: limits.messageBytes,
    perMessageDeflate: false,
  })
  const bearers = new Map<WebSocket, Bearer>()
  const hasEnded = (socket: WebSocket): boolean => (bearers.get(socket)?.untilMs ?? 0) <= nowMs()
  const watch = watchSockets(server, { everyMs: limits.heartbeatMs, hasEnded })
  return {
    upgrade: ({ request, socket, head }, gate) => {
      const { session } = gate
      const refused = gate.refused ?? (server.clients.size < limits.sockets ? undefined : full(limits))
      if (refused || session === undefined) {
        answerRefused(socket, refused ?? refusal(401, 'server.signInFirst'))
        return
      }
      server.handleUpgrade(request, socket, head, (webSocket) => {
        bearers.set(webSocket, { cookies: request.headers.cookie ?? '', untilMs: session.untilMs })
        webSocket.on('close', () => bearers.delete(webSocket))
        // Too large a message, or none of the protocol: the library closes the socket, and that is all.
        webSocket.on('error', () => webSocket.terminate())
        share(webSocket, { documents, limits, request, sees: session.sees })
      })
    },
    signedOut: (given) => {
      for (const [socket, { cookies }] of bearers)
        if (cookies === given) socket.close(closing.notUnderstood, 'signed out')
    },
    close: async () => {
      clearInterval(watch)
      await Promise.all([...server.clients].map((socket) => closed(socket, limits.closeMs)))
      server.close()
      await documents.settled()
    },
  }
}

const full = ({ sockets }: ServerLimits): Refusal =>
  refusal(503, 'server.tooManySockets', { mostCount: sockets }, { 'Retry-After': '10' })

function share(
  webSocket: WebSocket,
  {
    documents,
    limits,
    request,
    sees,
  }: {
    readonly documents: SharedDocuments
    readonly limits: ServerLimits
    readonly request: IncomingMessage
    readonly sees: Sees
  },
): void {
  const socket = new GuardedSocket(webSocket, { limits, sees })
  const context: SocketContext = { sees, socket }
  documents.hocuspocus.handleConnection(socket as unknown as WebSocket, request, context)
}

type Watching = { readonly everyMs: number; readonly hasEnded: (socket: WebSocket) => boolean }

/**
 * Ends sockets whose session has ended, and those whose other side has gone without a word: each is asked, and has
 * until the next look to answer.
 */
function watchSockets(server: WebSocketServer, { everyMs, hasEnded }: Watching): NodeJS.Timeout {
  const asked = new WeakSet<WebSocket>()
  const watch = setInterval(() => {
    for (const socket of server.clients) {
      if (hasEnded(socket)) {
        socket.close(closing.notUnderstood, 'signed out')
        continue
      }
      if (asked.has(socket)) {
        socket.terminate()
        continue
      }
      asked.add(socket)
      socket.once('pong', () => asked.delete(socket))
      socket.ping()
    }
  }, everyMs)
  return watch.unref()
}

async function closed(socket: WebSocket, mostMs: number): Promise<void> {
  await new Promise<void>((resolve) => {
    const timer = setTimeout(() => socket.terminate(), mostMs)
    socket.once('close', () => {
      clearTimeout(timer)
      resolve()
    })
    socket.close(closing.goingAway)
  })
}
