/** Deck zones as shapes: what is measured of one besides its corners, and the corners and offsets themselves. */
import { size } from './bounds.ts'
import type { Fields, Sections } from './field.ts'

/** Farther out than any boat of this length is wide. */
const across = { sign: 'any', least: -8, most: 8 } as const
/** A swim platform reaches behind the aftmost point of the hull. */
const along = { sign: 'any', least: -4, most: 40 } as const

/** Cells of a zone. */
export const deckZoneFields = {
  mirror: {
    kind: 'yesno',
    doc: 'Its corners or offsets are one half, or one of two alike: the other side is their mirror image.',
  },
  curve: {
    kind: 'choice',
    choices: ['straight', 'fair'],
    doc: 'How the edge runs from offset to offset: straight, or as a fair curve.',
  },
  camber: {
    kind: 'quantity',
    dimension: 'length',
    sign: 'positive',
    most: 1,
    scale: 'hand',
    doc: 'Rise in the middle over the edges, where it is widest.',
  },
  slope: {
    kind: 'quantity',
    dimension: 'angle',
    least: 0,
    most: Math.PI / 3,
    doc: 'Slope along the boat, where corners were measured level.',
  },
  upstandHeight: {
    kind: 'quantity',
    dimension: 'length',
    sign: 'positive',
    most: 3,
    scale: 'hand',
    doc: 'Height of what stands up along it, such as a coaming.',
  },
  upstandLength: {
    kind: 'quantity',
    dimension: 'length',
    ...size,
    doc: 'Length of that; all round its edge when left out.',
  },
  openingLength: {
    kind: 'quantity',
    dimension: 'length',
    ...size,
    doc: 'Length of an opening that is cut out, such as a hatch.',
  },
  openingWidth: { kind: 'quantity', dimension: 'length', ...size, doc: 'Width of that opening.' },
  openingCount: { kind: 'count', least: 1, most: 99, doc: 'How many such openings; one when left out.' },
  faces: { kind: 'choice', choices: ['one', 'both'], doc: 'Whether both faces of a loose part are painted.' },
  hides: {
    kind: 'choice',
    choices: ['bottom', 'topsides'],
    doc: 'What a pad hides; the bottom when left out.',
  },
} as const satisfies Fields

export const deckFields = {
  corners: {
    shape: 'many',
    doc: 'Corners of deck zones seen from above, in order round each zone.',
    fields: {
      zone: { kind: 'ref', to: 'zones', need: 'required', doc: 'The zone it is a corner of.' },
      fromStern: {
        kind: 'quantity',
        dimension: 'length',
        ...along,
        need: 'required',
        doc: 'Level distance forward of the aftmost point of the hull; minus behind it.',
      },
      offCentre: {
        kind: 'quantity',
        dimension: 'length',
        ...across,
        need: 'required',
        doc: 'Distance to port of the centreline; minus to starboard.',
      },
      opening: {
        kind: 'count',
        least: 1,
        most: 20,
        doc: 'Number of the opening it bounds; the edge of the zone when left out.',
      },
    },
  },
  offsets: {
    shape: 'many',
    doc: 'Offsets of deck zones from the centreline, every so far along the boat; in the place of corners.',
    fields: {
      zone: { kind: 'ref', to: 'zones', need: 'required', doc: 'The zone it is an offset of.' },
      fromStern: {
        kind: 'quantity',
        dimension: 'length',
        ...along,
        need: 'required',
        doc: 'Level distance forward of the aftmost point of the hull; minus behind it.',
      },
      outer: {
        kind: 'quantity',
        dimension: 'length',
        least: 0,
        most: 8,
        need: 'required',
        doc: 'Centreline to the outer edge.',
      },
      inner: {
        kind: 'quantity',
        dimension: 'length',
        least: 0,
        most: 8,
        doc: 'Centreline to the inner edge; left out where the zone reaches the centreline.',
      },
    },
  },
} as const satisfies Sections
