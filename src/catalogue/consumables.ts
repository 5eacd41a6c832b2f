/** What is used up: so much over so much area or length, each pass, coat, pour or person-day. */
import type { Fields } from '#job'
import { rowWriter, type Table } from './row.ts'
import { refitLogs, topsidesLog, tradeArticles } from './sources.ts'

export const consumableFields = {
  soldBy: {
    kind: 'choice',
    choices: ['piece', 'pair', 'm', 'L'],
    need: 'required',
    doc: 'What one is when it is bought and priced.',
  },
  pieces: { kind: 'quantity', dimension: 'number', doc: 'How many pieces or pairs.' },
  volume: { kind: 'quantity', dimension: 'volume', doc: 'How much, when it is poured.' },
  length: { kind: 'quantity', dimension: 'length', doc: 'How much, when it is unrolled.' },
  area: { kind: 'quantity', dimension: 'area', doc: 'Over what area that goes.' },
  run: { kind: 'quantity', dimension: 'length', doc: 'Over what length of edge that goes.' },
  each: {
    kind: 'choice',
    choices: ['sanding pass', 'wiping', 'coat', 'masking', 'pour', 'person-day'],
    need: 'required',
    doc: 'How often it is used again.',
  },
  fresh: {
    kind: 'yesno',
    need: 'required',
    doc: 'A part used counts as a whole one each time: a cover is not kept for the next coat.',
  },
} as const satisfies Fields

export type ConsumableFields = typeof consumableFields

const { from, assumed, guessedFrom, row } = rowWriter<ConsumableFields>()

const perArea = (pieces: string, area: string, each: 'sanding pass' | 'wiping' | 'coat', fresh = 'no') => ({
  soldBy: 'piece',
  pieces,
  area,
  each,
  fresh,
})
const perRun = (length: string) => ({ soldBy: 'm', length, run: '1 m', each: 'masking', fresh: 'no' })

const all = {
  'disc-80': row(assumed(perArea('7', '10 m²', 'sanding pass'))),
  'disc-120': row(assumed(perArea('5', '10 m²', 'sanding pass'))),
  'disc-220': row(assumed(perArea('4', '10 m²', 'sanding pass'))),
  'disc-320': row(assumed(perArea('4', '10 m²', 'sanding pass'))),
  'disc-400': row(guessedFrom('the finest disc that is recorded', perArea('4', '10 m²', 'sanding pass'))),
  'grinder-disc-40': row(assumed(perArea('0.75', '1 m²', 'sanding pass'), { pieces: ['0.5', '1'] })),
  'long-board-strip': row(assumed(perArea('5', '10 m²', 'sanding pass'))),
  'wiping-solvent': row(
    assumed(
      { soldBy: 'L', volume: '50 ml', area: '1 m²', each: 'wiping', fresh: 'no' },
      { volume: ['40 ml', '60 ml'] },
    ),
  ),
  wipe: row(from(tradeArticles, perArea('1', '1 m²', 'wiping'))),
  'tack-cloth': row(assumed(perArea('1', '9 m²', 'coat'), { area: ['8 m²', '10 m²'] })),
  'foam-cover': row(from(topsidesLog, perArea('1', '14 m²', 'coat', 'yes'))),
  'tip-brush': row(assumed(perArea('1', '100 m²', 'coat'))),
  'fine-line-tape': row(from(refitLogs, perRun('1.1 m'))),
  'masking-tape': row(guessedFrom('fine-line tape, joins overlapped', perRun('1.1 m'))),
  'masking-paper': row(guessedFrom('fine-line tape, joins overlapped', perRun('1.1 m'))),
  'tray-liner': row(assumed(perArea('1', '14 m²', 'coat', 'yes'))),
  'mixing-cup': row(assumed({ soldBy: 'piece', pieces: '2', each: 'pour', fresh: 'yes' })),
  gloves: row(assumed({ soldBy: 'pair', pieces: '4', each: 'person-day', fresh: 'yes' })),
  'respirator-cartridge': row(assumed({ soldBy: 'pair', pieces: '0.2', each: 'person-day', fresh: 'no' })),
}

export type ConsumableId = keyof typeof all

export const consumables: Table<ConsumableFields, ConsumableId> = all
