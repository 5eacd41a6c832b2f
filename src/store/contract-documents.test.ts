import { describe, expect, it } from 'vitest'
import { faultOf, joinUpdates, stores } from '../../test/support/stores.ts'
import { storeLimits } from './limits.ts'

const bytes = (...values: readonly number[]): Uint8Array => Uint8Array.from(values)
const oddNames = [
  ' ',
  'a b',
  "it's; DROP TABLE weather;--",
  'Ünïcode',
  'e\u0301',
  '\u00e9',
  '⚓🚤',
  '../..',
  '%_',
  '\n\t\u0001',
  '__proto__',
  'constructor',
  'ﬀ\uffff',
  'x'.repeat(storeLimits.nameLength),
]
const badNames = ['', 'a\0b', '\0', '\ud800', 'a\udc00b', 'x'.repeat(storeLimits.nameLength + 1)]

describe.each(stores)('documents $name', ({ use }) => {
  it('come back as they were appended, in that order', () =>
    use(async ({ store }) => {
      for (const each of [3, 1, 2]) await store.append('work:a', bytes(each, 0, 255))
      await store.append('work:b', bytes(9))
      const { name, updates } = await store.document('work:a')
      expect(name).toBe('work:a')
      expect(updates).toEqual([bytes(3, 0, 255), bytes(1, 0, 255), bytes(2, 0, 255)])
      expect(updates.every((update) => update.constructor === Uint8Array)).toBe(true)
      expect(await store.documentNames()).toEqual(['work:a', 'work:b'])
    }))

  it('that nobody knows have no updates, and are not made by asking', () =>
    use(async ({ store }) => {
      expect(await store.document('work:none')).toEqual({ name: 'work:none', updates: [] })
      expect(await store.compact('work:none', { most: 0, merge: joinUpdates })).toBe(false)
      expect(await store.documentNames()).toEqual([])
    }))

  it('take an empty update, and one of five megabytes, byte for byte', () =>
    use(async ({ store }) => {
      const large = Uint8Array.from({ length: 5_000_000 }, (_, at) => (at * 31) % 251)
      await store.append('work:a', bytes())
      await store.append('work:a', large)
      const { updates } = await store.document('work:a')
      expect(updates[0]).toEqual(bytes())
      expect(Buffer.compare(updates[1] ?? bytes(), large)).toBe(0)
      expect(updates.length).toBe(2)
    }))

  it('keep what was there when append was called, not what the caller wrote later', () =>
    use(async ({ store }) => {
      const whole = Buffer.from([1, 2, 3, 4, 5])
      const waiting = store.append('work:a', whole.subarray(1, 4))
      whole.fill(9)
      await waiting
      const first = await store.document('work:a')
      expect(first.updates).toEqual([bytes(2, 3, 4)])
      first.updates[0]?.fill(7)
      expect((await store.document('work:a')).updates).toEqual([bytes(2, 3, 4)])
    }))

  it('keep all of 100 updates appended at once, each document in the order of the calls', () =>
    use(async ({ store }) => {
      const calls = Array.from({ length: 100 }, (_, at) => store.append(`work:${at % 3}`, bytes(at)))
      await Promise.all(calls)
      for (const each of [0, 1, 2]) {
        const expected = Array.from({ length: 100 }, (_, at) => at).filter((at) => at % 3 === each)
        const { updates } = await store.document(`work:${each}`)
        expect(updates.map((update) => update[0])).toEqual(expected)
      }
    }))

  it('may bear any name that a text can be, and no two are taken for one', () =>
    use(async ({ store }) => {
      for (const [at, name] of oddNames.entries()) await store.append(name, bytes(at))
      expect(await store.documentNames()).toEqual([...oddNames].sort())
      for (const [at, name] of oddNames.entries())
        expect((await store.document(name)).updates, JSON.stringify(name)).toEqual([bytes(at)])
    }))

  it.each(badNames)('refuse the name %j', (name) =>
    use(async ({ store }) => {
      const data = { kind: 'document', length: name.length, mostLength: storeLimits.nameLength }
      const expected = { code: 'store.badName', data }
      expect(await faultOf(store.append(name, bytes(1)))).toEqual(expected)
      expect(await faultOf(store.document(name))).toEqual(expected)
      expect(await faultOf(store.compact(name, { most: 0, merge: joinUpdates }))).toEqual(expected)
      expect(await store.documentNames()).toEqual([])
    }),
  )

  it.each([
    undefined,
    null,
    true,
    1,
    Number.NaN,
    2 ** 53,
    'text',
    [1, 2],
    new ArrayBuffer(2),
    { length: 1 },
    new Uint16Array(2),
  ])('refuse %s for an update', (update) =>
    use(async ({ store }) => {
      expect((await faultOf(store.append('work:a', update as never))).code).toBe('store.badBytes')
      if (typeof update !== 'string')
        expect((await faultOf(store.append(update as never, bytes(1)))).code).toBe('store.badName')
      expect(await store.documentNames()).toEqual([])
    }),
  )

  it('take an update as large as the limit and refuse one byte more with its size', () =>
    use(async ({ store }) => {
      const most = storeLimits.updateBytes
      await store.append('work:a', new Uint8Array(most))
      const { code, data } = await faultOf(store.append('work:a', new Uint8Array(most + 1)))
      expect(code).toBe('store.updateTooLarge')
      expect(data).toEqual({ document: 'work:a', megabytes: 16.1, mostMegabytes: 16 })
      expect((await store.document('work:a')).updates.length).toBe(1)
    }))
})

