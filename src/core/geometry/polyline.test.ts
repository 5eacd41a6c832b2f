import { describe, expect, it } from 'vitest'
import { clipPolyline, polylineLength, polylinesLength } from './polyline.ts'

const zigzag = [0, 1, 0, 1, 0].map((z, i) => ({ x: i, y: 0, z }))

describe('a polyline', () => {
  it('is as long as its pieces', () => {
    expect(polylineLength(zigzag)).toBeCloseTo(4 * Math.SQRT2, 12)
    expect(polylineLength([{ x: 1, y: 1, z: 1 }])).toBe(0)
  })

  it('clipped at half height leaves its peaks, cut where it crosses', () => {
    const peaks = clipPolyline(zigzag, ({ z }) => z - 0.5)
    expect(peaks.map((part) => part.map(({ x, z }) => [x, z]))).toEqual([
      [
        [0.5, 0.5],
        [1, 1],
        [1.5, 0.5],
      ],
      [
        [2.5, 0.5],
        [3, 1],
        [3.5, 0.5],
      ],
    ])
  })

  it('clipped from both sides adds up to itself', () => {
    const parts = [...clipPolyline(zigzag, ({ z }) => z - 0.3), ...clipPolyline(zigzag, ({ z }) => 0.3 - z)]
    expect(polylinesLength(parts)).toBeCloseTo(polylineLength(zigzag), 12)
  })

  it('keeps all or nothing when nothing crosses', () => {
    expect(clipPolyline(zigzag, () => 1)).toEqual([zigzag])
    expect(clipPolyline(zigzag, () => -1)).toEqual([])
    expect(clipPolyline([], () => 1)).toEqual([])
  })
})
