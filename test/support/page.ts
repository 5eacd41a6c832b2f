// A page as the server meets it: documents over a real socket, from the origin of the server itself.
import { HocuspocusProvider, HocuspocusProviderWebsocket } from '@hocuspocus/provider'
import { WebSocket } from 'ws'
import * as Y from 'yjs'

export type Page = {
  readonly share: (name: string, doc?: Y.Doc) => SharedDoc
  readonly close: () => Promise<void>
}

export type SharedDoc = {
  readonly doc: Y.Doc
  readonly provider: HocuspocusProvider
  /** The server has said that it has everything. */
  readonly kept: () => boolean
  /** What the server told beside the document. */
  readonly told: readonly string[]
  readonly refusedWith: () => string | undefined
}

export function openPage(port: number, headers: Readonly<Record<string, string>> = {}): Page {
  const origin = `http://127.0.0.1:${port}`
  class PageSocket extends WebSocket {
    constructor(url: string) {
      super(url, { headers: { origin, ...headers } })
      this.on('error', () => {})
    }
  }
  const websocketProvider = new HocuspocusProviderWebsocket({
    url: `ws://127.0.0.1:${port}/sync`,
    WebSocketPolyfill: PageSocket,
    delay: 20,
    minDelay: 10,
    maxDelay: 100,
    jitter: false,
  })
  // What was edited while there was no socket would be sent and acknowledged apart from the meeting that carries it too,
  // and the provider would count those acknowledgements for edits that are still on their way.
  websocketProvider.on('open', () => Object.assign(websocketProvider, { messageQueue: [] }))
  const shared: SharedDoc[] = []
  return {
    share: (name, doc = new Y.Doc()) => {
      const made = share(websocketProvider, name, doc)
      shared.push(made)
      return made
    },
    close: async () => {
      for (const { provider } of shared) provider.destroy()
      websocketProvider.destroy()
    },
  }
}

function share(websocketProvider: HocuspocusProviderWebsocket, name: string, document: Y.Doc): SharedDoc {
  const told: string[] = []
  let reason: string | undefined
  const provider = new HocuspocusProvider({
    websocketProvider,
    name,
    document,
    token: 'page',
    onStateless: ({ payload }) => void told.push(payload),
    onAuthenticationFailed: (failed) => {
      reason = failed.reason
    },
  })
  provider.attach()
  return {
    doc: document,
    provider,
    kept: () => provider.isSynced && provider.unsyncedChanges === 0,
    told,
    refusedWith: () => reason,
  }
}

/** Waits for a condition, and says which when it does not come. */
export async function until(
  what: string | (() => string),
  holds: () => boolean,
  mostMs = 15_000,
): Promise<void> {
  const endMs = performance.now() + mostMs
  while (!holds()) {
    if (performance.now() > endMs)
      throw new Error(
        `wait: in vain for ${typeof what === 'string' ? what : what()}, expected within ${mostMs} ms`,
      )
    await new Promise((resolve) => setTimeout(resolve, 3))
  }
}
