/** Where a surface has its middle, and along which directions it spreads. Axes and unit of the points. */

import type { Point3 } from '../points.ts'

export type PrincipalAxes = {
  readonly centre: Point3
  /** Three directions of length 1, square to each other; along the first the surface spreads most. */
  readonly axes: readonly [Point3, Point3, Point3]
}

type Square = number[][]

/** Axes of points that count by their area; undefined without any area. */
export const principalAxes = (positions: Float64Array, areas: Float64Array): PrincipalAxes | undefined => {
  const whole = areas.reduce((sum, area) => sum + area, 0)
  if (!(whole > 0)) return undefined
  const centre = [0, 0, 0]
  for (let p = 0; p < areas.length; p++)
    for (let k = 0; k < 3; k++) centre[k]! += (areas[p]! / whole) * positions[3 * p + k]!
  const spread: Square = [0, 1, 2].map(() => [0, 0, 0])
  for (let p = 0; p < areas.length; p++)
    for (let i = 0; i < 3; i++)
      for (let k = 0; k < 3; k++)
        spread[i]![k]! +=
          (areas[p]! / whole) * (positions[3 * p + i]! - centre[i]!) * (positions[3 * p + k]! - centre[k]!)
  const [first, second, third] = axesOf(spread)
  return { centre: pointOf(centre), axes: [pointOf(first!), pointOf(second!), pointOf(third!)] }
}

const pointOf = ([x, y, z]: readonly number[]): Point3 => ({ x: x!, y: y!, z: z! })

/** Eigenvectors of a symmetric matrix by Jacobi's rotations (1846), those of the largest values first. */
const axesOf = (matrix: Square): readonly (readonly number[])[] => {
  const a = matrix.map((row) => row.slice())
  const vectors: Square = [
    [1, 0, 0],
    [0, 1, 0],
    [0, 0, 1],
  ]
  for (let sweep = 0; sweep < 12; sweep++)
    for (const [p, q] of [
      [0, 1],
      [0, 2],
      [1, 2],
    ] as const)
      rotate(a, vectors, p, q)
  return [0, 1, 2].sort((i, k) => a[k]![k]! - a[i]![i]!).map((column) => vectors.map((row) => row[column]!))
}

/** Makes entry (p, q) zero. */
const rotate = (a: Square, vectors: Square, p: number, q: number): void => {
  if (a[p]![q] === 0) return
  const ratio = (a[q]![q]! - a[p]![p]!) / (2 * a[p]![q]!)
  const tan = (ratio >= 0 ? 1 : -1) / (Math.abs(ratio) + Math.sqrt(ratio * ratio + 1))
  const cos = 1 / Math.sqrt(tan * tan + 1)
  const sin = tan * cos
  const turnColumns = (m: Square): void => {
    for (const row of m) {
      const [x, y] = [row[p]!, row[q]!]
      row[p] = cos * x - sin * y
      row[q] = sin * x + cos * y
    }
  }
  turnColumns(a)
  const [rowP, rowQ] = [a[p]!.slice(), a[q]!.slice()]
  for (let k = 0; k < 3; k++) {
    a[p]![k] = cos * rowP[k]! - sin * rowQ[k]!
    a[q]![k] = sin * rowP[k]! + cos * rowQ[k]!
  }
  turnColumns(vectors)
}
