/**
 * Gauss-Legendre rules on 0..1, and an integral by one rule or by halving until it settles.
 * Nodes and weights: Abramowitz and Stegun, Handbook of Mathematical Functions, 1964, table 25.4.
 */

export type QuadratureRule = {
  /** Places in 0..1, rising. */
  readonly nodes: readonly number[]
  /** Weights; their sum is 1. */
  readonly weights: readonly number[]
}

const onUnitInterval = (points: readonly (readonly [place: number, weight: number])[]): QuadratureRule => ({
  nodes: points.map(([place]) => (1 + place) / 2),
  weights: points.map(([, weight]) => weight / 2),
})

/** Exact for polynomials up to degree 5. */
export const gauss3: QuadratureRule = onUnitInterval([
  [-0.7745966692414834, 5 / 9],
  [0, 8 / 9],
  [0.7745966692414834, 5 / 9],
])

/** Exact for polynomials up to degree 7. */
export const gauss4: QuadratureRule = onUnitInterval([
  [-0.8611363115940526, 0.3478548451374538],
  [-0.3399810435848563, 0.6521451548625461],
  [0.3399810435848563, 0.6521451548625461],
  [0.8611363115940526, 0.3478548451374538],
])

/** Exact for polynomials up to degree 9. */
export const gauss5: QuadratureRule = onUnitInterval([
  [-0.906179845938664, 0.2369268850561891],
  [-0.5384693101056831, 0.4786286704993665],
  [0, 128 / 225],
  [0.5384693101056831, 0.4786286704993665],
  [0.906179845938664, 0.2369268850561891],
])

export type Integrand = {
  readonly of: (t: number) => number
  readonly from: number
  readonly to: number
}

/** Integral of `of` by one rule. */
export const integrate = (rule: QuadratureRule, { of, from, to }: Integrand): number => {
  const width = to - from
  return width * rule.nodes.reduce((sum, node, k) => sum + rule.weights[k]! * of(from + width * node), 0)
}

const deepest = 40

/**
 * Integral by the five-point rule, each piece halved until both halves agree with the whole to its share of
 * `tolerance` (absolute) or 40 halvings are done. Slow and obvious: the check on the fast sums.
 */
export const integrateAdaptively = (integrand: Integrand, tolerance: number): number => {
  const { of } = integrand
  const settle = (from: number, to: number, whole: number, allowed: number, depth: number): number => {
    const middle = (from + to) / 2
    const left = integrate(gauss5, { of, from, to: middle })
    const right = integrate(gauss5, { of, from: middle, to })
    const settled = !(Math.abs(left + right - whole) > allowed) || depth >= deepest
    if (settled) return left + right
    return (
      settle(from, middle, left, allowed / 2, depth + 1) + settle(middle, to, right, allowed / 2, depth + 1)
    )
  }
  return settle(integrand.from, integrand.to, integrate(gauss5, integrand), tolerance, 0)
}
