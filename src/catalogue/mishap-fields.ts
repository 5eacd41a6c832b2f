/** How a mishap is written down: what becomes of the coat, and the figures its sentences and the plan are given. */
import type { Fields } from '#job'
import { rowWriter } from './row.ts'

export const mishapFields = {
  group: {
    kind: 'choice',
    choices: ['people', 'fire', 'pot', 'wet film', 'dry film', 'edges'],
    need: 'required',
    doc: 'Where it stands in the list.',
  },
  signal: {
    kind: 'choice',
    choices: ['danger', 'warning', 'caution'],
    doc: 'Signal word over it, where somebody can be hurt.',
  },
  films: {
    kind: 'text',
    pattern: '(stands|wiped off|sanded off)(, (stands|wiped off|sanded off)){0,2}',
    example: 'wiped off, sanded off',
    doc: 'What may become of the coat, the usual first; nothing where no coat is in it.',
  },
  within: { kind: 'quantity', dimension: 'time', doc: 'How soon it has to be seen to.' },
  rinse: { kind: 'quantity', dimension: 'time', doc: 'How long water runs over it.' },
  wipedWait: {
    kind: 'quantity',
    dimension: 'time',
    doc: 'How long a wiped surface airs before it is coated.',
  },
  sandWait: {
    kind: 'quantity',
    dimension: 'time',
    doc: 'Least wait before a lost coat is sanded; the clock of its sheet holds besides.',
  },
  sandGrit: { kind: 'ref', to: 'abrasives', doc: 'A lost coat is sanded with this.' },
  spotGrit: { kind: 'ref', to: 'abrasives', doc: 'Where the coat stands, bad places are sanded with this.' },
  spotShare: { kind: 'quantity', dimension: 'share', doc: 'How much of the surface those places are.' },
} as const satisfies Fields

export type MishapFields = typeof mishapFields

export const { from, assumed, guessedFrom, row } = rowWriter<MishapFields>()
