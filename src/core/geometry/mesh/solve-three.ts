/** Three linear equations in three unknowns. */

/** Solution of `rows`, three of four entries each, by elimination with the largest pivot; undefined when there is none. */
export const solveThree = (rows: readonly (readonly number[])[]): readonly number[] | undefined => {
  const m = rows.map((row) => row.slice())
  const scale = Math.max(...m.flatMap((row) => row.slice(0, 3).map(Math.abs)))
  for (let column = 0; column < 3; column++) {
    let best = column
    for (let row = column; row < 3; row++)
      if (Math.abs(m[row]![column]!) > Math.abs(m[best]![column]!)) best = row
    ;[m[column], m[best]] = [m[best]!, m[column]!]
    const pivot = m[column]![column]!
    if (!(Math.abs(pivot) > 1e-14 * scale)) return undefined
    for (let row = 0; row < 3; row++) {
      if (row === column) continue
      const factor = m[row]![column]! / pivot
      for (let k = column; k < 4; k++) m[row]![k]! -= factor * m[column]![k]!
    }
  }
  return m.map((row, i) => row[3]! / row[i]!)
}
