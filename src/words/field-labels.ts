/** What each cell of the job document is called where it is shown, and a sentence that helps to fill it in. */
import { boatFields } from './field-boat-words.ts'
import { deckFieldWords, deckZoneWords } from './field-deck-words.ts'
import { paintFields } from './field-paint-words.ts'
import type { FieldWords } from './field-words.ts'
import { workFieldWords } from './field-work-words.ts'

const all: FieldWords = {
  ...boatFields,
  ...deckFieldWords,
  ...paintFields,
  ...workFieldWords,
  zones: { ...boatFields.zones, ...deckZoneWords },
}

/** `cell.boat.beam` and `cellHelp.boat.beam`. */
export const fieldLabels: Readonly<Record<string, string>> = Object.fromEntries(
  Object.entries(all).flatMap(([section, fields]) =>
    Object.entries(fields).flatMap(([key, [label, help]]) => [
      [`cell.${section}.${key}`, label],
      [`cellHelp.${section}.${key}`, help],
    ]),
  ),
)

/** What a section is called in the middle of a sentence. */
export const sectionLabels: Readonly<Record<string, string>> = {
  'section.job': 'the job',
  'section.boat': 'the boat',
  'section.stations': 'the stations',
  'section.points': 'the points of stations',
  'section.stance': 'the way the boat stands',
  'section.levels': 'the levelled marks',
  'section.girths': 'the girths',
  'section.zones': 'the zones',
  'section.corners': 'the corners of zones',
  'section.offsets': 'the offsets of zones',
  'section.findings': 'the findings',
  'section.fittings': 'the hardware',
  'section.sheets': 'the products',
  'section.windows': 'the recoat windows',
  'section.thinners': 'the thinners',
  'section.packs': 'the packs',
  'section.layers': 'the layers',
  'section.marks': 'the marks',
  'section.place': 'the place',
  'section.shed': 'the shed',
  'section.people': 'the people',
  'section.shifts': 'the shifts',
  'section.closures': 'the days off',
  'section.weather': 'the weather',
  'section.changes': 'the change orders',
  'section.terms': 'the terms of money',
  'section.rates': 'the rates',
  'section.prices': 'the prices of packs',
  'section.consumablePrices': 'the prices of consumables',
  'section.unitPrices': 'the unit prices',
  'section.costs': 'the other costs',
  'section.log': 'the log',
  'section.catalogue': 'the generic sheets',
  'section.consumables': 'the consumables',
}
