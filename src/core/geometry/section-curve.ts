/**
 * A smooth curve through points in a plane of constant x, by normalised girth: 0 at the first point, 1 at the last.
 * Axes y across and z up, metres. Arrays belong to the curve and are never changed after it is made.
 */

import { cubicSpline, type HermiteWeights, hermiteWeights, type Spline, splineAt } from './cubic-spline.ts'
import { gauss4, integrate } from './gauss-legendre.ts'

export type SectionPoint = { readonly y: number; readonly z: number }

export type SectionCurve = {
  /** Length along the curve. */
  readonly girth: number
  /** y and z over the normalised girth, on the same knots. */
  readonly y: Spline
  readonly z: Spline
}

/** Points nearer than this are one point: a hundredth of what any tape measures. */
const sameWithin = 1e-6

const withoutRepeats = (points: readonly SectionPoint[]): readonly SectionPoint[] => {
  const kept: SectionPoint[] = []
  for (const point of points) {
    const last = kept.at(-1)
    if (!last || Math.hypot(point.y - last.y, point.z - last.z) > sameWithin) kept.push(point)
  }
  return kept
}

const running = (lengths: readonly number[]): readonly number[] => {
  const sums = [0]
  for (const length of lengths) sums.push(sums.at(-1)! + length)
  return sums
}

const through = (points: readonly SectionPoint[], knots: readonly number[]) => ({
  y: cubicSpline({ knots, values: points.map((p) => p.y) }),
  z: cubicSpline({ knots, values: points.map((p) => p.z) }),
})

/** Length of each piece of a fitted curve. */
const pieceLengths = ({ y, z }: { readonly y: Spline; readonly z: Spline }): readonly number[] =>
  y.knots.slice(1).map((to, i) => {
    const step = to - y.knots[i]!
    const rate = ({ values, slopes }: Spline, { dValue0, dSlope0, dValue1, dSlope1 }: HermiteWeights) =>
      dValue0 * values[i]! + dSlope0 * slopes[i]! + dValue1 * values[i + 1]! + dSlope1 * slopes[i + 1]!
    const speed = (s: number) => {
      const w = hermiteWeights(s, step)
      const [dy, dz] = [rate(y, w), rate(z, w)]
      return Math.sqrt(dy * dy + dz * dz)
    }
    return step * integrate(gauss4, { of: speed, from: 0, to: 1 })
  })

const normalised = (spline: Spline, girth: number): Spline => ({
  knots: spline.knots.map((knot) => knot / girth),
  values: spline.values,
  slopes: spline.slopes.map((slope) => slope * girth),
})

const single = ({ y, z }: SectionPoint): SectionCurve => ({
  girth: 0,
  y: { knots: [0, 1], values: [y, y], slopes: [0, 0] },
  z: { knots: [0, 1], values: [z, z], slopes: [0, 0] },
})

/**
 * Spline through the points, its knots at the true length along the curve (chords first, then twice refitted to the
 * measured lengths), so that equal steps of the parameter are nearly equal steps along the girth.
 * Repeated points count once; a curve of one point has girth 0 and stays there.
 */
export const sectionCurve = (points: readonly SectionPoint[]): SectionCurve => {
  const distinct = withoutRepeats(points)
  if (distinct.length < 2) return single(distinct[0] ?? { y: 0, z: 0 })
  const chords = distinct.slice(1).map((p, i) => Math.hypot(p.y - distinct[i]!.y, p.z - distinct[i]!.z))
  let fit = through(distinct, running(chords))
  if (distinct.length > 2)
    for (let pass = 0; pass < 2; pass++) fit = through(distinct, running(pieceLengths(fit)))
  const girth = running(pieceLengths(fit)).at(-1)!
  const length = fit.y.knots.at(-1)!
  return { girth, y: normalised(fit.y, length), z: normalised(fit.z, length) }
}

/** Point and tangent (by normalised girth) at `v` from 0 to 1. */
export const sectionPointAt = (curve: SectionCurve, v: number) => {
  const y = splineAt(curve.y, v)
  const z = splineAt(curve.z, v)
  return { y: y.value, z: z.value, yV: y.slope, zV: z.slope }
}
