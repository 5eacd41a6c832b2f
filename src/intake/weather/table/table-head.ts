/** Where a table begins in a text: loggers write a few lines of their own before it. */
import { type Delimiter, linesOf, mostLineLength, splitLine } from '../weather-rows.ts'
import { guessColumns } from './guess-column.ts'
import type { TableColumn } from './table-mapping.ts'

/** A table that begins later is not looked for. */
const mostLinesBefore = 60
const mostColumns = 200

export type TableHead = {
  readonly line: number
  readonly delimiter: Delimiter
  readonly columns: readonly TableColumn[]
}

/** The first line that names a time and a figure; undefined when there is none. */
export function findHead(text: string): TableHead | undefined {
  for (const { line, text: row } of linesOf(text)) {
    if (line > mostLinesBefore) return undefined
    if (row.length > mostLineLength || row.startsWith('#')) continue
    for (const delimiter of [';', '\t', ','] as const) {
      const names = splitLine(row, delimiter)?.map((name) => name.replace(/^\ufeff/, '').trim())
      if (names === undefined || names.length < 2 || names.length > mostColumns) continue
      const columns = guessColumns(names)
      const known = columns.map(({ to }) => to).filter((to) => to !== 'ignore')
      const hasTime = known.includes('time') || (known.includes('date') && known.includes('clock'))
      if (hasTime && known.some((to) => !['time', 'date', 'clock'].includes(to)))
        return { line, delimiter, columns }
    }
  }
  return undefined
}
