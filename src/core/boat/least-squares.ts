/** Weighted least squares in a few unknowns, with what each row could still be off. */

export type Row = {
  /** One for each unknown. */
  readonly slopes: readonly number[]
  readonly miss: number
  /** Standard deviation of the miss, in its unit. */
  readonly sigma: number
}

export type Solved = {
  readonly values: readonly number[]
  /** Of each row, what is left of 1 after the fit followed it: 0 where the fit must meet it whatever it says. */
  readonly free: readonly number[]
}

/** Least share of the largest pivot that still tells something. */
const leastPivot = 1e-9

/** The unknowns that make the sum of squares least; undefined when the rows do not tell them all. */
export const leastSquares = (rows: readonly Row[], unknowns: number): Solved | undefined => {
  const matrix = Array.from({ length: unknowns }, () => new Array<number>(2 * unknowns).fill(0))
  const right = new Array<number>(unknowns).fill(0)
  for (const { slopes, miss, sigma } of rows) {
    const weight = 1 / (sigma * sigma)
    for (let i = 0; i < unknowns; i++) {
      right[i]! += weight * slopes[i]! * miss
      for (let k = 0; k < unknowns; k++) matrix[i]![k]! += weight * slopes[i]! * slopes[k]!
    }
  }
  const inverse = inverted(matrix, unknowns)
  if (inverse === undefined) return undefined
  const times = (vector: readonly number[]): readonly number[] =>
    inverse.map((line) => line.reduce((sum, entry, k) => sum + entry * vector[k]!, 0))
  const free = rows.map(({ slopes, sigma }) => {
    const solved = times(slopes)
    return 1 - slopes.reduce((sum, slope, k) => sum + slope * solved[k]!, 0) / (sigma * sigma)
  })
  return { values: times(right), free }
}

/** Gauss and Jordan's elimination with the largest pivot; the right half of `matrix` becomes the inverse. */
const inverted = (matrix: number[][], size: number): readonly (readonly number[])[] | undefined => {
  matrix.forEach((row, i) => {
    row[size + i] = 1
  })
  const scale = Math.max(...matrix.map((row, i) => Math.abs(row[i]!)))
  for (let column = 0; column < size; column++) {
    let best = column
    for (let row = column; row < size; row++)
      if (Math.abs(matrix[row]![column]!) > Math.abs(matrix[best]![column]!)) best = row
    ;[matrix[column], matrix[best]] = [matrix[best]!, matrix[column]!]
    const lead = matrix[column]!
    const pivot = lead[column]!
    if (!(Math.abs(pivot) > leastPivot * scale)) return undefined
    for (let k = 0; k < 2 * size; k++) lead[k]! /= pivot
    matrix.forEach((row, i) => {
      if (i === column) return
      const factor = row[column]!
      for (let k = 0; k < 2 * size; k++) row[k]! -= factor * lead[k]!
    })
  }
  return matrix.map((row) => row.slice(size))
}
