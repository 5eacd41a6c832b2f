import { describe, expect, it } from 'vitest'
import { lineTotal } from './line.ts'

describe('lineTotal', () => {
  it.each([
    [1.005, 100, 101],
    [2.5, 1, 3],
    [2.4, 1, 2],
    [0.1, 3, 0],
    [3, 2999, 8997],
    [12.25, 4550, 55738],
    [-2.5, 1, -2],
    [0, 4550, 0],
    [0, -4550, 0],
  ])('makes %s × %s coins %s, half up', (quantity, unitCoins, expected) => {
    expect(lineTotal({ quantity, unitCoins })).toBe(expected)
  })

  it.each([
    [Number.NaN, 1],
    [Number.POSITIVE_INFINITY, 1],
    [1, 0.5],
    [2, 2 ** 52],
    [1, 2 ** 53],
  ])('refuses %s × %s', (quantity, unitCoins) => {
    expect(lineTotal({ quantity, unitCoins })).toBeUndefined()
  })
})
