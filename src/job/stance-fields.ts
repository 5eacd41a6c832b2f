/** What a tape reads on a boat ashore: heights of marks over the floor, and girths along the skin. */
import type { Sections } from './field.ts'

const girth = { kind: 'quantity', dimension: 'length', sign: 'any', least: -3, most: 8 } as const
const overLevel = { kind: 'quantity', dimension: 'length', sign: 'any', least: -6, most: 12 } as const

export const stanceFields = {
  stance: {
    shape: 'one',
    doc: 'How the boat stands ashore.',
    fields: {
      date: { kind: 'date', doc: 'When the heights were measured: stands sink.' },
      laserHeight: { ...overLevel, doc: 'Height of the laser plane over the floor.' },
      waterline: {
        kind: 'choice',
        choices: ['marked afloat', 'scum line', 'old paint edge'],
        doc: 'What the floating waterline was taken from.',
      },
    },
  },
  levels: {
    shape: 'many',
    doc: 'Marks on the hull whose heights over the floor were measured; three or more.',
    fields: {
      name: { kind: 'text', doc: 'What the mark is, such as bow at the sheer.' },
      fromStern: {
        kind: 'quantity',
        dimension: 'length',
        most: 40,
        need: 'required',
        doc: 'Where it is, forward of the aftmost point.',
      },
      offCentre: {
        kind: 'quantity',
        dimension: 'length',
        sign: 'any',
        least: -8,
        most: 8,
        need: 'required',
        doc: 'To port of the centreline; minus to starboard.',
      },
      height: {
        kind: 'quantity',
        dimension: 'length',
        sign: 'any',
        least: -6,
        most: 6,
        doc: 'Height above the floating waterline, minus below; nothing means on it.',
      },
      overFloor: { ...overLevel, doc: 'Height over the floor, measured.' },
      belowLaser: { ...overLevel, doc: 'Or how far it is below the laser plane, measured.' },
    },
  },
  girths: {
    shape: 'many',
    doc: 'Girths read off a tape laid on the skin across the boat; five a side measure the topsides.',
    fields: {
      fromStern: {
        kind: 'quantity',
        dimension: 'length',
        most: 40,
        need: 'required',
        doc: 'Where the tape lies, forward of the aftmost point.',
      },
      side: {
        kind: 'choice',
        choices: ['port', 'starboard', 'both'],
        doc: 'Which side; both when nothing is said.',
      },
      sheerToWater: { ...girth, doc: 'Along the skin from the sheer to the floating waterline.' },
      waterToChine: { ...girth, doc: 'On to the chine; minus when the chine is above the waterline.' },
      chineToKeel: { ...girth, doc: 'From the chine to the keel.' },
    },
  },
} as const satisfies Sections
