import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Point2 } from './points.ts'
import { polygonArea, polygonPerimeter, signedArea } from './polygon.ts'
import {
  insetRoundedRectangle,
  roundedRectangleArea,
  roundedRectanglePerimeter,
} from './rounded-rectangle.ts'

const lShape: readonly Point2[] = [
  [0, 0],
  [4, 0],
  [4, 1],
  [1, 1],
  [1, 3],
  [0, 3],
]

describe('a polygon', () => {
  it('has its area and the length round it', () => {
    expect(polygonArea(lShape)).toBe(6)
    expect(polygonPerimeter(lShape)).toBe(14)
  })

  it('is negative run the other way', () => {
    expect(signedArea([...lShape].reverse())).toBe(-6)
  })

  it('keeps both wherever it is moved and whichever corner comes first', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 5 }), fc.double({ min: -9, max: 9, noNaN: true }), (k, by) => {
        const turned = [...lShape.slice(k), ...lShape.slice(0, k)]
        const moved = turned.map(([x, y]): Point2 => [x + by, y - by])
        expect(polygonArea(moved)).toBeCloseTo(6, 9)
        expect(polygonPerimeter(moved)).toBeCloseTo(14, 9)
      }),
    )
  })

  it('is nothing without corners', () => {
    expect(polygonArea([])).toBe(0)
    expect(polygonPerimeter([])).toBe(0)
  })
})

describe('a rectangle with round corners', () => {
  const sheet = { length: 0.6, width: 0.4, radius: 0.05 }

  it('is near a polygon of many corners', () => {
    const quarter = Array.from({ length: 400 }, (_, i) => ((i / 399) * Math.PI) / 2)
    const corners: readonly (readonly [number, number, number])[] = [
      [0.25, 0.15, 0],
      [-0.25, 0.15, 1],
      [-0.25, -0.15, 2],
      [0.25, -0.15, 3],
    ]
    const polygon = corners.flatMap(([x, y, turn]) =>
      quarter.map((angle): Point2 => {
        const at = angle + (turn * Math.PI) / 2
        return [x + 0.05 * Math.cos(at), y + 0.05 * Math.sin(at)]
      }),
    )
    expect(roundedRectangleArea(sheet)).toBeCloseTo(polygonArea(polygon), 7)
    expect(roundedRectanglePerimeter(sheet)).toBeCloseTo(polygonPerimeter(polygon), 6)
  })

  it('loses the strip round its edge when set in', () => {
    const margin = 0.02
    const inside = insetRoundedRectangle(sheet, margin)!
    const strip = roundedRectanglePerimeter(sheet) * margin - Math.PI * margin * margin
    expect(roundedRectangleArea(sheet) - roundedRectangleArea(inside)).toBeCloseTo(strip, 12)
    expect(inside.radius).toBeCloseTo(0.03, 12)
  })

  it('gets square corners once the margin passes the radius, and is gone at half its width', () => {
    expect(insetRoundedRectangle(sheet, 0.06)?.radius).toBe(0)
    expect(insetRoundedRectangle(sheet, 0.2)).toBeUndefined()
  })
})
