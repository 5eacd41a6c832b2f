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
        choices: ['started', 'done', 'not done', 'mishap', 'rain', 'reading', 'note'],
        need: 'required',
        doc: 'What the entry says. `not done` takes back an earlier `done`; `mishap` says that something went wrong, `rain` that it rained.',
      },
      step: { kind: 'text', doc: 'Id of the step it is about.' },
      mishap: { kind: 'text', doc: 'What went wrong, by its id in the list of mishaps.' },
      film: {
        kind: 'choice',
        choices: ['stands', 'wiped off', 'sanded off'],
        doc: 'What becomes of the coat that went wrong: it stands, it was wiped off wet and is put on again, or it is sanded once dry and put on again.',
      },
      grit: {
        kind: 'text',
        doc: 'Grit it is sanded with before anything more goes on, for example P320; left out, the grit the plan has for it.',
      },
      share: {
        kind: 'quantity',
        dimension: 'share',
        least: 0,
        most: 1,
        doc: 'Share of the surface that is sanded where the coat stands; left out, all of it.',
      },
      wait: {
        kind: 'quantity',
        dimension: 'time',
        doc: 'Least wait before it is sanded or coated again; the clocks of the product hold besides.',
      },
      until: {
        kind: 'instant',
        doc: 'When the rain stopped, written as `at` is; left out, within the hour.',
      },
      rain: {
        kind: 'quantity',
        dimension: 'length',
        least: 0,
        most: 1,
        doc: 'Rain from `at` to `until` in all, for example 3 mm; 0 mm where it stayed dry after all; left out where nobody measured it.',
      },
      by: { kind: 'text', doc: 'Who did it, names as people write them.' },
      text: { kind: 'text', doc: 'In your own words.' },
      air: { kind: 'quantity', dimension: 'temperature', doc: 'Air temperature read.' },
      humidity: { kind: 'quantity', dimension: 'share', least: 0, most: 1, doc: 'Relative humidity read.' },
      skin: { kind: 'quantity', dimension: 'temperature', doc: 'Temperature of the surface itself, read.' },
      readAt: {
        kind: 'choice',
        choices: ['deck', 'port', 'starboard', 'transom', 'bottom', 'indoors'],
        doc: 'Where the surface was read; left out, nobody knows where on the boat.',
      },
      batch: { kind: 'text', doc: 'Batch numbers of what went on, as they stand on the cans.' },
      used: {
        kind: 'quantity',
        dimension: 'volume',
        least: 0,
        doc: 'How much mixed paint the coat took, thinner in it.',
      },
      wetFilm: {
        kind: 'quantity',
        dimension: 'length',
        scale: 'film',
        least: 0,
        most: 0.01,
        doc: 'Wet film by the gauge, thinner in it.',
      },
      corrects: {
        kind: 'text',
        doc: 'Ids of entries that this one takes the place of, separated by commas: they stay written and count no more.',
      },
      written: {
        kind: 'instant',
        doc: 'When the entry was written, where that was later than what it tells of; written as `at` is.',
      },
    },
  },
} as const satisfies Sections
