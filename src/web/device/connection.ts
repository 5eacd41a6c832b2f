/**
 * The connection to the server: one socket for all documents, and what is known of the server. Works on without it
 * and comes back by itself.
 */
import { HocuspocusProvider, HocuspocusProviderWebsocket } from '@hocuspocus/provider'
import type * as Y from 'yjs'
import { type Hello, protocol } from '#replica'
import { createListeners, type Listeners } from './listeners.ts'

export type Sync = Pick<Listeners, 'listen'> & {
  /** Edits that the server has not said it has; undefined before the first meeting. */
  readonly waiting: () => number | undefined
  readonly close: () => void
}

export type Connection = Pick<Listeners, 'listen'> & {
  readonly online: () => boolean
  readonly hello: () => Hello | undefined
  /** Asks the server again what it is and whether this browser may in. */
  readonly greet: () => Promise<void>
  readonly share: (name: string, doc: Y.Doc) => Sync
  readonly close: () => void
}

const mostDelayMs = 10_000

export function openConnection(place: Pick<Location, 'protocol' | 'host'>): Connection {
  const listeners = createListeners()
  let online = false
  let hello: Hello | undefined
  const greet = async (): Promise<void> => {
    hello = (await askHello()) ?? hello
    listeners.tell()
  }
  const socket = new HocuspocusProviderWebsocket({
    url: `${place.protocol === 'https:' ? 'wss' : 'ws'}://${place.host}/sync?protocol=${protocol}&app=${__APP_VERSION__}`,
    delay: 500,
    minDelay: 500,
    maxDelay: mostDelayMs,
    onStatus: ({ status }) => {
      const now = status === 'connected'
      if (now && !online) void greet()
      online = now
      listeners.tell()
    },
  })
  // What was edited while there was no socket goes with the meeting of each document. Sent once more from the queue,
  // it would be acknowledged apart, and those acknowledgements be counted for edits that are still on their way.
  socket.on('open', () => Object.assign(socket, { messageQueue: [] }))
  return {
    listen: listeners.listen,
    online: () => online,
    hello: () => hello,
    greet,
    share: (name, doc) => shareDocument(socket, name, doc),
    close: () => socket.destroy(),
  }
}

/** Undefined when the server does not answer, or something else answers in its place. */
async function askHello(): Promise<Hello | undefined> {
  try {
    const answer = await fetch('/api/hello', { headers: { accept: 'application/json' } })
    return answer.ok ? ((await answer.json()) as Hello) : undefined
  } catch {
    return undefined
  }
}

function shareDocument(websocketProvider: HocuspocusProviderWebsocket, name: string, document: Y.Doc): Sync {
  const listeners = createListeners()
  let met = false
  const provider = new HocuspocusProvider({
    websocketProvider,
    name,
    document,
    token: 'page',
    onSynced: () => {
      met = true
      listeners.tell()
    },
    onUnsyncedChanges: listeners.tell,
    onAuthenticationFailed: listeners.tell,
  })
  provider.attach()
  return {
    listen: listeners.listen,
    waiting: () => (met ? provider.unsyncedChanges : undefined),
    close: () => provider.destroy(),
  }
}
