import { link, readdir, symlink } from 'node:fs/promises'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { type Start, startStore } from '../../test/support/store-child.ts'
import { faultOf, inFolder } from '../../test/support/stores.ts'
import { openSqliteStore } from './sqlite-store.ts'

const quick = { lockWaitMs: 0 }

async function whileHeld(start: Start, work: (end: () => Promise<void>) => Promise<void>): Promise<void> {
  const child = startStore(start)
  try {
    expect(await child.said).toBe('open')
    await work(child.end)
  } finally {
    await child.end()
  }
}

async function leftByAKilledProcess(path: string): Promise<void> {
  await whileHeld({ mode: 'hold', path }, async () => {})
}

describe('a database file', () => {
  it.each(['hold', 'reopen', 'twice'] as const)(
    'that another process has is refused, by any of its names (%s)',
    (mode) =>
      inFolder(async (folder) => {
        const path = join(folder, 'jobs.db')
        await whileHeld({ mode, path }, async () => {
          await symlink(path, join(folder, 'symbolic.db'))
          await link(path, join(folder, 'hard.db'))
          for (const name of ['jobs.db', 'symbolic.db', 'hard.db']) {
            const file = join(folder, name)
            const fault = await faultOf(openSqliteStore({ path: file, ...quick }))
            expect(fault).toEqual({ code: 'store.locked', data: { file } })
          }
        })
      }),
  )

  it('is free at once when the process that had it is killed, with all that it held', () =>
    inFolder(async (folder) => {
      const path = join(folder, 'jobs.db')
      const store = await openSqliteStore({ path })
      await store.append('work:a', Uint8Array.of(7))
      await store.close()
      for (let turn = 0; turn < 3; turn += 1)
        await whileHeld({ mode: 'hold', path }, async (end) => {
          await end()
          const again = await openSqliteStore({ path, ...quick })
          expect((await again.document('work:a')).updates).toEqual([Uint8Array.of(7)])
          await again.close()
        })
      expect(await readdir(folder)).toEqual(['jobs.db'])
    }))

  it.each([
    ['make it', () => Promise.resolve()],
    ['find it as a killed process left it', leftByAKilledProcess],
  ] as const)('goes to one of two processes that %s at the same moment', (_how, before) =>
    inFolder(async (folder) => {
      for (let round = 0; round < 8; round += 1) {
        const path = join(folder, `jobs-${round}.db`)
        await before(path)
        const atMs = Date.now() + 600
        const both = [1, 2].map(() => startStore({ mode: 'hold', path, start: 200, atMs }))
        const said = await Promise.all(both.map((child) => child.said))
        await Promise.all(both.map((child) => child.end()))
        expect([...said].sort()).toEqual([
          'open',
          JSON.stringify({ code: 'store.locked', data: { file: path } }),
        ])
      }
    }),
  )

  it('is waited for as long as was asked', () =>
    inFolder(async (folder) => {
      const path = join(folder, 'jobs.db')
      const store = await openSqliteStore({ path })
      const before = performance.now()
      expect((await faultOf(openSqliteStore({ path, lockWaitMs: 300 }))).code).toBe('store.locked')
      expect(performance.now() - before).toBeGreaterThan(250)
      await store.append('work:a', Uint8Array.of(1))
      await store.close()
    }))

  it('is free in the same process once it is closed, however often', () =>
    inFolder(async (folder) => {
      const path = join(folder, 'jobs.db')
      for (let turn = 0; turn < 20; turn += 1) {
        const store = await openSqliteStore({ path, ...quick })
        expect((await store.document('work:a')).updates.length).toBe(turn)
        await store.append('work:a', Uint8Array.of(turn))
        await faultOf(store.compact('work:a', { most: 0, merge: () => JSON.parse('{') }))
        await store.close()
      }
      const unused = await openSqliteStore({ path, ...quick })
      await unused.close()
      await (await openSqliteStore({ path, ...quick })).close()
      expect(await readdir(folder)).toEqual(['jobs.db'])
    }))
})
