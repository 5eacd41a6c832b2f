import type { Socket } from 'node:net'
import { afterEach, describe, expect, it } from 'vitest'
import { WebSocket } from 'ws'
import * as Y from 'yjs'
import { createMemoryStore, type Store, StoreError } from '#store'
import { openPage, type Page, until } from '../../../test/support/page.ts'
import { startTestServer, type TestServer } from '../../../test/support/test-server.ts'
import { serverLimits } from '../limits.ts'
import type { ServerOptions } from '../options.ts'

const opened: { readonly close: () => Promise<void> }[] = []

afterEach(async () => {
  for (const each of opened.splice(0).reverse()) await each.close()
})

async function start(given: Partial<ServerOptions> = {}): Promise<TestServer> {
  const started = await startTestServer(given)
  opened.push(started.server)
  return started
}

function page(port: number, headers?: Readonly<Record<string, string>>): Page {
  const made = openPage(port, headers)
  opened.push(made)
  return made
}

async function storedOf(store: Store, name: string): Promise<Y.Doc> {
  const doc = new Y.Doc()
  for (const update of (await store.document(name)).updates) Y.applyUpdate(doc, update)
  return doc
}

const name = 'work:teal-wren'

describe('a shared document', () => {
  it('reaches the store before the page hears that it is kept, and every other page', async () => {
    const { port, store } = await start()
    const one = page(port).share(name)
    const two = page(port).share(name)
    await until('both', () => one.kept() && two.kept())
    one.doc.getMap('boat').set('name', 'Teal Wren')
    await until('kept', one.kept)
    expect((await storedOf(store, name)).getMap('boat').get('name')).toBe('Teal Wren')
    await until('the other page', () => two.doc.getMap('boat').get('name') === 'Teal Wren')
  })

  it('comes back from the store with everything after all pages left', async () => {
    const { port, store } = await start({ limits: { ...serverLimits, updatesAtRest: 1 } })
    const first = openPage(port)
    const one = first.share(name)
    await until('first', one.kept)
    for (let i = 0; i < 60; i += 1) one.doc.getMap('boat').set('name', `Teal ${i}`)
    await until('kept', one.kept)
    await first.close()
    await untilAsync('put together', async () => (await store.document(name)).updates.length === 1)
    const two = page(port).share(name)
    await until('second', () => two.doc.getMap('boat').get('name') === 'Teal 59')
  })

  it('is made one update while it is open, with what is edited meanwhile', async () => {
    const { port, store } = await start({ limits: { ...serverLimits, updates: 30 } })
    const one = page(port).share(name)
    await until('first', one.kept)
    for (let i = 0; i < 200; i += 1) one.doc.getMap('boat').set(`cell${i}`, `text ${i}`)
    await until('kept', one.kept)
    expect((await store.document(name)).updates.length).toBeLessThan(80)
    expect((await storedOf(store, name)).getMap('boat').size).toBe(200)
  })

  it('that a page only opens again leaves no new update', async () => {
    const { port, store } = await start()
    const one = page(port).share(name)
    await until('first', one.kept)
    one.doc.getMap('boat').set('name', 'Teal')
    one.doc.getMap('boat').delete('name')
    await until('kept', one.kept)
    const before = (await store.document(name)).updates.length
    const two = page(port).share(name, one.doc)
    await until('again', two.kept)
    expect((await store.document(name)).updates.length).toBe(before)
  })

  it.each([
    '',
    'shops',
    'work:',
    'work:A b',
    'money:../x',
    '__proto__',
    'constructor',
    `work:${'a'.repeat(200)}`,
  ])('named “%s” is not there, and nothing is stored', async (wrong) => {
    const { port, store } = await start()
    const closed = await send(port, signIn(wrong))
    expect(closed).toBe(1008)
    expect(await store.documentNames()).toEqual([])
  })

  it('opens again for a page that let go of it in the same breath', async () => {
    const { port } = await start()
    const other = page(port).share(name)
    const socket = new WebSocket(`ws://127.0.0.1:${port}/sync`, { origin: `http://127.0.0.1:${port}` })
    opened.push({ close: async () => socket.terminate() })
    let edits = 0
    let isClosed = false
    // A message of kind 0, part 2; one of kind 7.
    socket.on('message', (data: Buffer) => {
      if (data[name.length + 1] === 0 && data[name.length + 2] === 2) edits += 1
      if (data[name.length + 1] === 7) isClosed = true
    })
    const heardOf = async (key: string): Promise<void> => {
      const before = edits
      await until(`to hear of ${key}`, () => {
        other.doc.getMap('boat').set(key, String(performance.now()))
        return edits > before
      })
    }
    socket.on('open', () => socket.send(signIn(name)))
    await heardOf('first')
    // In one packet, so that the server reads both at once.
    const line = (socket as unknown as { readonly _socket: Socket })._socket
    line.cork()
    for (const each of [message(7, []), signIn(name)]) socket.send(each)
    line.uncork()
    await until('the document to be closed', () => isClosed)
    await heardOf('second')
  })

  it('says which server it is when it opens', async () => {
    const { port } = await start()
    const one = page(port).share(name)
    await until('told', () => one.told.length > 0)
    expect(JSON.parse(String(one.told[0]))).toEqual({ kind: 'hello', protocol: 1, app: '9.9.9' })
  })
})

