/**
 * The generic data sheets by id: what a product of its kind usually is, for what a person's own sheet
 * leaves out. Cells are keyed as `sheetFields` of the job document, so the same reader reads them.
 */
import type { Table } from './row.ts'
import type { SheetFields } from './sheet-row.ts'
import { epoxySheets } from './sheets-epoxy.ts'
import { onePartSheets } from './sheets-one-part.ts'
import { styreneSheets } from './sheets-styrene.ts'
import { twoPartSheets } from './sheets-two-part.ts'

const all = { ...onePartSheets, ...twoPartSheets, ...epoxySheets, ...styreneSheets }

export type SheetId = keyof typeof all

export const sheets: Table<SheetFields, SheetId> = all
