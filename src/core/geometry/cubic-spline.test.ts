import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { cubicSpline, greatestOf, keepRising, splineAt } from './cubic-spline.ts'

const cubic = (t: number) => 2 - t + 3 * t * t - 0.5 * t ** 3
const uneven = [0, 0.2, 1, 1.1, 2.5, 3]

describe('a spline', () => {
  it('gives any cubic back exactly, also beyond its ends', () => {
    const spline = cubicSpline({ knots: uneven, values: uneven.map(cubic) })
    for (const t of [-0.5, 0, 0.1, 0.7, 1.05, 2, 3, 3.4]) {
      expect(splineAt(spline, t).value).toBeCloseTo(cubic(t), 11)
      expect(splineAt(spline, t).slope).toBeCloseTo(-1 + 6 * t - 1.5 * t * t, 10)
    }
  })

  it('is a parabola through three samples, a line through two and level through one', () => {
    const three = cubicSpline({ knots: [0, 1, 3], values: [0, 1, 9] })
    expect(splineAt(three, 2).value).toBeCloseTo(4, 12)
    expect(splineAt(cubicSpline({ knots: [0, 2], values: [1, 5] }), 0.5).value).toBe(2)
    expect(splineAt(cubicSpline({ knots: [0], values: [7] }), 3)).toEqual({ value: 7, slope: 0 })
  })

  it('has no corner and no jump in bend at its knots', () => {
    const bend = (t: number, h: number) =>
      (splineAt(wavy, t + h).slope - splineAt(wavy, t + 2 * h).slope) / -h
    const wavy = cubicSpline({ knots: uneven, values: uneven.map(Math.sin) })
    for (const knot of uneven.slice(1, -1)) {
      expect(bend(knot, 1e-6)).toBeCloseTo(bend(knot, -1e-6), 4)
    }
  })

  it('has its greatest value where the cubic is level, or at an end', () => {
    const knots = [0, 0.4, 1, 1.5]
    const of = (f: (t: number) => number) => greatestOf(cubicSpline({ knots, values: knots.map(f) }))
    // t² (3 − 2t) is level at 1; 3t² − 4t + 1/2 = 0 where t (1 − t)² − t/2 is; a rising line is greatest at its end.
    const hump = of((t) => t * (1 - t) ** 2 - t * 0.5)
    expect(of((t) => t * t * (3 - 2 * t)).value).toBeCloseTo(1, 12)
    expect(of((t) => -((t - 1.2) ** 2))).toEqual({ at: expect.closeTo(1.2, 9), value: expect.closeTo(0, 12) })
    expect(of((t) => 2 * t)).toEqual({ at: 1.5, value: 3 })
    const level = (4 - Math.sqrt(10)) / 6
    expect(hump.at).toBeCloseTo(level, 9)
  })

  it('finds the greatest value of any spline as a dense search does', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: -5, max: 5, noNaN: true }), { minLength: 2, maxLength: 6 }),
        (values) => {
          const knots = values.map((_, i) => i + 0.3 * Math.sin(i))
          const spline = cubicSpline({ knots, values })
          const places = Array.from(
            { length: 4001 },
            (_, i) => knots[0]! + ((knots.at(-1)! - knots[0]!) * i) / 4000,
          )
          const dense = Math.max(...places.map((t) => splineAt(spline, t).value))
          const { at, value } = greatestOf(spline)
          expect(splineAt(spline, at).value).toBeCloseTo(value, 9)
          expect(value).toBeGreaterThanOrEqual(dense - 1e-9)
          expect(value - dense).toBeLessThan(1e-3)
        },
      ),
    )
  })

  it('comes sixteen times nearer with half the spacing', () => {
    const worst = (n: number) => {
      const knots = Array.from({ length: n + 1 }, (_, i) => (3 * i) / n)
      const spline = cubicSpline({ knots, values: knots.map(Math.sin) })
      const places = Array.from({ length: 301 }, (_, i) => i / 100)
      return Math.max(...places.map((t) => Math.abs(splineAt(spline, t).value - Math.sin(t))))
    }
    expect(worst(10) / worst(20)).toBeGreaterThan(12)
  })
})

describe('a spline kept rising', () => {
  const steps = fc.array(fc.double({ min: 0.01, max: 10, noNaN: true }), { minLength: 2, maxLength: 12 })
  const running = (parts: readonly number[]) =>
    [0, ...parts].map((_, i) => parts.slice(0, i).reduce((sum, part) => sum + part, 0))

  it('never falls between rising samples and still meets them', () => {
    fc.assert(
      fc.property(steps, steps, (a, b) => {
        const n = Math.min(a.length, b.length)
        const [knots, values] = [running(a.slice(0, n)), running(b.slice(0, n))]
        const spline = keepRising(cubicSpline({ knots, values }))
        const end = knots.at(-1)!
        const samples = Array.from({ length: 200 }, (_, i) => splineAt(spline, (end * i) / 199).value)
        for (let i = 1; i < samples.length; i++) expect(samples[i]! - samples[i - 1]!).toBeGreaterThan(-1e-9)
        knots.forEach((knot, i) => {
          expect(splineAt(spline, knot).value).toBeCloseTo(values[i]!, 9)
        })
      }),
    )
  })

  it('leaves a spline alone that rises by itself', () => {
    const spline = cubicSpline({ knots: uneven, values: uneven.map((t) => t * t + t) })
    expect(keepRising(spline).slopes).toEqual(spline.slopes)
  })

  it('holds back one that would not', () => {
    const spline = cubicSpline({ knots: [0, 1, 2, 3], values: [0, 0.01, 5, 5.01] })
    expect(Math.min(...spline.slopes)).toBeLessThan(0)
    expect(Math.min(...keepRising(spline).slopes)).toBe(0)
  })
})
