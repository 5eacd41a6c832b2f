/** Three linear equations with a symmetric positive definite matrix, by Cholesky's decomposition. */

/** Upper triangle by rows: 11, 12, 13, 22, 23, 33. */
export type Symmetric3 = readonly [number, number, number, number, number, number]
export type Vector3 = readonly [number, number, number]

/** Undefined where the matrix has no inverse to working accuracy. */
export function solveSymmetric3(
  [m11, m12, m13, m22, m23, m33]: Symmetric3,
  [b1, b2, b3]: Vector3,
): Vector3 | undefined {
  const pivot = (value: number, of: number): number | undefined =>
    value > 1e-14 * Math.abs(of) ? Math.sqrt(value) : undefined
  const l11 = pivot(m11, m11)
  if (l11 === undefined) return undefined
  const [l21, l31] = [m12 / l11, m13 / l11]
  const l22 = pivot(m22 - l21 * l21, m22)
  if (l22 === undefined) return undefined
  const l32 = (m23 - l31 * l21) / l22
  const l33 = pivot(m33 - l31 * l31 - l32 * l32, m33)
  if (l33 === undefined) return undefined
  const y1 = b1 / l11
  const y2 = (b2 - l21 * y1) / l22
  const y3 = (b3 - l31 * y1 - l32 * y2) / l33
  const x3 = y3 / l33
  const x2 = (y2 - l32 * x3) / l22
  return [(y1 - l21 * x2 - l31 * x3) / l11, x2, x3]
}
