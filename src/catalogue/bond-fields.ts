/** How rules of bonding, order, coats, colours and old coatings are written down. */
import type { Fields } from '#job'
import { rowWriter } from './row.ts'

const kinds = (doc: string) => ({ kind: 'text', need: 'required', doc }) as const

/** Mechanisms and reasons; each has a sentence. */
export const bondReasons = [
  'keyOnly',
  'softLaminate',
  'weakSolvent',
  'solventSafeBase',
  'bondsBetter',
  'freeAmine',
  'bothWays',
  'sameCure',
  'styreneLeft',
  'sameFamily',
  'freshBonds',
  'lifts',
  'heldOut',
  'hardFilm',
  'dissolves',
  'beadsUp',
  'softLeaching',
  'chalks',
  'airInhibited',
  'binderStays',
  'blisters',
  'drinksWater',
  'labelSays',
  'slowToLeave',
  'notAThinner',
  'porous',
  'scratchShows',
  'softBelow',
] as const

export const bondFields = {
  aspect: {
    kind: 'choice',
    choices: ['bond', 'state', 'place', 'looks', 'weather', 'thinner'],
    need: 'required',
    doc: 'What it is about; aspects are judged apart and the worst counts.',
  },
  under: kinds('Families, with or without a role, of what lies below; `any` for all.'),
  over: kinds('The same of what goes on.'),
  age: { kind: 'choice', choices: ['old', 'fresh'], doc: 'Only on what was there, or only on what is new.' },
  state: {
    kind: 'choice',
    choices: ['silicone', 'wax', 'tacky', 'alcohol', 'softened'],
    doc: 'Only on a surface in this state.',
  },
  where: { kind: 'choice', choices: ['above water', 'below water'], doc: 'Only there, afloat.' },
  shade: { kind: 'choice', choices: ['light', 'medium', 'dark'], doc: 'Only under a coat of this shade.' },
  verdict: { kind: 'choice', choices: ['yes', 'care', 'no'], need: 'required', doc: 'Whether it holds.' },
  dissent: { kind: 'yesno', doc: 'It speaks against the others: shown, but not decisive.' },
  reason: { kind: 'choice', choices: bondReasons, need: 'required', doc: 'Why.' },
  waterWash: { kind: 'yesno', doc: 'Washed with water before it is sanded.' },
  dewax: { kind: 'yesno', doc: 'Wiped with two cloths before any paper.' },
  solvent: { kind: 'choice', choices: ['never', 'wipe'], doc: 'Solvent after sanding.' },
  gritCoarsest: { kind: 'ref', to: 'abrasives', doc: 'Coarsest paper it is sanded with.' },
  gritFinest: { kind: 'ref', to: 'abrasives', doc: 'Finest paper that still keys.' },
  key: {
    kind: 'choice',
    choices: ['always', 'past the window'],
    doc: 'Sanded always, or only past the longest wait.',
  },
  tie: { kind: 'text', doc: 'What goes between to make it right.' },
  clear: {
    kind: 'choice',
    choices: [
      'strip',
      'strip or barrier',
      'clean and drop test',
      'film or wax cure',
      'remove to a line',
      'flash off',
      'use epoxy',
      'epoxy first',
      'stitched or woven',
      'its own thinner',
      'clear of the water',
    ],
    doc: 'What else makes it right.',
  },
  only: {
    kind: 'choice',
    choices: ['looks only', 'small areas', 'test patch', 'label below water', 'waxed last', 'ground away'],
    doc: 'Under which condition it holds.',
  },
  wait: { kind: 'quantity', dimension: 'time', doc: 'Least wait, at 20 °C.' },
  until: { kind: 'choice', choices: ['full cure', 'dry', 'settled'], doc: 'What it waits for.' },
} as const satisfies Fields
export type BondFields = typeof bondFields

export const acts = [
  'clear',
  'water wash',
  'dewax',
  'abrade',
  'dust off',
  'solvent wipe',
  'tack',
  'coat',
  'pinhole fill',
] as const

export const orderFields = {
  act: { kind: 'choice', choices: acts, need: 'required', doc: 'What is done.' },
  needs: { kind: 'choice', choices: acts, doc: 'What must be done before it.' },
  notAfter: { kind: 'choice', choices: acts, doc: 'What it must not follow.' },
  on: kinds('On which surfaces.'),
  age: { kind: 'choice', choices: ['old', 'fresh'], doc: 'Only on what was there, or only on what is new.' },
  reason: {
    kind: 'choice',
    choices: ['groundIn', 'softLaminate', 'blushSpread', 'pinholesShow', 'dustUnder'],
    need: 'required',
    doc: 'Why.',
  },
} as const satisfies Fields
export type OrderFields = typeof orderFields

export const practiceFields = {
  of: kinds('Coats it is usual for.'),
  coats: { kind: 'count', least: 1, most: 12, need: 'required', doc: 'Coats when nobody says.' },
  between: {
    kind: 'ref',
    to: 'gritLadder',
    doc: 'What it is sanded with between its coats, even inside its window.',
  },
  life: { kind: 'count', least: 1, most: 60, doc: 'Years that a finish lasts.' },
  filmMost: { kind: 'ref', to: 'limits', doc: 'The limit that holds for one coat.' },
  buildMost: { kind: 'ref', to: 'limits', doc: 'The limit that holds for all its coats.' },
} as const satisfies Fields
export type PracticeFields = typeof practiceFields

export const hidingFields = {
  colours: kinds('Words of colours.'),
  shade: { kind: 'choice', choices: ['light', 'medium', 'dark'], doc: 'Only of this shade.' },
  over: kinds('Colours it hides best over.'),
  coats: { kind: 'count', least: 1, most: 12, need: 'required', doc: 'Coats it takes.' },
} as const satisfies Fields
export type HidingFields = typeof hidingFields

export const stripFields = {
  of: kinds('What is taken off.'),
  leaves: kinds('What is then there.'),
  rate: { kind: 'quantity', dimension: 'workRate', need: 'required', doc: 'Person-hours a square metre.' },
} as const satisfies Fields
export type StripFields = typeof stripFields

export const guessFields = {
  shows: {
    kind: 'choice',
    choices: ['not tested', 'softens', 'no effect'],
    need: 'required',
    doc: 'What the rub with solvent did.',
  },
  maybe: kinds('What the old coating may then be.'),
} as const satisfies Fields
export type GuessFields = typeof guessFields

export const bondWriter = rowWriter<BondFields>()
export const orderWriter = rowWriter<OrderFields>()
export const practiceWriter = rowWriter<PracticeFields>()
export const hidingWriter = rowWriter<HidingFields>()
export const stripWriter = rowWriter<StripFields>()
export const guessWriter = rowWriter<GuessFields>()
