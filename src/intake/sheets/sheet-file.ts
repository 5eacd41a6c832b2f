/** Product sheets as a file of their own, to be passed on: rows of three sections of a job, as text. */
import type { RawCells, RawItems } from '#job'

/** The sections that a file holds, the sheets first: the others name them. */
export const sheetSections = ['sheets', 'windows', 'thinners'] as const
export type SheetSection = (typeof sheetSections)[number]

export type SheetFile = Readonly<Record<SheetSection, RawItems>>

/** The cells that each section may hold, by the names they have in a job document. */
export type SheetKeys = Readonly<Record<SheetSection, readonly string[]>>

export const noSheets: SheetFile = { sheets: {}, windows: {}, thinners: {} }

/** Only what the sheets named need: their own rows and those of the other sections that belong to them. */
export function sheetsOnly(all: SheetFile, ids: readonly string[]): SheetFile {
  const mine = (items: RawItems, isMine: (id: string, cells: RawCells) => boolean): RawItems =>
    Object.fromEntries(Object.entries(items).filter(([id, cells]) => isMine(id, cells)))
  return {
    sheets: mine(all.sheets, (id) => ids.includes(id)),
    windows: mine(all.windows, (_, { sheet = '' }) => ids.includes(sheet)),
    thinners: mine(all.thinners, (_, { sheet = '' }) => ids.includes(sheet)),
  }
}
