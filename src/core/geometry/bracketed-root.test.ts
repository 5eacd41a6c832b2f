import fc from 'fast-check'
import { expect, it } from 'vitest'
import { bracketedRoot } from './bracketed-root.ts'

const rootOf = (f: (t: number) => number, from: number, to: number) =>
  bracketedRoot(f, { from, to, atFrom: f(from), atTo: f(to) })

it('finds the root of steep, flat and crooked functions', () => {
  expect(rootOf((t) => t ** 9 - 0.5, 0, 1)).toBeCloseTo(0.5 ** (1 / 9), 12)
  expect(rootOf((t) => Math.tanh(1000 * (t - 0.123)), 0, 1)).toBeCloseTo(0.123, 10)
  expect(rootOf((t) => (t < 0.7 ? t - 0.7 : 5 * (t - 0.7)), 0, 1)).toBeCloseTo(0.7, 12)
})

it('gives the end itself when the root lies there, and the nearer end when there is none', () => {
  expect(rootOf((t) => t, 0, 1)).toBe(0)
  expect(rootOf((t) => t - 1, 0, 1)).toBe(1)
  expect(rootOf((t) => t + 1, 0, 1)).toBe(0)
})

it('finds every root of a rising cubic', () => {
  fc.assert(
    fc.property(fc.double({ min: 0.001, max: 0.999, noNaN: true }), (root) => {
      const f = (t: number) => (t - root) * (1 + (t - root) ** 2)
      expect(rootOf(f, 0, 1)).toBeCloseTo(root, 12)
    }),
  )
})