describe('a store that fails', () => {
  it('keeps the page from being told that its edit is kept, until it is', async () => {
    const store = createMemoryStore()
    let full = false
    const failing: Store = {
      ...store,
      append: async (document, update) => {
        if (full) throw new StoreError('store.diskFull', { file: 'x' }, 'disk: full')
        return store.append(document, update)
      },
    }
    const { port, told } = await start({ store: failing })
    const one = page(port).share(name)
    await until('first', one.kept)
    full = true
    one.doc.getMap('boat').set('name', 'Teal Wren')
    await until('told', () => told.some(({ code }) => code === 'store.diskFull'))
    expect(one.kept()).toBe(false)
    expect((await storedOf(store, name)).getMap('boat').size).toBe(0)
    full = false
    await until('kept', one.kept)
    expect((await storedOf(store, name)).getMap('boat').get('name')).toBe('Teal Wren')
  })

  it('lets the page in once it can be read again', async () => {
    const store = createMemoryStore()
    let failures = 3
    const failing: Store = {
      ...store,
      document: async (document) => {
        failures -= 1
        if (failures >= 0) throw new StoreError('store.diskFailed', { file: 'x', text: 'y' }, 'disk: failed')
        return store.document(document)
      },
    }
    const { port } = await start({ store: failing })
    const one = page(port).share(name)
    await until('kept', one.kept)
    expect(failures).toBeLessThan(0)
  })

  it('with one update that cannot be read shows the others', async () => {
    const store = createMemoryStore()
    const doc = new Y.Doc()
    doc.getMap('boat').set('name', 'Teal Wren')
    await store.append(name, Y.encodeStateAsUpdate(doc))
    await store.append(name, new Uint8Array([9, 9, 9]))
    const { port, told } = await start({ store })
    const one = page(port).share(name)
    await until('there', () => one.doc.getMap('boat').get('name') === 'Teal Wren')
    expect(told.map(({ code }) => code)).toContain('server.updateDamaged')
  })
})

describe('a document that is full', () => {
  it('refuses the edit, says so, and stores nothing of it', async () => {
    const { port, store } = await start({ limits: { ...serverLimits, documentBytes: 2000 } })
    const one = page(port).share(name)
    await until('first', one.kept)
    one.doc.getMap('boat').set('name', 'x'.repeat(3000))
    await until('told', () => one.told.some((text) => text.includes('server.documentFull')))
    expect((await store.document(name)).updates).toEqual([])
    expect(one.kept()).toBe(false)
  })

  it('takes an edit again that fits once what was removed is put away', async () => {
    const { port, store } = await start({ limits: { ...serverLimits, documentBytes: 4000 } })
    const one = page(port).share(name)
    await until('first', one.kept)
    for (const text of ['a', 'b', 'c', 'd', 'e', 'f']) {
      one.doc.getMap('boat').set('name', text.repeat(900))
      await until(`kept ${text}`, one.kept)
    }
    expect((await storedOf(store, name)).getMap('boat').get('name')).toBe('f'.repeat(900))
  })

  it('is one too many when the server holds all it takes', async () => {
    const { port, store } = await start({ limits: { ...serverLimits, documents: 1 } })
    const one = page(port).share(name)
    await until('first', one.kept)
    one.doc.getMap('boat').set('name', 'one')
    await until('kept', one.kept)
    const two = page(port).share('work:other')
    two.doc.getMap('boat').set('name', 'two')
    await until('told', () => two.told.some((text) => text.includes('server.documentsFull')))
    expect(await store.documentNames()).toEqual([name])
  })
})

