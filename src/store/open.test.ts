import { chmod, chown, mkdir, readdir, readFile, symlink, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import Database from 'libsql'
import { describe, expect, it } from 'vitest'
import { startStore } from '../../test/support/store-child.ts'
import { faultOf, inFolder } from '../../test/support/stores.ts'
import { openSqliteStore } from './sqlite-store.ts'

const open = (path: string) => openSqliteStore({ path, lockWaitMs: 0 })
const opening = (path: string) => faultOf(open(path))

/** Runs SQL on a file by the library itself, as another program would. */
function run(file: string, ...steps: readonly string[]): void {
  const library = new Database(file)
  for (const step of steps) library.exec(step)
  library.close()
}

describe('opening a database', () => {
  it('refuses a folder, a place without a folder, and no name at all', () =>
    inFolder(async (folder) => {
      const file = join(folder, 'none', 'jobs.db')
      expect(await opening(folder)).toEqual({ code: 'store.isFolder', data: { file: folder } })
      const missing = { file, folder: join(folder, 'none') }
      expect(await opening(file)).toEqual({ code: 'store.folderMissing', data: missing })
      await writeFile(join(folder, 'none'), '')
      expect(await opening(file)).toEqual({ code: 'store.folderMissing', data: missing })
      expect((await opening('')).code).toBe('store.badPath')
      expect((await opening(`${folder}/a\0b`)).code).toBe('store.badPath')
    }))

  it.each([
    ['text', 'No database at all. '.repeat(500)],
    ['one letter', 'x'],
    ['the beginning of a database', 'SQLite format 3\0'],
    [
      'a header with nothing after it',
      `SQLite format 3\0${'\x10\x00\x01\x01\x00\x40\x20\x20'}${'\0'.repeat(76)}`,
    ],
  ])('refuses a file that holds %s, and leaves it as it is', (_, text) =>
    inFolder(async (folder) => {
      const file = join(folder, 'notes.txt')
      await writeFile(file, text, 'latin1')
      const { code, data } = await opening(file)
      expect([code, (data as { file: string }).file]).toEqual(['store.notADatabase', file])
      expect(await readFile(file, 'latin1')).toBe(text)
      expect(await readdir(folder)).toEqual(['notes.txt'])
    }),
  )

  it('refuses a device, without waiting for it', async () => {
    expect((await opening('/dev/null')).code).toBe('store.notADatabase')
  })

  it('makes a new database of an empty file', () =>
    inFolder(async (folder) => {
      const file = join(folder, 'empty.db')
      await writeFile(file, '')
      const store = await open(file)
      await store.append('work:a', Uint8Array.of(1))
      await store.close()
      await (await open(file)).close()
    }))

  it.each([
    ['DELETE', 'a table', 'CREATE TABLE boats (name)'],
    ['WAL', 'a table', 'CREATE TABLE boats (name)'],
    ['DELETE', 'only a version', 'PRAGMA user_version = 1'],
    ['DELETE', 'only an owner', 'PRAGMA application_id = 7'],
  ])('refuses the database of another program (%s, %s), byte for byte unchanged', (mode, _, step) =>
    inFolder(async (folder) => {
      const file = join(folder, 'other.db')
      run(file, `PRAGMA journal_mode = ${mode}`, step)
      const before = await readFile(file)
      expect(await opening(file)).toEqual({ code: 'store.otherProgram', data: { file } })
      expect(Buffer.compare(before, await readFile(file))).toBe(0)
    }),
  )

  it('refuses a database of a newer version, unchanged, and opens it again once it is known', () =>
    inFolder(async (folder) => {
      const file = join(folder, 'jobs.db')
      await (await open(file)).close()
      run(file, 'PRAGMA user_version = 99')
      const before = await readFile(file)
      const data = { file, version: 99, knownVersion: 1 }
      expect(await opening(file)).toEqual({ code: 'store.newerVersion', data })
      expect(Buffer.compare(before, await readFile(file))).toBe(0)
      run(file, 'PRAGMA user_version = 1')
      await (await open(file)).close()
    }))

  it.each(['wei?rd#ö%41 name.db', 'file:jobs.db', ':memory:', "it's.db", 'http:jobs'])(
    'takes the name %s for a file',
    (name) =>
      inFolder(async (folder) => {
        const store = await open(join(folder, name))
        await store.append('work:a', Uint8Array.of(1))
        await store.close()
        expect(await readdir(folder)).toEqual([name])
      }),
  )

  it('follows a symbolic link, also one that leads nowhere yet', () =>
    inFolder(async (folder) => {
      await symlink(join(folder, 'real.db'), join(folder, 'jobs.db'))
      const store = await open(join(folder, 'jobs.db'))
      await store.append('work:a', Uint8Array.of(1))
      await store.close()
      expect((await readdir(folder)).sort()).toEqual(['jobs.db', 'real.db'])
    }))
})

/** A person without rights: root may write everywhere, so the tests of root become somebody else. */
const nobody = process.getuid?.() === 0 ? 65534 : undefined

describe.skipIf(process.platform === 'win32')('a place that may not be written', () => {
  it.each([
    ['a folder that is read-only', { folder: 0o555, file: undefined }],
    ['a folder that may not be entered', { folder: 0o000, file: undefined }],
    ['a file that is read-only', { folder: 0o755, file: 0o444 }],
    ['a file that may not be read', { folder: 0o755, file: 0o200 }],
    ['a file in a folder that is read-only', { folder: 0o555, file: 0o644 }],
  ])('is refused: %s', (_, mode) =>
    inFolder(async (outer) => {
      const folder = join(outer, 'data')
      const file = join(folder, 'jobs.db')
      await mkdir(folder)
      if (mode.file !== undefined) {
        await (await open(file)).close()
        await chmod(file, mode.file)
        if (nobody !== undefined) await chown(file, nobody, nobody)
      }
      if (nobody !== undefined) for (const each of [outer, folder]) await chown(each, nobody, nobody)
      await chmod(folder, mode.folder)
      const uid = nobody === undefined ? {} : { uid: nobody }
      const child = startStore({ mode: 'hold', path: file, ...uid })
      try {
        const expected = { code: 'store.forbidden', data: { file } }
        expect(JSON.parse(await child.said)).toEqual(expected)
      } finally {
        await child.end()
        await chmod(folder, 0o755)
      }
    }),
  )
})
