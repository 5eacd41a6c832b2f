/** Writes product sheets as JSON or as one table. */
import papaparse from 'papaparse'
import type { RawCells } from '#job'
import { type SheetFile, type SheetKeys, sheetSections } from './sheet-file.ts'

/** Version of the document that the cells are named after. */
const VERSION = '1'

/** As a document: cells by section and id, the sections of a job. */
export const writeSheetsJson = (file: SheetFile): string =>
  `${JSON.stringify({ hardstand: VERSION, ...file }, null, 2)}\n`

/** Columns that a row has beside its cells. */
export const rowColumns = ['section', 'id'] as const

/**
 * One row an item, one column a cell, after RFC 4180: the section and the id first, columns that nobody fills left out.
 */
export function writeSheetsCsv(file: SheetFile, keys: SheetKeys): string {
  const rows = sheetSections.flatMap((section) =>
    Object.entries(file[section]).map(([id, cells]) => ({ section, id, cells })),
  )
  const all = [...new Set(sheetSections.flatMap((section) => keys[section]))]
  const used = all.filter((key) => rows.some(({ cells }) => filled(cells, key)))
  return papaparse.unparse(
    {
      fields: [...rowColumns, ...used],
      data: rows.map(({ section, id, cells }) => [
        section,
        id,
        ...used.map((key) => guarded(cells[key] ?? '')),
      ]),
    },
    { newline: '\r\n' },
  )
}

const filled = (cells: RawCells, key: string): boolean => (cells[key] ?? '') !== ''

/** What a spreadsheet would take for a formula stands behind an apostrophe; so does an apostrophe of one's own. */
const guarded = (text: string): string => (/^[=+\-@'\t\r]/.test(text) ? `'${text}` : text)

export const unguarded = (text: string): string => (text.startsWith("'") ? text.slice(1) : text)
