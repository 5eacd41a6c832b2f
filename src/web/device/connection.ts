/**
 * The connection to the server: one socket for all documents, and what is known of the server. Works on without it
 * and comes back by itself.
 */
import { HocuspocusProviderWebsocket } from '@hocuspocus/provider'
import type * as Y from 'yjs'
import { type Hello, protocol } from '#replica'
import { type DocumentSync, type Sync, syncDocument } from './document-sync.ts'
import { createListeners, type Listeners } from './listeners.ts'

export type Connection = Pick<Listeners, 'listen'> & {
  readonly online: () => boolean
  readonly hello: () => Hello | undefined
  /** The server asks for a passphrase that this browser has not given, or gave too long ago. */
  readonly mustSignIn: () => boolean
  /** Asks the server again what it is and whether this browser may in, and connects without a wait if it may. */
  readonly greet: () => Promise<void>
  readonly share: (name: string, doc: Y.Doc) => Sync
  readonly close: () => void
}

const leastDelayMs = 500
const mostDelayMs = 10_000
/** A socket that was closed sooner was of no use: the next one waits longer, ms. */
const usefulMs = 5000
/** Code of closing for a message larger than is taken, from RFC 6455. */
const messageTooBig = 1009

export function openConnection(place: Pick<Location, 'protocol' | 'host'>): Connection {
  const listeners = createListeners()
  const shared = new Set<DocumentSync>()
  let online = false
  let hello: Hello | undefined
  let openedMs = 0
  const ask = async (): Promise<void> => {
    hello = (await askHello()) ?? hello
    listeners.tell()
  }
  const socket = new HocuspocusProviderWebsocket({
    url: `${place.protocol === 'https:' ? 'wss' : 'ws'}://${place.host}/sync?protocol=${protocol}&app=${__APP_VERSION__}`,
    delay: leastDelayMs,
    minDelay: leastDelayMs,
    maxDelay: mostDelayMs,
    onStatus: ({ status }) => {
      const now = status === 'connected'
      if (now && !online) void ask()
      online = now
      listeners.tell()
    },
    onOpen: () => {
      openedMs = performance.now()
    },
    onClose: ({ event }) => {
      if (event.code === messageTooBig) largest(shared)?.stop({ code: 'web.serverTakesLess', data: {} })
      const { delay } = socket.configuration
      const soon = online && performance.now() - openedMs < usefulMs
      socket.setConfiguration({ delay: soon ? Math.min(delay * 2, mostDelayMs) : leastDelayMs })
      // The only way to hear that it will not let this browser in: a refused socket says nothing.
      void ask()
    },
  })
  // What was edited while there was no socket goes with the meeting of each document. Sent once more from the queue,
  // it would be acknowledged apart, and those acknowledgements be counted for edits that are still on their way.
  socket.on('open', () => Object.assign(socket, { messageQueue: [] }))
  return {
    listen: listeners.listen,
    online: () => online,
    hello: () => hello,
    mustSignIn: () => hello?.signIn === true,
    greet: async () => {
      await ask()
      if (!online && hello?.signIn !== true) void socket.connect()
    },
    share: (name, document) => {
      const sync = syncDocument(socket, { name, document })
      shared.add(sync)
      return {
        ...sync,
        close: () => {
          shared.delete(sync)
          sync.close()
        },
      }
    },
    close: () => socket.destroy(),
  }
}

/** The one whose message must have been too large. */
const largest = (shared: ReadonlySet<DocumentSync>): DocumentSync | undefined =>
  [...shared].sort((a, b) => b.bytes() - a.bytes())[0]

/** Undefined when the server does not answer, or something else answers in its place. */
async function askHello(): Promise<Hello | undefined> {
  try {
    const answer = await fetch('/api/hello', { headers: { accept: 'application/json' } })
    return answer.ok ? ((await answer.json()) as Hello) : undefined
  } catch {
    return undefined
  }
}
