/** What goes on the boat, and where its edges run. */
import { amount, film, percent, size, spread } from './bounds.ts'
import type { Sections } from './field.ts'
import { sheetFields } from './sheet-fields.ts'

export const coatFields = {
  sheets: {
    shape: 'many',
    doc: 'Product data sheets: what you copied from the can. What is missing is taken from the generic sheet.',
    fields: sheetFields,
  },
  packs: {
    shape: 'many',
    doc: 'Pack sizes to be had, and what is on the shelf.',
    fields: {
      sheet: { kind: 'ref', to: 'sheets', need: 'required', doc: 'Of which product.' },
      volume: {
        kind: 'quantity',
        dimension: 'volume',
        ...amount,
        need: 'required',
        doc: 'Volume of the pack, all parts.',
      },
      inStock: { kind: 'count', least: 0, most: 999, doc: 'Unopened packs on the shelf.' },
    },
  },
  layers: {
    shape: 'many',
    doc: 'The build-up: what goes on which zones, from the boat outward.',
    fields: {
      name: { kind: 'text', doc: 'In your own words.' },
      zones: { kind: 'refs', to: 'zones', need: 'required', doc: 'Where it goes.' },
      sheet: { kind: 'ref', to: 'sheets', need: 'required', doc: 'The product.' },
      coats: { kind: 'count', least: 1, most: 12, need: 'required', doc: 'Number of coats.' },
      method: {
        kind: 'choice',
        choices: ['roll and tip', 'roller', 'brush', 'filler knife'],
        doc: 'How it goes on.',
      },
      dryFilm: {
        kind: 'quantity',
        dimension: 'length',
        ...film,
        doc: 'Dry film of one coat, if not as the sheet.',
      },
      coverage: {
        kind: 'quantity',
        dimension: 'coverage',
        ...spread,
        doc: 'Spread you have measured yourself, per coat.',
      },
      thinnerShare: {
        kind: 'quantity',
        dimension: 'share',
        ...percent,
        doc: 'Thinner as a share of A and B.',
      },
      additive: {
        kind: 'quantity',
        dimension: 'volumeShare',
        ...percent,
        doc: 'Bead stirred in, for example 4 fl oz/qt.',
      },
      lossShare: {
        kind: 'quantity',
        dimension: 'share',
        least: 0,
        most: 0.9,
        doc: 'Lost to roller, tray and pot.',
      },
      coverShare: {
        kind: 'quantity',
        dimension: 'share',
        ...percent,
        doc: 'Share of the zone it covers, for spot filling.',
      },
      sandBefore: { kind: 'text', doc: 'Grit the surface below is sanded with, for example P120.' },
      sandBetween: { kind: 'text', doc: 'Grit between its coats, or none.' },
    },
  },
  marks: {
    shape: 'many',
    doc: 'Tape lines on the hull and non-skid panels on the deck.',
    fields: {
      name: { kind: 'text', doc: 'What you call it.' },
      kind: {
        kind: 'choice',
        choices: ['boot stripe', 'tape line', 'panel'],
        need: 'required',
        doc: 'Stripe, single line, or panel.',
      },
      zone: {
        kind: 'ref',
        to: 'zones',
        need: 'required',
        doc: 'The zone whose area it makes; of a tape line the bottom or boot-top that ends at it.',
      },
      heightStem: {
        kind: 'quantity',
        dimension: 'length',
        scale: 'hand',
        sign: 'any',
        least: -1,
        most: 3,
        doc: 'Lower edge, or the line, above the waterline at the stem.',
      },
      heightLow: {
        kind: 'quantity',
        dimension: 'length',
        scale: 'hand',
        sign: 'any',
        least: -1,
        most: 3,
        doc: 'Lower edge, or the line, above the waterline at its low point.',
      },
      heightStern: {
        kind: 'quantity',
        dimension: 'length',
        scale: 'hand',
        sign: 'any',
        least: -1,
        most: 3,
        doc: 'Lower edge, or the line, above the waterline at the stern.',
      },
      widthStem: {
        kind: 'quantity',
        dimension: 'length',
        scale: 'hand',
        doc: 'Height of the stripe at the stem, plumb.',
      },
      widthLow: {
        kind: 'quantity',
        dimension: 'length',
        scale: 'hand',
        doc: 'Height of the stripe at its low point, plumb.',
      },
      widthStern: {
        kind: 'quantity',
        dimension: 'length',
        scale: 'hand',
        doc: 'Height of the stripe at the stern, plumb.',
      },
      length: { kind: 'quantity', dimension: 'length', ...size, doc: 'Length of the field a panel lies in.' },
      width: { kind: 'quantity', dimension: 'length', ...size, doc: 'Width of the field a panel lies in.' },
      border: { kind: 'quantity', dimension: 'length', scale: 'hand', doc: 'Smooth border round a panel.' },
      cornerRadius: { kind: 'quantity', dimension: 'length', scale: 'hand', doc: 'Radius of its corners.' },
      count: { kind: 'count', least: 1, most: 99, doc: 'How many panels alike.' },
    },
  },
} as const satisfies Sections
