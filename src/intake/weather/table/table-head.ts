/** Where a table begins in a text: loggers write a few lines of their own before it. */
import { type Delimiter, linesOf, mostLineLength, splitLine } from '../weather-rows.ts'
import { guessColumns } from './guess-column.ts'
import type { TableColumn } from './table-mapping.ts'
import { readNumber } from './table-numbers.ts'

/** A table that begins later is not looked for. */
const mostLinesBefore = 60
const mostColumns = 200

export type TableHead = {
  readonly line: number
  readonly delimiter: Delimiter
  readonly columns: readonly TableColumn[]
}

const isFigure = (field: string): boolean => !Number.isNaN(readNumber(field)?.value ?? Number.NaN)
const isDate = (field: string): boolean => /^\s*\d{1,4}[-/. ]\d{1,2}[-/. ]\s?\d{1,4}(?!\d)/.test(field)

/** Rows under a head that must look like it, when its names say nothing. */
const rowsLikeIt = 3

/**
 * The first line with a name a column under which rows of as many fields stand, a date and a figure among them: for a table whose
 * names nobody knows, where a person will say what is what. Nothing but what its names say is guessed.
 */
export function anyHead(text: string): TableHead | undefined {
  const rows: { readonly line: number; readonly text: string }[] = []
  for (const { line, text: row } of linesOf(text)) {
    if (line > mostLinesBefore) break
    if (row.length <= mostLineLength && row.trim() !== '' && !row.startsWith('#'))
      rows.push({ line, text: row })
  }
  for (const [at, { line, text: row }] of rows.entries())
    for (const delimiter of [';', '\t', ','] as const) {
      const names = splitLine(row, delimiter)?.map((name) => name.replace(/^\ufeff/, '').trim())
      if (names === undefined || names.length < 2 || names.length > mostColumns) continue
      const under = rows.slice(at + 1, at + 1 + rowsLikeIt).map((one) => splitLine(one.text, delimiter))
      const alike = (fields: readonly string[] | undefined) =>
        fields?.length === names.length && fields.some(isFigure) && fields.some(isDate)
      if (names.every((name) => /\p{L}/u.test(name)) && under.length > 0 && under.every(alike))
        return { line, delimiter, columns: guessColumns(names) }
    }
  return undefined
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
