/** A raw document to begin with, from a few answers; what nobody was asked is left to the plan's own assumptions. */

import { withOrder } from './build-raw.ts'
import { documentVersion } from './parts.ts'
import type { RawCells, RawDocument, RawItems } from './raw.ts'

/** Everything as the person typed it. */
export type NewJobAnswers = {
  readonly name: string
  readonly boatName?: string
  readonly kind: 'open powerboat' | 'cuddy powerboat' | 'cabin cruiser' | 'sailing yacht' | 'dinghy'
  /** Length of the hull, greatest beam, sheer above water at the stem. */
  readonly length: string
  readonly beam: string
  readonly freeboard: string
  readonly start: string
  readonly launch?: string
  readonly shelter: 'open' | 'cover' | 'open-sided shed' | 'shed' | 'heated shed'
  readonly timeZone: string
  readonly latitude?: string
  readonly longitude?: string
  readonly units?: 'metric' | 'us'
  /** `two-part` lasts longer and asks for trained people; `one-part` is what most people can do at home. */
  readonly paint: 'one-part' | 'two-part'
  /** Whether the deck is painted too; its zones then need an area each. */
  readonly deck: boolean
  readonly person?: string
  readonly weatherFile?: string
}

/** Cells without those nobody answered. */
const cells = (all: Readonly<Record<string, string | undefined>>): RawCells =>
  Object.fromEntries(Object.entries(all).filter((entry): entry is [string, string] => entry[1] !== undefined))

const items = (all: Readonly<Record<string, Readonly<Record<string, string>>>>): RawItems =>
  Object.fromEntries(withOrder(Object.entries(all)))

/**
 * Topsides, transom and boot stripe; with `deck`, the decks of the kind of boat and their non-skid. Primer, undercoat
 * and gloss from generic sheets. The answers are not judged here: `project` does that.
 */
export const newJob = (answers: NewJobAnswers): RawDocument => {
  const { kind, shelter, timeZone, latitude, longitude, weatherFile } = answers
  return {
    hardstand: String(documentVersion),
    work: {
      job: jobCells(answers),
      boat: cells({
        kind,
        lengthOverall: answers.length,
        beam: answers.beam,
        freeboardStem: answers.freeboard,
      }),
      zones: zonesOf(answers),
      sheets: sheetsOf(answers),
      layers: layersOf(answers),
      marks: marksOf(answers),
      place: cells({ shelter, latitude, longitude, timeZone }),
      people: items({ lead: { name: answers.person ?? 'Lead', role: 'lead' } }),
      shifts: items({ week: { person: 'lead', days: 'Mon-Fri', from: '08:00', until: '16:30' } }),
      ...(weatherFile === undefined ? {} : { weather: { file: weatherFile } }),
    },
  }
}

const jobCells = ({ name, boatName, units, start, launch }: NewJobAnswers): RawCells =>
  cells({ name, boatName, units, start, launch, finish: 'tidy' })

const hullZones = {
  'topsides-port': { name: 'Topsides port', kind: 'topsides', side: 'port', existing: 'unknown' },
  'topsides-starboard': {
    name: 'Topsides starboard',
    kind: 'topsides',
    side: 'starboard',
    existing: 'unknown',
  },
  transom: { name: 'Transom', kind: 'transom', existing: 'unknown' },
} as const

const open = { foredeck: 'foredeck', 'side-decks': 'side deck', 'cockpit-sole': 'cockpit sole' } as const
const decked = { ...open, 'cabin-top': 'cabin top', 'cabin-sides': 'cabin side' } as const

const deckZones: Readonly<Record<NewJobAnswers['kind'], Readonly<Record<string, string>>>> = {
  dinghy: { foredeck: 'foredeck', 'cockpit-sole': 'cockpit sole' },
  'open powerboat': { ...open, 'cockpit-sides': 'cockpit side', console: 'console' },
  'cuddy powerboat': decked,
  'cabin cruiser': { ...decked, 'cockpit-sides': 'cockpit side' },
  'sailing yacht': { ...decked, coaming: 'coaming' },
}

/** None for a kind of boat that is not known; the reader will say so. */
const decksOf = ({ deck, kind }: NewJobAnswers): Readonly<Record<string, string>> =>
  deck && Object.hasOwn(deckZones, kind) ? deckZones[kind] : {}

/** `cockpit-sole` to `Cockpit sole`. */
const nameOf = (id: string): string => id.charAt(0).toUpperCase() + id.slice(1).replaceAll('-', ' ')

const zonesOf = (answers: NewJobAnswers): RawItems =>
  items({
    ...hullZones,
    'boot-stripe': { name: 'Boot stripe', kind: 'boot stripe' },
    ...Object.fromEntries(
      Object.entries(decksOf(answers)).map(([id, kind]) => [
        id,
        { name: nameOf(id), kind, existing: 'unknown' },
      ]),
    ),
    ...(answers.deck ? { 'non-skid': { name: 'Non-skid', kind: 'non-skid' } } : {}),
  })

const sheetsOf = ({ paint, deck }: NewJobAnswers): RawItems => {
  const finish = paint === 'two-part' ? 'two-part-finish' : 'one-part-enamel'
  return items({
    dewax: { name: 'Dewaxing solvent', like: 'solvent-dewax' },
    primer: { name: 'Primer', like: paint === 'two-part' ? 'epoxy-high-build' : 'epoxy-primer' },
    undercoat: { name: 'Undercoat', like: 'epoxy-tie' },
    gloss: {
      name: 'Gloss',
      like: finish,
      family: paint === 'two-part' ? 'two-part polyurethane' : paint,
      shade: 'light',
    },
    stripe: { name: 'Boot stripe paint', like: 'one-part-enamel', shade: 'dark' },
    ...(deck
      ? {
          grip: {
            name: 'Non-skid',
            like: paint === 'two-part' ? 'textured-acrylic' : 'one-part-deck',
            shade: 'light',
          },
        }
      : {}),
  })
}

const layersOf = (answers: NewJobAnswers): RawItems => {
  const zones = [...Object.keys(hullZones), ...Object.keys(decksOf(answers))].join(', ')
  const gloss = answers.paint === 'two-part' ? '3' : '2'
  return items({
    primer: { name: 'Primer', zones, sheet: 'primer', coats: '2', method: 'roller', sandBefore: 'P120' },
    undercoat: {
      name: 'Undercoat',
      zones,
      sheet: 'undercoat',
      coats: '1',
      method: 'roller',
      sandBefore: 'P220',
    },
    gloss: {
      name: 'Gloss',
      zones,
      sheet: 'gloss',
      coats: gloss,
      method: 'roll and tip',
      sandBefore: 'P320',
      sandBetween: 'P400',
    },
    ...(answers.deck
      ? {
          grip: {
            name: 'Non-skid',
            zones: 'non-skid',
            sheet: 'grip',
            coats: '2',
            method: 'roller',
            sandBefore: 'P320',
          },
        }
      : {}),
    stripe: {
      name: 'Boot stripe',
      zones: 'boot-stripe',
      sheet: 'stripe',
      coats: '2',
      method: 'brush',
      sandBefore: 'P320',
    },
  })
}

const marksOf = ({ deck }: NewJobAnswers): RawItems =>
  items({
    stripe: { name: 'Boot stripe', kind: 'boot stripe', zone: 'boot-stripe' },
    ...(deck ? { panel: { name: 'Non-skid panel', kind: 'panel', zone: 'non-skid' } } : {}),
  })
