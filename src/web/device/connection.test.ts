import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest'
import { WebSocket } from 'ws'
import * as Y from 'yjs'
import { serverLimits } from '#server'
import { createMemoryStore, type Store, StoreError } from '#store'
import { until } from '../../../test/support/page.ts'
import { startTestServer } from '../../../test/support/test-server.ts'
import { type Connection, openConnection } from './connection.ts'

type Started = Awaited<ReturnType<typeof startTestServer>>

const opened: { readonly close: () => unknown }[] = []

let cookie = ''
let sockets = 0

beforeEach(() => {
  cookie = ''
  sockets = 0
})

afterEach(async () => {
  for (const each of opened.splice(0).reverse()) await each.close()
  vi.unstubAllGlobals()
})

/** A page of the server, as far as a connection needs one: sockets, requests and the cookie it was given. */
function connect({ origin, port }: Started): Connection {
  vi.stubGlobal('__APP_VERSION__', '9.9.9')
  vi.stubGlobal(
    'WebSocket',
    class extends WebSocket {
      constructor(url: string) {
        super(url, { headers: { origin, cookie } })
        sockets += 1
        this.on('error', () => {})
      }
    },
  )
  const real = globalThis.fetch
  vi.stubGlobal('fetch', (path: string, given: RequestInit = {}) =>
    real(`${origin}${path}`, { ...given, headers: { ...given.headers, cookie } }),
  )
  const connection = openConnection({ protocol: 'http:', host: `127.0.0.1:${port}` })
  opened.push(connection)
  return connection
}

async function start(given: Parameters<typeof startTestServer>[0] = {}): Promise<Started> {
  const started = await startTestServer(given)
  opened.push(started.server)
  return started
}

const kept = (server: Started, name: string) => server.store.document(name)

describe('a document that the server does not take', () => {
  it('is stopped alone, says why, and is sent when it has shrunk', async () => {
    const server = await start({ limits: { ...serverLimits, documentBytes: 3000 } })
    const connection = connect(server)
    const [full, other] = [new Y.Doc(), new Y.Doc()]
    // As the page has it: what is removed stays in the document for as long as it can be undone.
    const undo = new Y.UndoManager(full.getMap('job'))
    const sync = connection.share('work:full', full)
    const fine = connection.share('work:fine', other)
    await until('both', () => sync.waiting() === 0 && fine.waiting() === 0)
    full.getMap('job').set('remark', 'x'.repeat(4000))
    await until('not taken', () => sync.notTaken() !== undefined)
    expect(sync.notTaken()).toEqual({ code: 'web.serverJobFull', data: { mostMegabytes: 0 } })
    expect(sync.waiting()).toBeUndefined()

    other.getMap('job').set('remark', 'short')
    await until('the other', () => fine.waiting() === 0)
    const before = sockets
    await new Promise((resolve) => setTimeout(resolve, 1500))
    expect(sockets).toBe(before)

    sync.again()
    await until('not taken again', () => sync.notTaken() !== undefined)
    full.getMap('job').set('remark', 'short')
    await until('taken', () => sync.waiting() === 0)
    expect(undo.canUndo()).toBe(true)
    expect(full.getMap('job').get('remark')).toBe('short')
    expect((await kept(server, 'work:full')).updates).toHaveLength(1)
  })

  it('is found by its size where one message is too large', async () => {
    const server = await start({ limits: { ...serverLimits, messageBytes: 3000 } })
    const connection = connect(server)
    const [small, large] = [new Y.Doc(), new Y.Doc()]
    large.getMap('job').set('remark', 'x'.repeat(4000))
    small.getMap('job').set('remark', 'short')
    const sync = connection.share('work:large', large)
    const fine = connection.share('work:small', small)
    await until('not taken', () => sync.notTaken()?.code === 'web.serverTakesLess')
    await until('the other', () => fine.waiting() === 0)
    expect(fine.notTaken()).toBeUndefined()
  })
})

describe('a server without room on its disk', () => {
  it('is said to have one, is left alone meanwhile, and gets the edit when it is offered again', async () => {
    const store = createMemoryStore()
    let full = true
    const append: Store['append'] = (...given) =>
      full
        ? Promise.reject(new StoreError('store.diskFull', {}, 'disk: full, expected room'))
        : store.append(...given)
    const server = await start({ store: { ...store, append } })
    const connection = connect(server)
    const doc = new Y.Doc()
    const sync = connection.share('work:teal', doc)
    await until('met', () => sync.waiting() === 0)
    doc.getMap('job').set('remark', 'not kept yet')
    await until('not taken', () => sync.notTaken()?.code === 'web.serverDiskFault')
    expect(sync.waiting()).toBeUndefined()
    full = false
    sync.again()
    await until('taken', () => sync.waiting() === 0)
    expect((await kept(server, 'work:teal')).updates).toHaveLength(1)
  })
})

describe('a session that ends while the page is open', () => {
  it('is asked for again, and what was edited meanwhile is sent after it', async () => {
    let nowMs = 1_000_000
    const server = await start({
      nowMs: () => nowMs,
      passphrases: { all: 'long enough' },
      limits: { ...serverLimits, heartbeatMs: 20 },
    })
    const signIn = async (): Promise<void> => {
      const answer = await fetch('/api/sign-in', {
        method: 'POST',
        headers: { 'content-type': 'application/json', origin: server.origin },
        body: JSON.stringify({ passphrase: 'long enough' }),
      })
      cookie = answer.headers.get('set-cookie')?.split(';')[0] ?? ''
    }
    const connection = connect(server)
    await until('asked', connection.mustSignIn)
    await signIn()
    await connection.greet()
    const doc = new Y.Doc()
    const sync = connection.share('work:teal', doc)
    await until('shared', () => sync.waiting() === 0)

    nowMs += 181 * 86_400_000
    await until('asked again', connection.mustSignIn)
    doc.getMap('job').set('remark', 'meanwhile')
    expect(sync.waiting()).not.toBe(0)
    await signIn()
    await connection.greet()
    await until('sent', () => sync.waiting() === 0 && connection.online())
    const after = new Y.Doc()
    for (const update of (await kept(server, 'work:teal')).updates) Y.applyUpdate(after, update)
    expect(after.getMap('job').get('remark')).toBe('meanwhile')
  })
})
