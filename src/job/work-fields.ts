/** The *work* document: everything a person knows about the boat and the job, but no money. */
import { coatFields } from './coat-fields.ts'
import { deckFields } from './deck-fields.ts'
import type { Sections } from './field.ts'
import { hullFields } from './hull-fields.ts'
import { stanceFields } from './stance-fields.ts'
import { yardFields } from './yard-fields.ts'
import { zoneFields } from './zone-fields.ts'

export const workFields = {
  job: {
    shape: 'one',
    doc: 'The job itself.',
    fields: {
      name: { kind: 'text', need: 'required', standIn: '', doc: 'What the job is called.' },
      boatName: { kind: 'text', doc: 'Name of the boat.' },
      owner: { kind: 'text', doc: 'Who owns the boat.' },
      shop: { kind: 'text', doc: 'Who does the work.' },
      units: { kind: 'choice', choices: ['metric', 'us'], doc: 'Units on screen and paper.' },
      locale: {
        kind: 'text',
        pattern: '[A-Za-z]{2,3}(-[A-Za-z0-9]{2,8})*',
        example: 'en-GB',
        doc: 'Language tag for numbers and dates, for example en-GB.',
      },
      start: { kind: 'date', need: 'required', standIn: '1970-01-01', doc: 'First day of work.' },
      launch: { kind: 'date', doc: 'The day the boat should be afloat.' },
      finish: {
        kind: 'choice',
        choices: ['work boat', 'tidy', 'best'],
        doc: 'How good it has to look; decides the distance it is judged from and the sanding between coats.',
      },
      finishWords: { kind: 'text', doc: 'The finish standard in the words agreed with the owner.' },
    },
  },
  ...hullFields,
  ...stanceFields,
  ...zoneFields,
  ...deckFields,
  ...coatFields,
  ...yardFields,
} as const satisfies Sections
