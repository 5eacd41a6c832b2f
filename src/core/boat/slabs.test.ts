import { expect, it } from 'vitest'
import type { Point2 } from '#core/geometry'
import { slabPlaces, slabsOf } from './slabs.ts'

const areaOf = (polygons: readonly (readonly Point2[])[], places: readonly number[]): number =>
  slabsOf(polygons, slabPlaces(polygons, places)).reduce(
    (sum, { from, to, inner, outer }) =>
      sum + ((to - from) * (outer[0] - inner[0] + outer[1] - inner[1])) / 2,
    0,
  )

const square: readonly Point2[] = [
  [0, -1],
  [2, -1],
  [2, 1],
  [0, 1],
]
const hole: readonly Point2[] = [
  [0.5, -0.5],
  [0.5, 0.5],
  [1, 0],
]

it('covers a polygon once, and leaves its hole out', () => {
  expect(areaOf([square], [])).toBeCloseTo(4, 12)
  expect(areaOf([square, hole], [0.3, 0.7, 5])).toBeCloseTo(4 - 0.25, 12)
})

it('covers a polygon with a bay', () => {
  const bay: readonly Point2[] = [
    [0, 0],
    [3, 0],
    [3, 2],
    [1.5, 0.5],
    [0, 2],
  ]
  expect(areaOf([bay], [0.2, 1.9])).toBeCloseTo(6 - 2.25, 12)
})
