import fc from 'fast-check'
import { expect, it } from 'vitest'
import { byOrder, orderAfter, orderBetween, orderKeys, orderOf, sortKey } from './order-key.ts'

it.each([0, 1, 2, 17, 36, 100, 5000])(
  '%i keys rise, and there is room before, between and behind them',
  (count) => {
    const keys = orderKeys(count)
    expect(keys).toHaveLength(count)
    const all = [undefined, ...keys, undefined]
    for (let at = 1; at < all.length; at++) {
      const [before, after] = [all[at - 1], all[at]]
      const key = orderBetween(before, after)
      if (before !== undefined) expect(key > before).toBe(true)
      if (after !== undefined) expect(key < after).toBe(true)
    }
  },
)

it('keys made between others, again and again, always lie between and stay usable', () => {
  fc.assert(
    fc.property(fc.array(fc.nat(), { maxLength: 60 }), (places) => {
      const keys: string[] = []
      for (const place of places) {
        const at = place % (keys.length + 1)
        keys.splice(at, 0, orderBetween(keys[at - 1], keys[at]))
      }
      expect(keys).toEqual([...new Set(keys)].sort())
      for (const key of keys) expect(orderOf(key)).toBe(key)
    }),
  )
})

it('a key behind people’s own comes behind it', () => {
  for (const own of ['1', '10', 'zzz', 'A', '~', 'a-b']) expect(orderAfter(own) > own).toBe(true)
})

it('a key between people’s own lies between where there is room, and behind the first where there is none', () => {
  expect(orderBetween('1', '2') > '1' && orderBetween('1', '2') < '2').toBe(true)
  expect(orderBetween('1', '10') > '1').toBe(true)
})

it.each(['', ' ', 'é', 'x'.repeat(200), 7, null])('%j is no key', (key) =>
  expect(orderOf(key)).toBeUndefined(),
)

it('items sort by key, then by id; those without a key come last, behind them those with an unusable one', () => {
  const orders = { e: 'é', d: undefined, b: '2', a: '2', c: undefined, z: '1' }
  const items = Object.entries(orders).map(([id, order]) => ({ id, sortKey: sortKey(order) }))
  expect(items.sort(byOrder).map(({ id }) => id)).toEqual(['z', 'a', 'b', 'c', 'd', 'e'])
})
