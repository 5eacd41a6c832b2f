import { readFile, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { inFolder } from '../../test/support/stores.ts'
import { examine } from './examine.ts'
import { openSqliteStore } from './sqlite-store.ts'

const readers = { document: () => undefined, weather: () => undefined }
const damage = { 'no UTF-8': [0xff, 0xfe, 0x80], 'half a pair': [0xed, 0xa0, 0xbd] }
const places = [
  ['QQQQ', 'store.nameDamaged', { kind: 'document' }],
  ['ZZZZ', 'store.nameDamaged', { kind: 'job' }],
  ['VVVV', 'store.nameDamaged', { kind: 'hash' }],
  ['YYYY', 'store.entryDamaged', { job: 'job-ZZZZ', sequence: 1 }],
  ['XXXX', 'store.entryDamaged', { job: 'job-ZZZZ', id: 'id-YYYY', sequence: 1 }],
] as const

describe.each(Object.entries(damage))('a text that has become %s in the file', (_, bytes) => {
  it.each(places)('where %s stood is told as %s, and the rest is read', (text, code, data) =>
    inFolder(async (folder) => {
      const path = join(folder, 'jobs.db')
      await fill(path)
      await spoil(path, { text, bytes })
      const store = await openSqliteStore({ path })
      const { faults, ...counts } = await examine(store, readers)
      await store.close()
      expect(faults.filter((fault) => fault.code !== 'store.fileDamaged')).toEqual([
        { code, data: expect.objectContaining(data) },
      ])
      expect(Object.values(counts).filter((count) => count > 0).length).toBeGreaterThanOrEqual(3)
    }),
  )
})

async function fill(path: string): Promise<void> {
  const store = await openSqliteStore({ path })
  await store.append('work-QQQQ', Uint8Array.of(1))
  await store.addEntries('job-ZZZZ', [{ id: 'id-YYYY', cells: { note: 'note-XXXX' } }])
  await store.putWeather('hash-VVVV', Uint8Array.of(2))
  await store.close()
}

/** In tables and indexes alike. */
async function spoil(path: string, { text, bytes }: { text: string; bytes: readonly number[] }) {
  const file = await readFile(path)
  for (let at = file.indexOf(text); at >= 0; at = file.indexOf(text, at)) file.set(bytes, at)
  await writeFile(path, file)
}
