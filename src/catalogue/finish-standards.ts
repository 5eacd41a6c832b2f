/** What a finish standard asks for: how far off it is judged, and the work that buys it. Keyed as the job's choice. */
import type { Fields, Work } from '#job'
import { rowWriter, type Table } from './row.ts'

export const finishFields = {
  judgedFrom: {
    kind: 'quantity',
    dimension: 'length',
    need: 'required',
    doc: 'Distance from which no runs, sags, lap marks or bits are seen, in daylight.',
  },
  sandBetween: {
    kind: 'choice',
    choices: ['always', 'outside the window'],
    need: 'required',
    doc: 'When two-part gloss is sanded between coats; one-part always is.',
  },
  blockRounds: {
    kind: 'count',
    least: 0,
    most: 6,
    need: 'required',
    doc: 'Rounds of guide coat and block on the primer.',
  },
  pinholeRounds: {
    kind: 'count',
    least: 0,
    most: 6,
    need: 'required',
    doc: 'Rounds of filling what the first primer coat shows.',
  },
  longBoardPasses: {
    kind: 'count',
    least: 0,
    most: 6,
    need: 'required',
    doc: 'Passes with the long board over faired areas.',
  },
  trialBoard: {
    kind: 'yesno',
    need: 'required',
    doc: 'A board is painted before the first gloss and the first bead coat.',
  },
  fairWait: {
    kind: 'quantity',
    dimension: 'time',
    need: 'required',
    doc: 'Least age of a repair at the last block under dark gloss.',
  },
} as const satisfies Fields

export type FinishStandard = NonNullable<Work['job']['finish']>

export type FinishFields = typeof finishFields

const { assumed, row } = rowWriter<FinishFields>()

export const finishStandards: Table<FinishFields, FinishStandard> = {
  'work boat': row(
    assumed({
      judgedFrom: '5 m',
      sandBetween: 'outside the window',
      blockRounds: '0',
      pinholeRounds: '1',
      longBoardPasses: '1',
      trialBoard: 'no',
      fairWait: '7 d',
    }),
  ),
  tidy: row(
    assumed({
      judgedFrom: '3 m',
      sandBetween: 'always',
      blockRounds: '1',
      pinholeRounds: '1',
      longBoardPasses: '2',
      trialBoard: 'yes',
      fairWait: '7 d',
    }),
  ),
  best: row(
    assumed({
      judgedFrom: '1 m',
      sandBetween: 'always',
      blockRounds: '2',
      pinholeRounds: '2',
      longBoardPasses: '3',
      trialBoard: 'yes',
      fairWait: '7 d',
    }),
  ),
}
