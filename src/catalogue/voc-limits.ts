/** What rules for pleasure craft let a coating hold of solvent, as put on and less water: by rule and by what it is. */
import type { Fields } from '#job'
import { rowWriter, type Table } from './row.ts'

/** Where the rules hold; the job chooses one. */
export const vocRules = ['none', 'Hong Kong', 'San Joaquin Valley', 'US guideline', 'Ventura County'] as const

export const vocFields = {
  rules: { kind: 'choice', choices: vocRules, need: 'required', doc: 'Whose rule.' },
  what: {
    kind: 'choice',
    choices: ['extreme high gloss', 'high gloss', 'finish primer', 'high-build primer', 'other'],
    need: 'required',
    doc: 'What kind of coating it is for.',
  },
  limit: {
    kind: 'quantity',
    dimension: 'density',
    need: 'required',
    doc: 'Most of it in a litre less water, as put on.',
  },
} as const satisfies Fields
export type VocFields = typeof vocFields

const { from, row } = rowWriter<VocFields>()

type Rules = Exclude<(typeof vocRules)[number], 'none'>

const sources: Readonly<Record<Rules, string>> = {
  'Hong Kong': 'Hong Kong Environmental Protection Department, limits for marine paints of 2011 and 2012',
  'San Joaquin Valley': 'San Joaquin Valley, best available control guideline 4.2.8 of 2003',
  'US guideline': 'EPA-453/R-08-003, pleasure craft, from memory',
  'Ventura County': 'Ventura County rule 74.24.1 of 1998, last step of 2000',
}

/** g/L, in the order of `what`. */
const limits: Readonly<Record<Rules, readonly number[]>> = {
  'Hong Kong': [600, 420, 600, 340, 420],
  'San Joaquin Valley': [490, 340, 340, 340, 340],
  'US guideline': [490, 420, 420, 340, 420],
  'Ventura County': [490, 490, 420, 340, 420],
}

export const vocLimits: Table<VocFields, string> = Object.fromEntries(
  (Object.keys(limits) as Rules[]).flatMap((rules) =>
    vocFields.what.choices.map((what, index) => [
      `${rules}: ${what}`,
      row(from(sources[rules], { rules, what, limit: `${limits[rules][index]} g/L` })),
    ]),
  ),
)
