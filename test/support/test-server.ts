// The server in this process, on any free port of loopback, over a store in memory.
import { memoryCache } from '#feeds'
import { createServer, type HardstandServer, type ServerOptions, serverLimits } from '#server'
import { createMemoryStore, type Store } from '#store'

export type TestServer = {
  readonly server: HardstandServer
  readonly store: Store
  readonly port: number
  readonly origin: string
  readonly told: { readonly code: string }[]
}

export async function startTestServer(given: Partial<ServerOptions> = {}): Promise<TestServer> {
  const store = given.store ?? createMemoryStore()
  const told: { code: string }[] = []
  const server = createServer({
    app: '9.9.9',
    webFolder: '/nowhere',
    passphrases: {},
    sessionKey: new Uint8Array(32).fill(7),
    names: [],
    nowMs: Date.now,
    feeds: { cache: memoryCache(), userAgent: 'test', off: true },
    tell: (event) => void told.push(event),
    ...given,
    store,
    limits: { ...serverLimits, closeMs: 200, ...given.limits },
  })
  const { port } = await server.listen({ host: '127.0.0.1', port: 0 })
  return { server, store, port, origin: `http://127.0.0.1:${port}`, told }
}
