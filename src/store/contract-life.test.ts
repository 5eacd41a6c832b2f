import { describe, expect, it } from 'vitest'
import { faultOf, joinUpdates, stores } from '../../test/support/stores.ts'
import type { Store } from './port.ts'

const one = Uint8Array.of(1)

const asks: readonly (readonly [string, (store: Store) => Promise<unknown>])[] = [
  ['documentNames', (store) => store.documentNames()],
  ['document', (store) => store.document('a')],
  ['append', (store) => store.append('a', one)],
  ['compact', (store) => store.compact('a', { most: 0, merge: joinUpdates })],
  ['jobs', (store) => store.jobs()],
  ['addEntries', (store) => store.addEntries('a', [])],
  ['entriesAfter', (store) => store.entriesAfter('a', { after: 0, most: 1 })],
  ['putWeather', (store) => store.putWeather('a', one)],
  ['weather', (store) => store.weather('a')],
  ['weatherHashes', (store) => store.weatherHashes()],
  ['integrity', (store) => store.integrity()],
]

describe.each(stores)('a store $name', ({ use }) => {
  it('refuses whatever is asked of it once it is closed', () =>
    use(async ({ store }) => {
      expect(asks.map(([name]) => name).sort()).toEqual(
        Object.keys(store)
          .filter((name) => name !== 'close' && name !== 'backupTo')
          .sort(),
      )
      await store.close()
      for (const [name, ask] of asks) expect((await faultOf(ask(store))).code, name).toBe('store.closed')
    }))

  it('is closed twice, at once or later, without a fault', () =>
    use(async ({ store }) => {
      await Promise.all([store.close(), store.close()])
      await store.close()
    }))

  it('finishes what was asked before it was closed', () =>
    use(async ({ store, reopen }) => {
      const asked = Array.from({ length: 20 }, (_, at) => store.append('a', Uint8Array.of(at)))
      const closing = store.close()
      const late = faultOf(store.append('a', one))
      await Promise.all([...asked, closing])
      expect((await late).code).toBe('store.closed')
      if (reopen) expect((await (await reopen()).document('a')).updates.length).toBe(20)
    }))

  it('finds nothing wrong with itself when it is whole', () =>
    use(async ({ store }) => {
      await store.append('a', one)
      expect(await store.integrity()).toEqual([])
    }))

  it('keeps everything over closing and opening, if it keeps anything', () =>
    use(async ({ store, reopen }) => {
      if (!reopen) return
      await store.append('a', one)
      const sequence = await store.addEntries('job', [{ id: 'x', cells: { note: 'n' } }])
      await store.putWeather('h', one)
      const again = await reopen()
      expect((await again.document('a')).updates).toEqual([one])
      expect(await again.entriesAfter('job', { after: 0, most: 9 })).toEqual([
        { id: 'x', sequence, cells: { note: 'n' } },
      ])
      expect(await again.weather('h')).toEqual(one)
      expect(await again.addEntries('job', [{ id: 'y', cells: {} }])).toBeGreaterThan(sequence)
    }))

  it('does the same as the model, whatever is asked in whatever order', () =>
    use(async ({ store }) => {
      const model = stores[0]
      await model?.use(async (other) => {
        for (let seed = 1; seed <= 300; seed += 1)
          expect(await step(store, seed), `step ${seed}`).toEqual(await step(other.store, seed))
        for (const each of ['a', 'b', 'c'])
          expect(await store.document(each)).toEqual(await other.store.document(each))
      })
    }))
})

/** One thing out of all that a store can be asked, chosen by the seed; sequences are left out, they may have gaps. */
async function step(store: Store, seed: number): Promise<unknown> {
  const pick = (most: number, turn: number): number => ((seed * 2_654_435_761 + turn * 40_503) >>> 7) % most
  const name = ['a', 'b', 'c'][pick(3, 1)] ?? 'a'
  const bytes = Uint8Array.of(pick(250, 2), seed % 256)
  const ids = [pick(9, 3), pick(9, 4)].map((id) => ({ id: `e${id}`, cells: { seed: String(seed) } }))
  const kinds: readonly (() => Promise<unknown>)[] = [
    () => store.append(name, bytes),
    () => store.append(name, bytes),
    () => store.compact(name, { most: pick(4, 5), merge: joinUpdates }),
    () => store.document(name),
    async () => (await store.addEntries(name, ids)) > 0,
    async () =>
      (await store.entriesAfter(name, { after: 0, most: 1 + pick(9, 6) })).map(({ id, cells }) => ({
        id,
        cells,
      })),
    () => store.putWeather(`h${pick(4, 7)}`, Uint8Array.of(pick(2, 8))).catch((error) => error.code),
    () => store.weatherHashes(),
    () => store.jobs(),
  ]
  return kinds[pick(kinds.length, 9)]?.()
}
