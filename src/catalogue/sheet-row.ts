/** How a generic data sheet is written: the same form a person fills in for a can, with an origin for each cell. */
import type { sheetFields } from '#job'
import { type Row, rowWriter } from './row.ts'
import { dewPractice } from './sources.ts'

export type SheetFields = typeof sheetFields
export type SheetRow = Row<SheetFields>

export const { from, assumed, guessedFrom, row } = rowWriter<SheetFields>()

/** All commercial sheets ask for it; it holds for the whole time the film dries. */
export const dewMargin = from(dewPractice, { dewMargin: '3 °C' })

/** The upper limit of commercial sheets, for families whose own sheets name none. */
export const humidityAtMost85 = from(dewPractice, { humidityMost: '85 %' })
