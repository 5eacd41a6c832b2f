/** Every table of sentences, by the file it stands in, and all of them together. */
import { moneyWords } from './money-words.ts'
import { storesWords } from './stores-words.ts'

export type Table = Readonly<Record<string, string>>

export const tables: Readonly<Record<string, Table>> = {
  moneyWords,
  storesWords,
}

/** ICU message by code. A test keeps a code from standing in two tables. */
export const messages: Table = Object.assign({}, ...Object.values(tables))
