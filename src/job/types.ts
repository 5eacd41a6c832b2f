/** The documents after reading, as types derived from their tables. */
import type { Item, Projection } from './field.ts'
import type { logFields } from './log-fields.ts'
import type { moneyFields } from './money-fields.ts'
import type { sheetFields } from './sheet-fields.ts'
import type { workFields } from './work-fields.ts'

/** The work document after reading. */
export type Work = Projection<typeof workFields>
/** The money document after reading. */
export type MoneyTerms = Projection<typeof moneyFields>
/** One product data sheet after reading. */
export type Sheet = Item<typeof sheetFields>
/** Entries of the log after reading, by time. */
export type Log = Projection<typeof logFields>['log']
