/** Struck edges as heights along the boat. The rows of a table stand close: straight between them is under a millimetre off. */
type Row = { readonly xM: number }

/** The height of an edge at any place; level beyond the first and the last row. */
export function heightAlong<R extends Row>(
  rows: readonly R[],
  heightOf: (row: R) => number,
): (x: number) => number {
  const first = rows[0]!
  return (x) => {
    const after = rows.findIndex(({ xM }) => xM >= x)
    if (after === 0) return heightOf(first)
    if (after < 0) return heightOf(rows.at(-1)!)
    const [from, to] = [rows[after - 1]!, rows[after]!]
    return heightOf(from) + ((heightOf(to) - heightOf(from)) * (x - from.xM)) / (to.xM - from.xM)
  }
}
