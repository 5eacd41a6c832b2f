import { describe, expect, it } from 'vitest'
import { polygonArea } from '#core/geometry'
import { type DeckOffset, edgeOfOffsets } from './offsets.ts'

const row = (x: number, outer: number, inner = 0): DeckOffset => ({ x, outer, inner })

/** A parabola from nothing at the ends to 1 m: under it lie two thirds of the box. */
const parabola = Array.from({ length: 9 }, (_, i) => row(i * 0.5, 1 - (i / 4 - 1) ** 2))

describe('offsets', () => {
  it('with straight edges are the trapezoidal rule', () => {
    const rows = [row(0, 0.6), row(0.5, 0.9), row(1, 1), row(1.5, 0.7)]
    const rule = 0.5 * ((0.6 + 0.7) / 2 + 0.9 + 1)
    expect(polygonArea(edgeOfOffsets(rows, false).edge)).toBeCloseTo(rule, 12)
  })

  it('with an inner edge are the strip between the two, in any order of the rows', () => {
    const strip = [row(2, 1.2, 0.9), row(0, 1, 0.8), row(1, 1.1, 0.8)]
    expect(polygonArea(edgeOfOffsets(strip, false).edge)).toBeCloseTo(0.25 + 0.3, 12)
  })

  it('with a fair edge follow a parabola to its closed form, which straight edges miss', () => {
    const exact = (2 / 3) * 4
    const fair = polygonArea(edgeOfOffsets(parabola, true).edge)
    const straight = polygonArea(edgeOfOffsets(parabola, false).edge)
    expect(Math.abs(fair / exact - 1)).toBeLessThan(1e-4)
    // The trapezoidal rule falls short by h² ÷ 12 × the fall of slope over the length.
    expect(exact - straight).toBeCloseTo((0.5 ** 2 / 12) * 2, 9)
  })

  it('never swing over the centreline between rows', () => {
    const pinched = [row(0, 1), row(1, 0), row(2, 0), row(3, 1)]
    expect(Math.min(...edgeOfOffsets(pinched, true).edge.map(([, y]) => y))).toBe(0)
  })

  it('say what is wrong with them and give no edge', () => {
    const codes = (rows: readonly DeckOffset[]) => edgeOfOffsets(rows, false).notes.map(({ code }) => code)
    expect(codes([row(0, 1)])).toEqual(['boat.deckTooFewOffsets'])
    expect(codes([row(0, 1), row(1, 1), row(1, 0.9)])).toEqual(['boat.deckOffsetTwice'])
    expect(codes([row(0, 1), row(1, 0.5, 0.8)])).toEqual(['boat.deckOffsetInside'])
    expect(edgeOfOffsets([row(0, 1)], false).edge).toEqual([])
  })
})
