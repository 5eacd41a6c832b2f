import { describe, expect, it } from 'vitest'
import { barbCounts, barbShape, knotsOf, staffLong } from './wind-barb.ts'

const kn = (knots: number): number => (knots * 1852) / 3600
const drawnAs = (knots: number) => {
  const { calm, pennants, whole, half } = barbCounts(kn(knots))
  return calm ? 'calm' : [pennants, whole, half]
}

describe('a wind barb', () => {
  it.each([
    [0, 'calm'],
    [0.9, 'calm'],
    [1, [0, 0, 0]],
    [2.4, [0, 0, 0]],
    [2.6, [0, 0, 1]],
    [5, [0, 0, 1]],
    [10, [0, 1, 0]],
    [25, [0, 2, 1]],
    [48, [1, 0, 0]],
    [65, [1, 1, 1]],
    [115, [2, 1, 1]],
  ])('of %s kn has pennants, whole and half feathers %j', (knots, drawn) => {
    expect(drawnAs(knots)).toEqual(drawn)
    expect(knotsOf(kn(knots))).toBeCloseTo(knots, 12)
  })

  const shape = (knots: number, fromDeg: number, south = false) =>
    barbShape({ counts: barbCounts(kn(knots)), fromRad: (fromDeg * Math.PI) / 180, south })

  it('has its staff towards where the wind comes from', () => {
    const end = (fromDeg: number) => shape(10, fromDeg).staff
    expect([0, 90, 180, 270].map(end)).toEqual([
      `M0 0L0 ${-staffLong}`,
      `M0 0L${staffLong} 0`,
      `M0 0L0 ${staffLong}`,
      `M0 0L${-staffLong} 0`,
    ])
  })

  it('has its feathers on the side of low pressure: north of a west wind, and south of the equator south of it', () => {
    // Staff 24 px to the left; a whole feather is 9 off it and leans 4.5 outward, the half one next, 4 px in.
    expect(shape(15, 270).feathers).toBe('M-24 0L-28.5 -9M-20 0L-22.25 -4.5')
    expect(shape(15, 270, true).feathers).toBe('M-24 0L-28.5 9M-20 0L-22.25 4.5')
  })

  it('has a lone half feather in from the end, and pennants at the end before the feathers', () => {
    expect(shape(5, 0).feathers).toBe('M0 -20L4.5 -22.25')
    expect(shape(60, 0)).toMatchObject({
      pennants: 'M0 -24L9 -21.5L0 -19Z',
      feathers: 'M0 -17L9 -21.5',
    })
  })

  it('is no line at all in a calm', () => {
    expect(shape(0, 270)).toEqual({ staff: '', feathers: '', pennants: '' })
  })
})