describe.each(stores)('compacting $name', ({ use }) => {
  it('puts one update in the place of all, and what comes later stays behind it', () =>
    use(async ({ store }) => {
      for (const each of [1, 2, 3]) await store.append('work:a', bytes(each))
      await store.append('work:b', bytes(8))
      expect(await store.compact('work:a', { most: 2, merge: joinUpdates })).toBe(true)
      await store.append('work:a', bytes(4))
      expect((await store.document('work:a')).updates).toEqual([bytes(1, 2, 3), bytes(4)])
      expect((await store.document('work:b')).updates).toEqual([bytes(8)])
    }))

  it('leaves a document alone that has no more than wanted', () =>
    use(async ({ store }) => {
      for (const each of [1, 2]) await store.append('work:a', bytes(each))
      const merge = () => expect.unreachable('nothing is to be merged')
      expect(await store.compact('work:a', { most: 2, merge })).toBe(false)
      expect((await store.document('work:a')).updates).toEqual([bytes(1), bytes(2)])
    }))

  it('loses nothing that is appended while it runs, in any order of the calls', () =>
    use(async ({ store }) => {
      const work = Array.from({ length: 120 }, (_, at) =>
        at % 10 === 7
          ? store.compact('work:a', { most: 3, merge: joinUpdates })
          : store.append('work:a', bytes(at)),
      )
      await Promise.all(work)
      const expected = Array.from({ length: 120 }, (_, at) => at).filter((at) => at % 10 !== 7)
      const { updates } = await store.document('work:a')
      expect([...joinUpdates(updates)]).toEqual(expected)
      expect(updates.length).toBeLessThan(10)
    }))

  it.each([
    ['throws', () => JSON.parse('{'), 'store.mergeFailed'],
    ['gives nothing', () => undefined, 'store.badBytes'],
    ['gives a text', () => 'merged', 'store.badBytes'],
    ['gives too much', () => new Uint8Array(storeLimits.documentBytes + 1), 'store.documentTooLarge'],
  ])('changes nothing when the merge %s', (_, merge, code) =>
    use(async ({ store }) => {
      for (const each of [1, 2, 3]) await store.append('work:a', bytes(each))
      const compacting = store.compact('work:a', { most: 1, merge: merge as never })
      const appending = store.append('work:a', bytes(4))
      expect((await faultOf(compacting)).code).toBe(code)
      await appending
      expect((await store.document('work:a')).updates).toEqual([bytes(1), bytes(2), bytes(3), bytes(4)])
    }),
  )

  it('hands the merge copies, so that it cannot spoil what is kept when it fails', () =>
    use(async ({ store }) => {
      for (const each of [1, 2]) await store.append('work:a', bytes(each))
      const merge = (updates: readonly Uint8Array[]): Uint8Array => {
        for (const update of updates) update.fill(9)
        throw new Error('spoiled')
      }
      await faultOf(store.compact('work:a', { most: 1, merge }))
      expect((await store.document('work:a')).updates).toEqual([bytes(1), bytes(2)])
    }))

  it.each([-1, 0.5, Number.NaN, Number.POSITIVE_INFINITY, 2 ** 53, true, '1', undefined])(
    'refuses %s as the number to leave',
    (most) =>
      use(async ({ store }) => {
        const options = { most: most as number, merge: joinUpdates }
        expect((await faultOf(store.compact('work:a', options))).code).toBe('store.badCursor')
      }),
  )
})
