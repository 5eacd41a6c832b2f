import { readFile, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import Database from 'libsql'
import { describe, expect, it } from 'vitest'
import { faultOf, inFolder } from '../../test/support/stores.ts'
import { examine, type Readers } from './examine.ts'
import { createMemoryStore } from './memory-store.ts'
import type { Store } from './port.ts'
import { openSqliteStore } from './sqlite-store.ts'
import { StoreError } from './store-error.ts'

/** Takes what begins with 1. */
const readers: Readers = {
  document: (name, updates) => {
    if (updates.some((update) => update[0] !== 1)) throw new TypeError(`not read: ${name}`)
  },
  weather: (hash, bytes) => {
    if (bytes[0] !== 1) throw new RangeError(`not read: ${hash}`)
  },
}

async function fill(store: Store): Promise<void> {
  for (const name of ['work:a', 'work:b', 'work:c'])
    for (let at = 0; at < 20; at += 1) await store.append(name, new Uint8Array(500).fill(1))
  for (const job of ['a', 'b'])
    await store.addEntries(
      job,
      Array.from({ length: 600 }, (_, at) => ({ id: `e${at}`, cells: { note: `n${at}` } })),
    )
  for (const hash of ['h1', 'h2']) await store.putWeather(hash, new Uint8Array(9000).fill(1))
}

const whole = { documents: 3, updates: 60, jobs: 2, entries: 1200, weather: 2 }

describe('an examination', () => {
  it('reads everything and finds nothing wrong with what is whole', async () => {
    const store = createMemoryStore()
    await fill(store)
    expect(await examine(store, readers)).toEqual({ ...whole, faults: [] })
  })

  it('names every document and weather row that its reader cannot read, and goes on', async () => {
    const store = createMemoryStore()
    await store.append('work:0', Uint8Array.of(0))
    await fill(store)
    await store.append('work:b', Uint8Array.of())
    await store.putWeather('h0', Uint8Array.of(2))
    const { faults, ...counts } = await examine(store, readers)
    expect(counts).toEqual({ ...whole, documents: 4, updates: 62, weather: 3 })
    expect(faults).toEqual([
      { code: 'store.documentDamaged', data: { document: 'work:0', text: 'not read: work:0' } },
      { code: 'store.documentDamaged', data: { document: 'work:b', text: 'not read: work:b' } },
      { code: 'store.weatherDamaged', data: { hash: 'h0', text: 'not read: h0' } },
    ])
  })

  it('names every damaged entry, wherever it stands, and counts all', () =>
    inFolder(async (folder) => {
      const path = join(folder, 'jobs.db')
      await damaged(path, [
        `UPDATE log_entry SET cells = '{"note":' WHERE job = 'a' AND id IN ('e0', 'e1', 'e499', 'e599')`,
        `UPDATE log_entry SET cells = '{"note":true}' WHERE job = 'b' AND id = 'e250'`,
        `UPDATE log_entry SET cells = '[]' WHERE job = 'b' AND id = 'e251'`,
      ])
      const store = await openSqliteStore({ path })
      const { faults, ...counts } = await examine(store, readers)
      expect(counts).toEqual(whole)
      expect(faults.map(({ code, data }) => [code, data.job, data.id])).toEqual(
        ['a e0', 'a e1', 'a e499', 'a e599', 'b e250', 'b e251'].map((place) => [
          'store.entryDamaged',
          ...place.split(' '),
        ]),
      )
      await store.close()
    }))

  it('tells a fault of the disk and goes on with what can be read', async () => {
    const store = createMemoryStore()
    await fill(store)
    const document: Store['document'] = async (name) => {
      if (name === 'work:b')
        throw new StoreError('store.damaged', { file: 'f', text: 't' }, 'database: damaged')
      return store.document(name)
    }
    const { faults, ...counts } = await examine({ ...store, document }, readers)
    expect(faults).toEqual([{ code: 'store.damaged', data: { file: 'f', text: 't' } }])
    expect(counts).toEqual({ ...whole, updates: 40 })
  })

  it('of a closed store is refused', async () => {
    const store = createMemoryStore()
    await store.close()
    expect((await faultOf(examine(store, readers))).code).toBe('store.closed')
  })

  it('never fails in another way than the store does, wherever the file is damaged', () =>
    inFolder(async (folder) => {
      const path = join(folder, 'jobs.db')
      await damaged(path, [])
      const sound = await readFile(path)
      let found = 0
      for (let seed = 1; seed <= 60; seed += 1) {
        const spoiled = join(folder, `spoiled-${seed}.db`)
        await writeFile(spoiled, spoil(sound, seed))
        if (await isFound(spoiled)) found += 1
      }
      expect(found).toBeGreaterThan(40)
    }))
})

async function damaged(path: string, steps: readonly string[]): Promise<void> {
  const store = await openSqliteStore({ path })
  await fill(store)
  await store.close()
  const library = new Database(path)
  for (const step of steps) library.exec(step)
  library.close()
}

/** A few bytes overwritten, a page blanked, or the end cut off. */
function spoil(sound: Buffer, seed: number): Buffer {
  const bytes = Buffer.from(sound)
  const at = (Math.imul(seed, 0x9e3779b1) >>> 0) % bytes.length
  if (seed % 3 === 0) return bytes.subarray(0, at)
  const end = seed % 3 === 1 ? at + 300 : at + 4096
  return bytes.fill(seed, at, Math.min(end, bytes.length))
}

/** Whether opening or examining tells a fault. */
async function isFound(path: string): Promise<boolean> {
  try {
    const store = await openSqliteStore({ path, lockWaitMs: 0 })
    try {
      return (await examine(store, readers)).faults.length > 0
    } finally {
      await store.close()
    }
  } catch (error) {
    expect(error).toBeInstanceOf(StoreError)
    return true
  }
}
