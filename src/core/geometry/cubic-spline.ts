/**
 * Cubic splines of one variable, kept as knots, values and slopes (piecewise cubic Hermite).
 * Arrays belong to the spline and are never changed after it is made.
 */

export type Spline = {
  /** Strictly rising. */
  readonly knots: readonly number[]
  readonly values: readonly number[]
  /** First derivative at each knot. */
  readonly slopes: readonly number[]
}

export type Samples = { readonly knots: readonly number[]; readonly values: readonly number[] }

/** Thomas algorithm for a tridiagonal system; the arrays are its own and are overwritten. */
const solveTridiagonal = (
  lower: number[],
  diagonal: number[],
  upper: number[],
  right: number[],
): number[] => {
  const n = diagonal.length
  for (let i = 1; i < n; i++) {
    const factor = lower[i]! / diagonal[i - 1]!
    diagonal[i]! -= factor * upper[i - 1]!
    right[i]! -= factor * right[i - 1]!
  }
  for (let i = n - 1; i >= 0; i--) {
    const next = i + 1 < n ? upper[i]! * right[i + 1]! : 0
    right[i] = (right[i]! - next) / diagonal[i]!
  }
  return right
}

/** Slopes of the one parabola through three points. */
const parabolaSlopes = (steps: readonly number[], secants: readonly number[]): number[] => {
  const [first, second] = [steps[0]!, steps[1]!]
  const bend = (secants[1]! - secants[0]!) / (first + second)
  return [secants[0]! - bend * first, secants[0]! + bend * first, secants[1]! + bend * second]
}

/** Slope equation of the end interval when the third derivative runs on through the knot beside it. */
const endEquation = (h0: number, h1: number, s0: number, s1: number) => {
  const both = h0 + h1
  return { diagonal: h1, beside: both, right: ((h0 + 2 * both) * h1 * s0 + h0 * h0 * s1) / both }
}

const notAKnotSlopes = (steps: readonly number[], secants: readonly number[]): number[] => {
  const n = steps.length + 1
  const first = endEquation(steps[0]!, steps[1]!, secants[0]!, secants[1]!)
  const last = endEquation(steps[n - 2]!, steps[n - 3]!, secants[n - 2]!, secants[n - 3]!)
  const lower = [0]
  const diagonal = [first.diagonal]
  const upper = [first.beside]
  const right = [first.right]
  for (let i = 1; i < n - 1; i++) {
    const [before, after] = [steps[i - 1]!, steps[i]!]
    lower.push(after)
    diagonal.push(2 * (before + after))
    upper.push(before)
    right.push(3 * (after * secants[i - 1]! + before * secants[i]!))
  }
  lower.push(last.beside)
  diagonal.push(last.diagonal)
  upper.push(0)
  right.push(last.right)
  return solveTridiagonal(lower, diagonal, upper, right)
}

/**
 * Twice continuously differentiable cubic spline through the samples, with the not-a-knot condition at both ends;
 * a parabola through three samples, a line through two, a constant through one. Fourth order in the spacing.
 * Source: de Boor, A Practical Guide to Splines, 1978, chapter IV.
 */
export const cubicSpline = ({ knots, values }: Samples): Spline => {
  const steps = knots.slice(1).map((knot, i) => knot - knots[i]!)
  const secants = steps.map((step, i) => (values[i + 1]! - values[i]!) / step)
  const slopes =
    knots.length < 2
      ? knots.map(() => 0)
      : knots.length === 2
        ? [secants[0]!, secants[0]!]
        : knots.length === 3
          ? parabolaSlopes(steps, secants)
          : notAKnotSlopes(steps, secants)
  return { knots, values, slopes }
}

/**
 * The same spline with slopes held back where it would turn round between rising samples, so that it never falls.
 * Source: Hyman, Accurate monotonicity preserving cubic interpolation, SIAM J. Sci. Stat. Comput. 4, 1983, eq. 2.6.
 */