describe('a message that is none', () => {
  const doc = new Y.Doc()
  doc.getMap('boat').set('name', 'Teal Wren')
  const whole = Y.encodeStateAsUpdate(doc)
  const messages: readonly (readonly [string, Uint8Array | string])[] = [
    ['empty', new Uint8Array()],
    ['text', 'hello'],
    ['noise', new Uint8Array([255, 254, 253, 252])],
    ['a torn name', new Uint8Array([200, 1, 65])],
    ['a name that is no text', new Uint8Array([2, 0xc3, 0x28, 0])],
    ['a kind that is not known', message(99, [])],
    ['a note to all others', message(6, bytes(new TextEncoder().encode('{"kind":"refused"}')))],
    ['a note', message(5, bytes(new Uint8Array([1])))],
    ['an endless number', new Uint8Array(40).fill(255)],
    ['a torn update', message(0, [2, ...bytes(whole.slice(0, whole.length - 4))])],
    ['an update of noise', message(0, [2, ...bytes(new Uint8Array([3, 3, 3, 3, 3]))])],
    ['a torn state', message(0, [0, ...bytes(new Uint8Array([255]))])],
    ['a part that is not known', message(0, [9, ...bytes(whole)])],
    ['too much presence', message(1, bytes(new Uint8Array(20_000)))],
  ]

  it.each(messages)('%s: closes its socket and no other, and stores nothing', async (_kind, bad) => {
    const { port, store } = await start()
    const other = page(port).share(name)
    await until('other', other.kept)
    expect(await send(port, signIn(name), bad)).toBe(1008)
    expect((await store.document(name)).updates).toEqual([])
    other.doc.getMap('boat').set('name', 'still')
    await until('other is served', other.kept)
  })

  it('too large: closes its socket', async () => {
    const { port, store } = await start({ limits: { ...serverLimits, messageBytes: 1000 } })
    expect(await send(port, signIn(name), message(0, [2, ...bytes(new Uint8Array(5000))]))).toBe(1009)
    expect(await store.documentNames()).toEqual([])
  })

  it('for too many documents closes its socket', async () => {
    const { port } = await start({ limits: { ...serverLimits, documentsOnSocket: 3 } })
    const names = ['work:a', 'work:b', 'work:c', 'work:d']
    expect(await send(port, ...names.map((each) => signIn(each)))).toBe(1008)
  })
})

describe('closing', () => {
  it('lets go of everybody, twice without a fault, and what was acknowledged stays', async () => {
    const { port, store, server } = await start()
    const one = page(port).share(name)
    await until('first', one.kept)
    for (let i = 0; i < 50; i += 1) one.doc.getMap('boat').set(`cell${i}`, 'x')
    await until('kept', one.kept)
    await server.close()
    await server.close()
    expect((await storedOf(store, name)).getMap('boat').size).toBe(50)
  })
})

async function untilAsync(what: string, holds: () => Promise<boolean>): Promise<void> {
  for (let tries = 0; tries < 500; tries += 1) {
    if (await holds()) return
    await new Promise((resolve) => setTimeout(resolve, 10))
  }
  throw new Error(`wait: in vain for ${what}`)
}

/** Sends messages on a bare socket and gives the code with which it was closed. */
async function send(port: number, ...messages: readonly (Uint8Array | string)[]): Promise<number> {
  const socket = new WebSocket(`ws://127.0.0.1:${port}/sync`, { origin: `http://127.0.0.1:${port}` })
  return new Promise((resolve, reject) => {
    const timer = setTimeout(() => {
      socket.terminate()
      reject(new Error('socket: still open, expected to be closed'))
    }, 4000)
    socket.on('open', () => {
      for (const each of messages) socket.send(each)
    })
    socket.on('error', () => {})
    socket.on('close', (code) => {
      clearTimeout(timer)
      resolve(code)
    })
  })
}

function signIn(document: string): Uint8Array {
  const text = new TextEncoder().encode('page')
  return message(2, [0, ...bytes(text)], document)
}

function message(type: number, body: readonly number[], document = name): Uint8Array {
  return new Uint8Array([...bytes(new TextEncoder().encode(document)), type, ...body])
}

function bytes(given: Uint8Array): readonly number[] {
  return [...number(given.length), ...given]
}

const number = (value: number): readonly number[] =>
  value < 128 ? [value] : [(value & 127) | 128, ...number(Math.floor(value / 128))]
