/** Every table of sentences, by its name, and all of them together; `…Phrases` hold texts shorter than a sentence. */
import { boatWords } from './boat-words.ts'
import { cautions } from './cautions.ts'
import { cliWords } from './cli-words.ts'
import { cureWords } from './cure-words.ts'
import { databaseWords } from './database-words.ts'
import { jobProblems } from './job-problems.ts'
import { markingWords } from './marking-words.ts'
import { moneyWords } from './money-words.ts'
import { paperPhrases } from './paper-phrases.ts'
import { paperWords } from './paper-words.ts'
import { planWords } from './plan-words.ts'
import { storesWords } from './stores-words.ts'
import { sumsWords } from './sums-words.ts'
import { unitsWords } from './units-words.ts'
import { viewPhrases } from './view-phrases.ts'
import { weatherProblems } from './weather-problems.ts'

export type Table = Readonly<Record<string, string>>

export const tables: Readonly<Record<string, Table>> = {
  boatWords,
  cautions,
  cliWords,
  cureWords,
  jobProblems,
  markingWords,
  moneyWords,
  paperPhrases,
  paperWords,
  planWords,
  databaseWords,
  storesWords,
  sumsWords,
  unitsWords,
  viewPhrases,
  weatherProblems,
}

/** ICU message by code. A test keeps a code from standing in two tables. */
export const messages: Table = Object.assign({}, ...Object.values(tables))
