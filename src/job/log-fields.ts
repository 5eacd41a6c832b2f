/** The log: immutable entries of what really happened. Not a shared document; a correction is a new entry. */
import type { Sections } from './field.ts'

export const logFields = {
  log: {
    shape: 'many',
    doc: 'What really happened.',
    fields: {
      at: {
        kind: 'instant',
        need: 'required',
        doc: 'When: date and time with offset, for example 2027-04-14T09:30+02:00.',
      },
      kind: {
        kind: 'choice',
        choices: ['started', 'done', 'not done', 'reading', 'note'],
        need: 'required',
        doc: 'What the entry says. `not done` takes back an earlier `done`.',
      },
      step: { kind: 'text', doc: 'Id of the step it is about.' },
      by: { kind: 'text', doc: 'Who.' },
      text: { kind: 'text', doc: 'In your own words.' },
      air: { kind: 'quantity', dimension: 'temperature', doc: 'Air temperature read.' },
      humidity: { kind: 'quantity', dimension: 'share', least: 0, most: 1, doc: 'Relative humidity read.' },
    },
  },
} as const satisfies Sections