export const keepRising = ({ knots, values, slopes }: Spline): Spline => {
  const secant = (i: number) => (values[i + 1]! - values[i]!) / (knots[i + 1]! - knots[i]!)
  const last = knots.length - 2
  const held = slopes.map((slope, i) => {
    const steepest = 3 * Math.min(secant(Math.max(i - 1, 0)), secant(Math.min(i, last)))
    return Math.min(Math.max(slope, 0), steepest)
  })
  return { knots, values, slopes: knots.length < 2 ? slopes : held }
}

/** Index of the interval that holds `t`; the first or last one outside the knots. */
export const intervalAt = (knots: readonly number[], t: number): number => {
  let low = 0
  let high = Math.max(knots.length - 2, 0)
  while (low < high) {
    const middle = (low + high + 1) >> 1
    if (knots[middle]! <= t) low = middle
    else high = middle - 1
  }
  return low
}

/** The four Hermite weights and their derivatives by `t` on an interval of length `step`, at its fraction `s`. */
export type HermiteWeights = {
  readonly value0: number
  readonly slope0: number
  readonly value1: number
  readonly slope1: number
  readonly dValue0: number
  readonly dSlope0: number
  readonly dValue1: number
  readonly dSlope1: number
}

export const hermiteWeights = (s: number, step: number): HermiteWeights => {
  const r = 1 - s
  const rise = (6 * s * r) / step
  return {
    value0: r * r * (1 + 2 * s),
    slope0: step * s * r * r,
    value1: s * s * (1 + 2 * r),
    slope1: -step * s * s * r,
    dValue0: -rise,
    dSlope0: r * (r - 2 * s),
    dValue1: rise,
    dSlope1: s * (s - 2 * r),
  }
}

export type SplinePoint = { readonly value: number; readonly slope: number }

/** Value and first derivative at `t`; outside the knots the end cubic runs on. */
export const splineAt = ({ knots, values, slopes }: Spline, t: number): SplinePoint => {
  if (knots.length < 2) return { value: values[0]!, slope: 0 }
  const i = intervalAt(knots, t)
  const step = knots[i + 1]! - knots[i]!
  const w = hermiteWeights((t - knots[i]!) / step, step)
  const [v0, v1, m0, m1] = [values[i]!, values[i + 1]!, slopes[i]!, slopes[i + 1]!]
  return {
    value: w.value0 * v0 + w.slope0 * m0 + w.value1 * v1 + w.slope1 * m1,
    slope: w.dValue0 * v0 + w.dSlope0 * m0 + w.dValue1 * v1 + w.dSlope1 * m1,
  }
}

/** Places inside an interval, as fractions of it, where the cubic is level. */
const levelPlaces = (rise: number, m0: number, m1: number): readonly number[] => {
  // Derivative of the Hermite cubic over its fraction: a s² + b s + m0, slopes taken over the interval.
  const a = 3 * (m0 + m1) - 6 * rise
  const b = 6 * rise - 4 * m0 - 2 * m1
  const inner = b * b - 4 * a * m0
  if (inner < 0) return []
  const sum = -(b + Math.sign(b || 1) * Math.sqrt(inner)) / 2
  return [sum / a, m0 / sum].filter((s) => s > 0 && s < 1)
}

export type SplinePlace = { readonly at: number; readonly value: number }

/** Greatest value of a spline between its first and last knot, and where; closed form, interval by interval. */
export const greatestOf = (spline: Spline): SplinePlace => {
  const { knots, values, slopes } = spline
  let greatest = { at: knots[0]!, value: values[0]! }
  const hold = (at: number, value: number) => {
    if (value > greatest.value) greatest = { at, value }
  }
  for (let i = 1; i < knots.length; i++) {
    const step = knots[i]! - knots[i - 1]!
    hold(knots[i]!, values[i]!)
    for (const s of levelPlaces(values[i]! - values[i - 1]!, step * slopes[i - 1]!, step * slopes[i]!)) {
      const at = knots[i - 1]! + s * step
      hold(at, splineAt(spline, at).value)
    }
  }
  return greatest
}
