/** The server: pages, routes and shared documents on one port, from `listen` to `close`. */
import { randomUUID } from 'node:crypto'
import { createServer as createHttpServer, type Server } from 'node:http'
import type { AddressInfo } from 'node:net'
import { getRequestListener } from '@hono/node-server'
import { createApp } from './app.ts'
import { refusedAtGate } from './http/gate.ts'
import { type HostNames, hostNames, isLoopback } from './http/host-names.ts'
import { answerRefused, sendRefused } from './http/raw-answer.ts'
import { type Refusal, refusal } from './http/refusal.ts'
import { createSessions } from './http/session.ts'
import { createTries } from './http/tries.ts'
import { listening } from './listening.ts'
import { checkOptions, type ServerOptions } from './options.ts'
import { createPages } from './routes/pages.ts'
import { ServerError } from './server-error.ts'
import { createSharedDocuments } from './sync/shared-documents.ts'
import { createSockets, type Sockets } from './sync/sockets.ts'

export type ListenAddress = { readonly host: string; readonly port: number }

export type HardstandServer = {
  /** Resolves with the port that was taken when 0 was asked for. Fails with a `ServerError`. */
  readonly listen: (address: ListenAddress) => Promise<ListenAddress>
  /** Lets everybody go and waits for their edits to reach the disk. Closing twice is no fault. */
  readonly close: () => Promise<void>
}

/** A server that is set up and does not listen yet; a wrong set-up fails here, with a `ServerError`. */
export function createServer(options: ServerOptions): HardstandServer {
  checkOptions(options)
  const { passphrases, sessionKey, nowMs, limits } = options
  const sessions = createSessions({ passphrases, key: sessionKey, nowMs })
  const sockets = createSockets(createSharedDocuments(options), { limits, nowMs })
  const app = createApp(
    { ...options, run: randomUUID(), sessions, tries: createTries(nowMs), signedOut: sockets.signedOut },
    createPages(options.webFolder),
  )
  const handle = getRequestListener(app.fetch, { overrideGlobalObjects: false })
  const gate: { names: HostNames } = { names: hostNames('localhost', options.names) }
  const http = createHttpServer((request, response) => {
    const refused = refusedAtGate(request, { names: gate.names, socket: false })
    if (refused) sendRefused(response, refused)
    else void handle(request, response)
  })
  http.on('upgrade', (request, socket, head) => {
    const refused = wrongPath(request.url) ?? refusedAtGate(request, { names: gate.names, socket: true })
    sockets.upgrade(
      { request, socket, head },
      { refused, session: sessions.sessionOf(request.headers.cookie) },
    )
  })
  http.on('clientError', (_error, socket) => {
    // Behind an answer that was begun, a second one would be taken for a part of it.
    if ('bytesWritten' in socket && socket.bytesWritten === 0 && socket.writable)
      answerRefused(socket, refusal(400, 'server.requestNotRead'))
    else socket.destroy()
  })
  return {
    listen: async ({ host, port }) => {
      if (!isLoopback(host) && !sessions.closed)
        throw new ServerError(
          'server.passphraseNeeded',
          { host },
          `host: open to others, got ${host}, expected a passphrase`,
        )
      gate.names = hostNames(host, options.names)
      await listening(http, { host, port })
      return { host, port: (http.address() as AddressInfo).port }
    },
    close: () => close(http, { sockets, closeMs: limits.closeMs }),
  }
}

function wrongPath(url = ''): Refusal | undefined {
  return /^\/sync(\?|$)/.test(url) ? undefined : refusal(404, 'server.notFound')
}

/** New requests are not taken; those under way have their time, then they are cut. */
async function close(
  http: Server,
  { sockets, closeMs }: { readonly sockets: Sockets; readonly closeMs: number },
): Promise<void> {
  const ended = new Promise<void>((resolve) => {
    http.close(() => resolve())
  })
  http.closeIdleConnections()
  const cut = setTimeout(() => http.closeAllConnections(), closeMs)
  await sockets.close()
  await ended
  clearTimeout(cut)
}
