import { describe, expect, it } from 'vitest'
import { sectionCurve, sectionPointAt } from './section-curve.ts'

const arc = (angles: readonly number[]) => angles.map((a) => ({ y: Math.cos(a), z: Math.sin(a) }))
const quarter = Array.from({ length: 8 }, (_, i) => (i * Math.PI) / 14)

describe('a section curve', () => {
  it('is round through points of a circle, with the length of the arc', () => {
    const curve = sectionCurve(arc(quarter))
    expect(curve.girth).toBeCloseTo(Math.PI / 2, 4)
    for (const v of [0.05, 0.33, 0.5, 0.81]) {
      const { y, z } = sectionPointAt(curve, v)
      expect(Math.hypot(y, z)).toBeCloseTo(1, 3)
    }
  })

  it('has each point at its share of the true length, not of the chords', () => {
    const angles = [0, 0.05, 0.1, 0.9, 1.4, Math.PI / 2]
    const { knots } = sectionCurve(arc(angles)).y
    knots.forEach((knot, i) => {
      expect(Math.abs(knot - angles[i]! / (Math.PI / 2))).toBeLessThan(0.002)
    })
  })

  it('goes through every point', () => {
    const points = [
      { y: 0, z: -0.5 },
      { y: 0.7, z: -0.4 },
      { y: 1.1, z: 0 },
      { y: 1.2, z: 0.9 },
    ]
    const curve = sectionCurve(points)
    points.forEach((point, i) => {
      const { y, z } = sectionPointAt(curve, curve.y.knots[i]!)
      expect([y, z]).toEqual([expect.closeTo(point.y, 12), expect.closeTo(point.z, 12)])
    })
  })

  it('is straight through two points and through points in line', () => {
    const inLine = [0, 0.1, 0.7, 1].map((t) => ({ y: 3 * t, z: 4 * t }))
    expect(sectionCurve(inLine).girth).toBeCloseTo(5, 12)
    expect(sectionCurve([inLine[0]!, inLine[3]!]).girth).toBeCloseTo(5, 12)
    expect(sectionPointAt(sectionCurve(inLine), 0.25).y).toBeCloseTo(0.75, 12)
  })

  it('counts a repeated point once and stays put in a single one', () => {
    const twice = [quarter[0]!, quarter[1]!, quarter[1]!, quarter[2]!]
    expect(sectionCurve(arc(twice))).toEqual(sectionCurve(arc(quarter.slice(0, 3))))
    const single = sectionCurve([{ y: 0, z: 0.4 }])
    expect(single.girth).toBe(0)
    expect(sectionPointAt(single, 0.6)).toEqual({ y: 0, z: expect.closeTo(0.4, 12), yV: 0, zV: 0 })
  })
})
