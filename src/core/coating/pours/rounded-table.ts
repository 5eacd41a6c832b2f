/**
 * A table of volumes in whole steps whose rows and columns still add up: the parts of the pours of one coat, so that
 * each card adds up to what its cup reads, and all cards together to what the coat takes.
 */

type Edge = { readonly row: number; readonly column: number }

/** Closer to a whole number than this is one; the volumes are millilitres. */
const nearly = 1e-7

/**
 * Controlled rounding: every cell, every row sum and every column sum becomes one of the two whole numbers beside it,
 * and the sum of all the nearer one; what is whole already stays.
 * @param values rows of equal length, finite and not negative, in steps. @returns whole steps.
 * Method: while a cell or a sum is not whole, find a closed way through such cells and move them up and down in turn
 * until one more is whole; the sums stay sums. SOURCE: Bacharach, Matrix rounding problems, Management Science 12
 * (1966); Cox, A constructive procedure for unbiased controlled rounding, J. Am. Stat. Assoc. 82 (1987), without the
 * chance: the way is taken that moves its first cell to the nearer whole number.
 */
export function roundedTable(values: readonly (readonly number[])[]): readonly (readonly number[])[] {
  const width = values[0]?.length ?? 0
  const table = withSums(values, width)
  // The sum of all first, then the sums of the columns, then the rest.
  for (let row = values.length; row >= 0; row--)
    for (let column = width; column >= 0; column--)
      while (isOpen(table, { row, column })) settle(table, { row, column })
  return table.slice(0, -1).map((line) => line.slice(0, -1))
}

/** With the sum of each row behind it and the sums of the columns below; sums with their sign turned, so all sum to 0. */
function withSums(values: readonly (readonly number[])[], width: number): number[][] {
  const rows = values.map((line) => [...line, -sum(line)])
  const last = Array.from({ length: width + 1 }, (_, column) => -sum(rows.map((line) => line[column]!)))
  return [...rows, last].map((line) => line.map(snapped))
}

const sum = (values: readonly number[]): number => values.reduce((all, value) => all + value, 0)
const snapped = (value: number): number =>
  Math.abs(value - Math.round(value)) < nearly ? Math.round(value) + 0 : value
const isOpen = (table: readonly (readonly number[])[], { row, column }: Edge): boolean =>
  !Number.isInteger(table[row]![column]!)

/** Moves the cells of a closed way through `edge`, up and down in turn, until one of them is whole. */
function settle(table: number[][], edge: Edge): void {
  const way = [edge, ...wayBack(table, edge)]
  const value = table[edge.row]![edge.column]!
  const up = Math.round(value) > value ? 1 : -1
  const room = way.map(({ row, column }, at) => {
    const cell = table[row]![column]!
    return (at % 2 === 0) === up > 0 ? Math.ceil(cell) - cell : cell - Math.floor(cell)
  })
  const step = Math.min(...room)
  way.forEach(({ row, column }, at) => {
    const moved = table[row]![column]! + (at % 2 === 0 ? up : -up) * step
    table[row]![column] = room[at] === step ? Math.round(moved) : snapped(moved)
  })
}

/**
 * From the column of `edge` back to its row, along open cells. There always is one: a cell without it would be the
 * only open one between two halves that each sum to nothing, and so be whole.
 */
function wayBack(table: readonly (readonly number[])[], edge: Edge): readonly Edge[] {
  const rows = table.length
  const nodes = rows + table[0]!.length
  const from = new Array<number>(nodes).fill(-1)
  const start = rows + edge.column
  const queue = [start]
  from[start] = start
  for (const node of queue) {
    if (node === edge.row) break
    for (let next = 0; next < nodes; next++) {
      if (from[next] !== -1 || next < rows === node < rows) continue
      const cell = node < rows ? { row: node, column: next - rows } : { row: next, column: node - rows }
      if ((cell.row === edge.row && cell.column === edge.column) || !isOpen(table, cell)) continue
      from[next] = node
      queue.push(next)
    }
  }
  const way: Edge[] = []
  for (let node = edge.row; node !== start; node = from[node]!) {
    const before = from[node]!
    if (before === -1) throw new Error('roundedTable: no way back, got an open cell alone, expected two')
    way.unshift(node < rows ? { row: node, column: before - rows } : { row: before, column: node - rows })
  }
  return way
}
