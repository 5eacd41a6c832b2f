import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Point2 } from './points.ts'
import { holdsPlaces, polygonCrossing } from './polygon-crossing.ts'

const square: readonly Point2[] = [
  [0, 0],
  [2, 0],
  [2, 2],
  [0, 2],
]

/** Round the origin by rising angles: never crosses itself. */
const star = fc
  .array(fc.double({ min: 0.2, max: 3, noNaN: true }), { minLength: 4, maxLength: 12 })
  .map((radii) =>
    radii.map((radius, i): Point2 => {
      const angle = (2 * Math.PI * i) / radii.length
      return [radius * Math.cos(angle), radius * Math.sin(angle)]
    }),
  )

describe('a polygon that is simple', () => {
  it('has no crossing, whichever way it runs and whichever corner comes first', () => {
    fc.assert(
      fc.property(star, fc.nat(11), (corners, by) => {
        const turned = [...corners.slice(by % corners.length), ...corners.slice(0, by % corners.length)]
        expect(polygonCrossing(turned)).toBeUndefined()
        expect(polygonCrossing([...turned].reverse())).toBeUndefined()
      }),
    )
  })

  it('may have a corner twice in a row, or one on a straight side', () => {
    expect(polygonCrossing([[0, 0], [0, 0], ...square.slice(1)])).toBeUndefined()
    expect(polygonCrossing([[0, 0], [1, 0], ...square.slice(1)])).toBeUndefined()
  })
})

describe('a polygon that crosses itself', () => {
  it('is found with the two sides that cross', () => {
    const bow: readonly Point2[] = [
      [0, 0],
      [2, 2],
      [2, 0],
      [0, 2],
    ]
    expect(polygonCrossing(bow)).toEqual({ first: 0, second: 2 })
  })

  it('is found when two corners of four are swapped, wherever it lies', () => {
    fc.assert(
      fc.property(fc.double({ min: -9, max: 9, noNaN: true }), fc.constantFrom(0, 1, 2, 3), (by, at) => {
        const swapped = square.map(([x, y]): Point2 => [x + by, y - by])
        const next = (at + 1) % 4
        const turned = swapped.map((corner, i) =>
          i === at ? swapped[next]! : i === next ? swapped[at]! : corner,
        )
        expect(polygonCrossing(turned)).toBeDefined()
      }),
    )
  })

  it('is found where it only touches itself, and where it runs back on its own side', () => {
    const touches: readonly Point2[] = [
      [0, 0],
      [2, 0],
      [2, 2],
      [1, 0],
      [0, 2],
    ]
    const foldsBack: readonly Point2[] = [
      [0, 0],
      [2, 0],
      [1, 0],
      [1, 1],
    ]
    expect(polygonCrossing(touches)).toBeDefined()
    expect(polygonCrossing(foldsBack)).toBeDefined()
  })

  it('is not asked of fewer than three corners', () => {
    expect(polygonCrossing([])).toBeUndefined()
    expect(polygonCrossing(square.slice(0, 2))).toBeUndefined()
  })
})

describe('places', () => {
  it('are inside, outside, or near enough to the edge, all of them', () => {
    expect(holdsPlaces(square, [[1, 1]], 0)).toBe(true)
    expect(holdsPlaces(square, [[3, 1]], 0)).toBe(false)
    expect(holdsPlaces(square, [[2.01, 1]], 0.02)).toBe(true)
    expect(
      holdsPlaces(
        square,
        [
          [1, 1],
          [2.03, 1],
        ],
        0.02,
      ),
    ).toBe(false)
    expect(holdsPlaces([], [[0, 0]], 1)).toBe(false)
  })
})

it('a polygon of as many corners as a document holds is looked at without a wait', () => {
  const many = Array.from({ length: 5000 }, (_, i): Point2 => {
    const angle = (2 * Math.PI * i) / 5000
    return [Math.cos(angle), Math.sin(angle)]
  })
  expect(polygonCrossing(many)).toBeUndefined()
  expect(polygonCrossing([...many.slice(0, 4000), ...many.slice(4000).reverse()])).toBeDefined()
})
