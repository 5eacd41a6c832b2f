/** Every table of sentences, by its name, and all of them together; `…Phrases` hold texts shorter than a sentence. */

import { boatScreenWords } from './boat-screen-words.ts'
import { boatWords } from './boat-words.ts'
import { bondWords } from './bond-words.ts'
import { cautions } from './cautions.ts'
import { cliWords } from './cli-words.ts'
import { cureWords } from './cure-words.ts'
import { databaseWords } from './database-words.ts'
import { daysScreenPhrases, daysScreenWords } from './days-screen-words.ts'
import { deckScreenPhrases, deckScreenWords } from './deck-screen-words.ts'
import { deckWords } from './deck-words.ts'
import { feedWords } from './feed-words.ts'
import { framePhrases } from './frame-phrases.ts'
import { frameWords } from './frame-words.ts'
import { jobProblems } from './job-problems.ts'
import { jobsWords } from './jobs-words.ts'
import { markingWords } from './marking-words.ts'
import { meshProblems } from './mesh-problems.ts'
import { mishapWords } from './mishap-words.ts'
import { moneyWords } from './money-words.ts'
import { paperPhrases } from './paper-phrases.ts'
import { paperWords } from './paper-words.ts'
import { papersScreenWords } from './papers-screen-words.ts'
import { planWords } from './plan-words.ts'
import { scanWords } from './scan-words.ts'
import { serverWords } from './server-words.ts'
import { sheetFileWords } from './sheet-file-words.ts'
import { sheetsWords } from './sheets-words.ts'
import { shortcutWords } from './shortcut-words.ts'
import { storesWords } from './stores-words.ts'
import { sumScreenPhrases } from './sum-screen-words.ts'
import { sumsWords } from './sums-words.ts'
import { todayScreenPhrases, todayScreenWords } from './today-screen-words.ts'
import { unitsWords } from './units-words.ts'
import { viewPhrases } from './view-phrases.ts'
import { wayWords } from './way-labels.ts'
import { weatherProblems } from './weather-problems.ts'
import { whatNowWords } from './what-now-words.ts'

export type Table = Readonly<Record<string, string>>

export const tables: Readonly<Record<string, Table>> = {
  boatScreenWords,
  boatWords,
  cautions,
  cliWords,
  cureWords,
  deckScreenPhrases,
  deckScreenWords,
  deckWords,
  feedWords,
  framePhrases,
  frameWords,
  jobsWords,
  jobProblems,
  markingWords,
  meshProblems,
  mishapWords,
  moneyWords,
  paperPhrases,
  paperWords,
  papersScreenWords,
  planWords,
  scanWords,
  serverWords,
  databaseWords,
  bondWords,
  shortcutWords,
  storesWords,
  sumScreenPhrases,
  sheetFileWords,
  sheetsWords,
  sumsWords,
  todayScreenWords,
  todayScreenPhrases,
  daysScreenWords,
  daysScreenPhrases,
  unitsWords,
  viewPhrases,
  wayWords,
  weatherProblems,
  whatNowWords,
}

/** ICU message by code. A test keeps a code from standing in two tables. */
export const messages: Table = Object.assign({}, ...Object.values(tables))
