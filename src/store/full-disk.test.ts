import { join } from 'node:path'
import { Kysely, SqliteDialect } from 'kysely'
import { describe, expect, it } from 'vitest'
import { faultOf, inFolder } from '../../test/support/stores.ts'
import { guardedDatabase } from './guarded-database.ts'
import { openDatabase } from './open-database.ts'
import { createQueue } from './queue.ts'
import type { Tables } from './schema.ts'
import { openSqliteStore } from './sqlite-store.ts'
import { createTableStore } from './table-store.ts'

/** A store whose file may grow by so many pages of 4 kB only: what SQLite meets on a full disk. */
async function cramped(path: string, pages: number) {
  const { library, file } = await openDatabase({ path, lockWaitMs: 0 })
  const grow = (by: number) => {
    const [row] = library.prepare('PRAGMA page_count').all([])
    library.prepare(`PRAGMA max_page_count = ${Number(Object(row).page_count) + by}`).all([])
  }
  grow(pages)
  const db = new Kysely<Tables>({ dialect: new SqliteDialect({ database: guardedDatabase(library, file) }) })
  const behind = { db, queue: createQueue(), integrity: () => [], close: () => db.destroy() }
  return { store: createTableStore(behind), grow }
}

describe('a full disk', () => {
  it('refuses what does not fit, keeps what was there, and takes more once there is room', () =>
    inFolder(async (folder) => {
      const path = join(folder, 'jobs.db')
      const full = { code: 'store.diskFull', data: { file: path } }
      const { store, grow } = await cramped(path, 10)
      await store.append('work:a', new Uint8Array(8000).fill(1))
      await store.append('work:a', new Uint8Array(8000).fill(2))
      const large = new Uint8Array(100_000)
      const entries = Array.from({ length: 2000 }, (_, at) => ({
        id: `e${at}`,
        cells: { note: 'x'.repeat(99) },
      }))
      expect(await faultOf(store.append('work:a', large))).toEqual(full)
      expect(await faultOf(store.putWeather('h', large))).toEqual(full)
      expect(await faultOf(store.addEntries('a', entries))).toEqual(full)
      expect(await faultOf(store.compact('work:a', { most: 1, merge: () => large }))).toEqual(full)
      expect((await store.document('work:a')).updates.map((update) => update[0])).toEqual([1, 2])
      expect(await store.addEntries('a', [])).toBe(0)
      grow(1000)
      await store.append('work:a', large)
      expect(await store.addEntries('a', entries)).toBeGreaterThan(0)
      await store.close()
      const again = await openSqliteStore({ path, lockWaitMs: 0 })
      expect((await again.document('work:a')).updates.length).toBe(3)
      expect(await again.integrity()).toEqual([])
      await again.close()
    }))
})
