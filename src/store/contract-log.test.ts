import { describe, expect, it } from 'vitest'
import { faultOf, stores } from '../../test/support/stores.ts'
import { storeLimits } from './limits.ts'
import type { LogEntry, Store } from './port.ts'

const entry = (id: string, note = id): LogEntry => ({ id, cells: { note } })
const everything = { after: 0, most: 1000 }
const idsOf = async (store: Store, job: string): Promise<readonly string[]> =>
  (await store.entriesAfter(job, everything)).map(({ id }) => id)

describe.each(stores)('the log $name', ({ use }) => {
  it('gives entries of a job in the order in which they came, behind a cursor', () =>
    use(async ({ store }) => {
      const first = await store.addEntries('a', [entry('z'), entry('m')])
      const other = await store.addEntries('b', [entry('z')])
      const last = await store.addEntries('a', [entry('b')])
      expect([0 < first, first < other, other < last]).toEqual([true, true, true])
      expect(await idsOf(store, 'a')).toEqual(['z', 'm', 'b'])
      expect(await store.entriesAfter('a', { after: first, most: 9 })).toEqual([
        { ...entry('b'), sequence: last },
      ])
      expect(await store.entriesAfter('a', { after: last, most: 9 })).toEqual([])
      expect(await store.jobs()).toEqual(['a', 'b'])
    }))

  it('is read to its end by pages of any size, nothing twice and nothing left out', () =>
    use(async ({ store }) => {
      const ids = Array.from({ length: 57 }, (_, at) => `entry-${at}`)
      for (const id of ids) await store.addEntries(id.length % 2 ? 'a' : 'b', [entry(id)])
      await store.addEntries(
        'a',
        ids.map((id) => entry(id)),
      )
      for (const most of [1, 7, 56, 57, 58]) {
        const read: string[] = []
        let after = 0
        for (;;) {
          const page = await store.entriesAfter('a', { after, most })
          read.push(...page.map(({ id }) => id))
          after = page.at(-1)?.sequence ?? after
          if (page.length < most) break
        }
        expect([...read].sort(), String(most)).toEqual([...ids].sort())
      }
    }))

  it('keeps the first cells of an id, of two batches and of one', () =>
    use(async ({ store }) => {
      const first = await store.addEntries('a', [entry('x', 'first'), entry('x', 'second')])
      expect(await store.addEntries('a', [entry('x', 'third')])).toBe(first)
      const later = await store.addEntries('a', [entry('x', 'fourth'), entry('y')])
      expect(later).toBeGreaterThan(first)
      const kept = await store.entriesAfter('a', everything)
      expect(kept.map(({ cells }) => cells.note)).toEqual(['first', 'y'])
    }))

  it('gives the newest sequence of the job for a batch without news, and 0 for a job without entries', () =>
    use(async ({ store }) => {
      const newest = await store.addEntries('a', [entry('x')])
      await store.addEntries('b', [entry('y')])
      expect(await store.addEntries('a', [])).toBe(newest)
      expect(await store.addEntries('c', [])).toBe(0)
      expect(await store.entriesAfter('c', everything)).toEqual([])
      expect(await store.jobs()).toEqual(['a', 'b'])
    }))

  it('takes all of a batch or none: one bad entry and nothing is kept, in SQL or before', () =>
    use(async ({ store }) => {
      const newest = await store.addEntries('a', [entry('x')])
      const bad = [
        { id: '', cells: {} },
        { id: 'n\0', cells: {} },
        { id: 'y', cells: { note: true } },
        { id: 'y', cells: null },
        { id: 'y', cells: ['note'] },
        { id: 'y', cells: { note: { deeper: 'x' } } },
        { id: 'y', cells: { note: undefined } },
        { id: 7, cells: {} },
      ]
      for (const each of bad) {
        const { code } = await faultOf(store.addEntries('a', [entry('good'), each as never]))
        expect(code, JSON.stringify(each)).toMatch(/^store\.bad(Name|Cells)$/)
      }
      expect(await idsOf(store, 'a')).toEqual(['x'])
      expect(await store.addEntries('a', [])).toBe(newest)
    }))

  it('gives back every cell letter by letter: NUL, half a pair, emoji, odd keys', () =>
    use(async ({ store, reopen }) => {
      const cells: Record<string, string> = JSON.parse(
        '{"__proto__":"p","constructor":"c","toJSON":"t","":"no key","2":"two","1":"one"}',
      )
      Object.assign(cells, {
        nul: 'a\0b',
        lone: '\ud83d',
        emoji: '⚓🚤👩‍🔧',
        combining: 'e\u0301',
        lines: '\r\n\u2028',
        quotes: '"\'\\',
      })
      await store.addEntries('⚓ job', [{ id: 'é🚤', cells }])
      const read = reopen ? await reopen() : store
      const [kept] = await read.entriesAfter('⚓ job', everything)
      expect(kept?.id).toBe('é🚤')
      expect(Object.entries(kept?.cells ?? {})).toEqual(Object.entries(cells))
    }))

  it('keeps what was there when it was called, and gives out copies', () =>
    use(async ({ store }) => {
      const cells = { note: 'then' }
      const waiting = store.addEntries('a', [{ id: 'x', cells }])
      cells.note = 'later'
      await waiting
      const [kept] = await store.entriesAfter('a', everything)
      Object.assign(kept?.cells ?? {}, { note: 'spoiled' })
      expect((await store.entriesAfter('a', everything))[0]?.cells).toEqual({ note: 'then' })
    }))

  it('takes 100 batches at once that share ids, each id once', () =>
    use(async ({ store }) => {
      const batches = Array.from({ length: 100 }, (_, at) => [entry(`own-${at}`), entry(`shared-${at % 5}`)])
      const newest = await Promise.all(batches.map((batch) => store.addEntries('a', batch)))
      const kept = await store.entriesAfter('a', everything)
      expect(kept.length).toBe(105)
      const sequences = kept.map(({ sequence }) => sequence)
      expect(sequences).toEqual([...new Set(sequences)].sort((one, other) => one - other))
      expect(newest.at(-1)).toBe(sequences.at(-1))
    }))

  it('takes as many entries at once as the limit says, and refuses one more', () =>
    use(async ({ store }) => {
      const most = storeLimits.entriesAtOnce
      const many = Array.from({ length: most }, (_, at) => entry(`e${at}`))
      const { code, data } = await faultOf(store.addEntries('a', [...many, entry('more')]))
      expect([code, data]).toEqual(['store.tooManyEntries', { count: most + 1, mostCount: most }])
      await store.addEntries('a', many)
      expect((await store.entriesAfter('a', { after: 0, most: most + 1 })).length).toBe(most)
    }))

  it('refuses an entry whose cells are larger than the limit, counted in bytes', () =>
    use(async ({ store }) => {
      const room = storeLimits.entryBytes - '{"note":""}'.length
      await store.addEntries('a', [entry('fits', 'x'.repeat(room))])
      for (const note of ['x'.repeat(room + 1), 'é'.repeat(room / 2 + 1)]) {
        const { code, data } = await faultOf(store.addEntries('a', [entry('large', note)]))
        expect(code).toBe('store.entryTooLarge')
        expect(data).toMatchObject({ job: 'a', id: 'large', mostKilobytes: 64 })
      }
      expect(await idsOf(store, 'a')).toEqual(['fits'])
    }))

  it.each([
    [-1, 10],
    [0.5, 10],
    [Number.NaN, 10],
    [2 ** 53, 10],
    [true, 10],
    ['0', 10],
    [undefined, 10],
    [0, 0],
    [0, -1],
    [0, Number.POSITIVE_INFINITY],
    [0, Number.NaN],
    [0, false],
  ])('refuses the cursor after %s, at most %s', (after, most) =>
    use(async ({ store }) => {
      const cursor = { after: after as number, most: most as number }
      expect((await faultOf(store.entriesAfter('a', cursor))).code).toBe('store.badCursor')
    }),
  )
})

