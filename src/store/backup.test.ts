import { mkdir, readdir, readFile, stat, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { faultOf, inFolder } from '../../test/support/stores.ts'
import { openSqliteStore, type SqliteStore } from './sqlite-store.ts'

async function withStore(work: (store: SqliteStore, folder: string) => Promise<void>): Promise<void> {
  await inFolder(async (folder) => {
    const store = await openSqliteStore({ path: join(folder, 'jobs.db') })
    try {
      await store.append('work:a', Uint8Array.of(1))
      await store.addEntries('a', [{ id: 'x', cells: { note: 'n' } }])
      await store.putWeather('h', new Uint8Array(100_000).fill(7))
      await work(store, folder)
    } finally {
      await store.close()
    }
  })
}

describe('a backup', () => {
  it('holds all that was acknowledged before, and opens like the database itself', () =>
    withStore(async (store, folder) => {
      const path = join(folder, "it's a copy.db")
      const before = Array.from({ length: 20 }, (_, at) => store.append('work:b', Uint8Array.of(at)))
      const backup = store.backupTo(path)
      const after = store.append('work:b', Uint8Array.of(99))
      await Promise.all([...before, backup, after])
      const copy = await openSqliteStore({ path })
      expect(await copy.documentNames()).toEqual(['work:a', 'work:b'])
      expect((await copy.document('work:b')).updates.map((update) => update[0])).toEqual(
        Array.from({ length: 20 }, (_, at) => at),
      )
      expect(await copy.entriesAfter('a', { after: 0, most: 9 })).toEqual(
        await store.entriesAfter('a', { after: 0, most: 9 }),
      )
      expect(await copy.weather('h')).toEqual(await store.weather('h'))
      expect(await copy.integrity()).toEqual([])
      await copy.close()
    }))

  it('is never written over a file, be it empty, another backup or the database itself', () =>
    withStore(async (store, folder) => {
      const copy = join(folder, 'copy.db')
      await store.backupTo(copy)
      const before = await readFile(copy)
      await writeFile(join(folder, 'empty'), '')
      for (const name of ['copy.db', 'empty', 'jobs.db', '.'])
        expect((await faultOf(store.backupTo(join(folder, name)))).code, name).toBe('store.backupExists')
      expect(Buffer.compare(before, await readFile(copy))).toBe(0)
      expect((await stat(join(folder, 'empty'))).size).toBe(0)
      expect((await readdir(folder)).filter((name) => name.includes('unfinished'))).toEqual([])
      await store.append('work:a', Uint8Array.of(2))
    }))

  it('goes to one of two that want the same name at once', () =>
    withStore(async (store, folder) => {
      const copy = join(folder, 'copy.db')
      const both = await Promise.allSettled([store.backupTo(copy), store.backupTo(copy)])
      expect(both.map(({ status }) => status)).toEqual(['fulfilled', 'rejected'])
    }))

  it('replaces what a killed one left unfinished, and fails where no folder is', () =>
    withStore(async (store, folder) => {
      const copy = join(folder, 'copy.db')
      await writeFile(`${copy}-unfinished`, 'half of a page')
      await store.backupTo(copy)
      await (await openSqliteStore({ path: copy })).close()
      expect((await readdir(folder)).sort().filter((name) => name.startsWith('copy'))).toEqual(['copy.db'])
      const { code } = await faultOf(store.backupTo(join(folder, 'none', 'copy.db')))
      expect(code).toBe('store.folderMissing')
      expect((await faultOf(store.backupTo(''))).code).toBe('store.badPath')
      await mkdir(join(folder, 'stuck.db-unfinished'))
      expect((await faultOf(store.backupTo(join(folder, 'stuck.db')))).code).toMatch(/^store\./)
      await store.append('work:a', Uint8Array.of(2))
    }))

  it('is refused once the store is closed', () =>
    withStore(async (store, folder) => {
      await store.close()
      expect((await faultOf(store.backupTo(join(folder, 'copy.db')))).code).toBe('store.closed')
    }))
})
