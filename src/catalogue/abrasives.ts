/** Sizes of coated abrasives, and which grit is used for what. P grades are FEPA's, the others CAMI's. */
import type { Fields } from '#job'
import { rowWriter, type Table } from './row.ts'
import { gritChart, gritMemory, gritTable } from './sources.ts'

export const abrasiveFields = {
  size: { kind: 'quantity', dimension: 'length', need: 'required', doc: 'Mean size of the grains.' },
  system: { kind: 'choice', choices: ['FEPA', 'CAMI'], need: 'required', doc: 'Whose numbers.' },
  disc: {
    kind: 'ref',
    to: 'consumables',
    need: 'required',
    doc: 'The disc whose wear stands for it, nearest in grain.',
  },
  rate: { kind: 'ref', to: 'rates', need: 'required', doc: 'The work rate that stands for it.' },
} as const satisfies Fields

export type AbrasiveFields = typeof abrasiveFields

const { from, assumed, row } = rowWriter<AbrasiveFields>()

type Step = '80' | '120' | '220' | '320' | '400'

const grit = (system: 'FEPA' | 'CAMI') => (size: string, source: string, step: Step) =>
  row(from(source, { size, system }), assumed({ disc: `disc-${step}`, rate: `sand-${step}` }))
const fepa = grit('FEPA')
const cami = grit('CAMI')

const all = {
  P40: fepa('425 µm', gritTable, '80'),
  P50: fepa('336 µm', gritTable, '80'),
  P60: fepa('269 µm', gritTable, '80'),
  P80: fepa('201 µm', gritTable, '80'),
  P100: fepa('162 µm', gritTable, '120'),
  P120: fepa('125 µm', gritTable, '120'),
  P150: fepa('100 µm', gritChart, '120'),
  P180: fepa('82 µm', gritChart, '220'),
  P220: fepa('68 µm', gritTable, '220'),
  P240: fepa('58.5 µm', gritMemory, '220'),
  P280: fepa('52.2 µm', gritMemory, '320'),
  P320: fepa('46.2 µm', gritMemory, '320'),
  P400: fepa('35 µm', gritTable, '400'),
  P500: fepa('30.2 µm', gritMemory, '400'),
  P600: fepa('25.75 µm', gritTable, '400'),
  P800: fepa('21.8 µm', gritMemory, '400'),
  '40': cami('428 µm', gritTable, '80'),
  '50': cami('351 µm', gritTable, '80'),
  '60': cami('268 µm', gritTable, '80'),
  '80': cami('192 µm', gritTable, '80'),
  '100': cami('141 µm', gritTable, '120'),
  '120': cami('116 µm', gritChart, '120'),
  '150': cami('93 µm', gritChart, '120'),
  '180': cami('82 µm', gritChart, '220'),
  '220': cami('66 µm', gritChart, '220'),
  '240': cami('53 µm', gritMemory, '220'),
  '280': cami('44 µm', gritMemory, '320'),
  '320': cami('36 µm', gritMemory, '400'),
  '360': cami('28.8 µm', gritMemory, '400'),
  '400': cami('23.6 µm', gritTable, '400'),
  '500': cami('19.7 µm', gritMemory, '400'),
  '600': cami('16 µm', gritTable, '400'),
}

export type AbrasiveId = keyof typeof all

export const abrasives: Table<AbrasiveFields, AbrasiveId> = all