describe.each(stores)('weather $name', ({ use }) => {
  it('comes back by its hash, and nothing for a hash that nobody knows', () =>
    use(async ({ store }) => {
      await store.putWeather('b2', Uint8Array.of(0, 1, 255))
      await store.putWeather('a1', Uint8Array.of())
      expect(await store.weather('b2')).toEqual(Uint8Array.of(0, 1, 255))
      expect(await store.weather('a1')).toEqual(Uint8Array.of())
      expect(await store.weather('c3')).toBeUndefined()
      expect(await store.weatherHashes()).toEqual(['a1', 'b2'])
    }))

  it('takes the same bytes again, and refuses others under a known hash', () =>
    use(async ({ store }) => {
      const rows = [Uint8Array.of(1), Uint8Array.of()]
      for (const [at, bytes] of rows.entries()) {
        await store.putWeather(`h${at}`, bytes)
        await store.putWeather(`h${at}`, bytes)
        const fault = await faultOf(store.putWeather(`h${at}`, Uint8Array.of(2)))
        expect(fault).toEqual({ code: 'store.weatherDiffers', data: { hash: `h${at}` } })
        expect(await store.weather(`h${at}`)).toEqual(bytes)
      }
    }))

  it('is refused when it is too large, is no bytes, or its hash is no name', () =>
    use(async ({ store }) => {
      const large = new Uint8Array(storeLimits.weatherBytes + 1)
      expect(await faultOf(store.putWeather('h', large))).toEqual({
        code: 'store.weatherTooLarge',
        data: { hash: 'h', megabytes: 16.1, mostMegabytes: 16 },
      })
      expect((await faultOf(store.putWeather('h', 'bytes' as never))).code).toBe('store.badBytes')
      expect((await faultOf(store.putWeather('', Uint8Array.of(1)))).code).toBe('store.badName')
      expect((await faultOf(store.weather('h\0'))).code).toBe('store.badName')
      expect(await store.weatherHashes()).toEqual([])
    }))
})
