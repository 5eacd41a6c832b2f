/** Turns an offset in a text into line and column. */
import type { Place } from './problem.ts'

/** In a line longer than this, columns count UTF-16 units. */
const longestLine = 10_000

/** Lines end at LF, CR LF or CR. Lines and columns count from 1, columns in characters as an editor shows them. */
export const lineIndex = (text: string): ((at: number) => Place) => {
  const starts = [0]
  for (const { 0: end, index } of text.matchAll(/\r\n|\n|\r/g)) starts.push(index + end.length)
  return (at) => {
    const line = lineAt(starts, at)
    const start = starts[line] as number
    const before = at - start > longestLine ? at - start : [...text.slice(start, at)].length
    return { line: line + 1, column: before + 1 }
  }
}

const lineAt = (starts: readonly number[], at: number): number => {
  let low = 0
  let high = starts.length - 1
  while (low < high) {
    const middle = Math.ceil((low + high) / 2)
    if ((starts[middle] as number) <= at) low = middle
    else high = middle - 1
  }
  return low
}
