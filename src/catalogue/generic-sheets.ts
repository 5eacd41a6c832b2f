/** The generic sheets as a section of a job document, for the reader of the job to project. */
import { type SheetId, sheets } from './sheets.ts'

/** Cells by sheet id, with the origin of the sheet's film in its `source` cell; origins cell by cell are in `sheets`. */
export function genericSheets(): Readonly<Record<SheetId, Readonly<Record<string, string>>>> {
  const entries = Object.entries(sheets).map(([id, row]) => [id, { ...row.cells, source: row.source }])
  return Object.fromEntries(entries) as Record<SheetId, Record<string, string>>
}
