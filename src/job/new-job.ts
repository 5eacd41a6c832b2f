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
  /** Whether the deck is painted too. */
  readonly deck: boolean
  readonly person?: string
  readonly weatherFile?: string
  /** Topsides, transom and deck that are painted; all but the deck when nothing is said. */
  readonly topsides?: boolean
  readonly transom?: boolean
  /** What is on it now, one of the choices of a zone; unknown when nothing is said. */
  readonly existing?: string
  readonly finish?: string
  readonly colour?: string
  readonly shade?: 'light' | 'medium' | 'dark'
  readonly nonSkid?: boolean
  readonly stripe?: boolean
  /** Who works when; one person in the week when nobody is named. */
  readonly crew?: readonly {
    readonly name: string
    readonly days: string
    readonly from: string
    readonly until: string
  }[]
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
      packs: packsOf(answers),
      layers: layersOf(answers),
      marks: marksOf(answers),
      place: cells({ shelter, latitude, longitude, timeZone }),
      ...crewOf(answers),
      ...(weatherFile === undefined ? {} : { weather: { file: weatherFile } }),
    },
  }
}

const jobCells = ({ name, boatName, units, start, launch, finish = 'tidy' }: NewJobAnswers): RawCells =>
  cells({ name, boatName, units, start, launch, finish })

/** The first is the lead, the others help. */
const crewOf = ({ crew, person = 'Lead' }: NewJobAnswers) => {
  const all = crew ?? [{ name: person, days: 'Mon-Fri', from: '08:00', until: '16:30' }]
  const idOf = (at: number): string => (at === 0 ? 'lead' : `helper-${at}`)
  return {
    people: items(
      Object.fromEntries(all.map(({ name }, at) => [idOf(at), { name, role: at === 0 ? 'lead' : 'helper' }])),
    ),
    shifts: items(
      Object.fromEntries(
        all.map(({ days, from, until }, at) => [`shift-${at + 1}`, { person: idOf(at), days, from, until }]),
      ),
    ),
  }
}

const topsides = {
  'topsides-port': { name: 'Topsides port', kind: 'topsides', side: 'port' },
  'topsides-starboard': { name: 'Topsides starboard', kind: 'topsides', side: 'starboard' },
} as const
const transom = { transom: { name: 'Transom', kind: 'transom' } } as const

const hullZonesOf = (answers: NewJobAnswers): Readonly<Record<string, Readonly<Record<string, string>>>> => ({
  ...(answers.topsides === false ? {} : topsides),
  ...(answers.transom === false ? {} : transom),
})

const hasStripe = ({ stripe = true }: NewJobAnswers): boolean => stripe
const hasNonSkid = ({ deck, nonSkid = deck }: NewJobAnswers): boolean => deck && nonSkid

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

const zonesOf = (answers: NewJobAnswers): RawItems => {
  const { existing = 'unknown' } = answers
  const painted = {
    ...hullZonesOf(answers),
    ...Object.fromEntries(
      Object.entries(decksOf(answers)).map(([id, kind]) => [id, { name: nameOf(id), kind }]),
    ),
  }
  return items({
    ...Object.fromEntries(Object.entries(painted).map(([id, zone]) => [id, { ...zone, existing }])),
    ...(hasStripe(answers) ? { 'boot-stripe': { name: 'Boot stripe', kind: 'boot stripe' } } : {}),
    ...(hasNonSkid(answers) ? { 'non-skid': { name: 'Non-skid', kind: 'non-skid' } } : {}),
  })
}

const sheetsOf = (answers: NewJobAnswers): RawItems => {
  const { paint, colour, shade = 'light' } = answers
  const finish = paint === 'two-part' ? 'two-part-finish' : 'one-part-enamel'
  return items({
    dewax: { name: 'Dewaxing solvent', like: 'solvent-dewax' },
    primer: { name: 'Primer', like: paint === 'two-part' ? 'epoxy-high-build' : 'epoxy-primer' },
    undercoat: { name: 'Undercoat', like: 'epoxy-tie' },
    gloss: {
      name: 'Gloss',
      like: finish,
      family: paint === 'two-part' ? 'two-part polyurethane' : paint,
      shade,
      ...(colour === undefined ? {} : { colour }),
    },
    ...(hasStripe(answers)
      ? { stripe: { name: 'Boot stripe paint', like: 'one-part-enamel', shade: 'dark' } }
      : {}),
    ...(hasNonSkid(answers)
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

/** Nobody has been to the shop yet: a litre of each is a size that most of it is sold in, assumed. */
const packsOf = (answers: NewJobAnswers): RawItems =>
  items(
    Object.fromEntries(
      Object.keys(sheetsOf(answers))
        .filter((sheet) => sheet !== 'dewax')
        .map((sheet) => [`${sheet}-pack`, { sheet, volume: 'about 1 L' }]),
    ),
  )

const layersOf = (answers: NewJobAnswers): RawItems => {
  const zones = [...Object.keys(hullZonesOf(answers)), ...Object.keys(decksOf(answers))].join(', ')
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
    ...(hasNonSkid(answers)
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
    ...(hasStripe(answers)
      ? {
          stripe: {
            name: 'Boot stripe',
            zones: 'boot-stripe',
            sheet: 'stripe',
            coats: '2',
            method: 'brush',
            sandBefore: 'P320',
            sandBetween: 'P400',
          },
        }
      : {}),
  })
}

const marksOf = (answers: NewJobAnswers): RawItems =>
  items({
    ...(hasStripe(answers)
      ? { stripe: { name: 'Boot stripe', kind: 'boot stripe', zone: 'boot-stripe' } }
      : {}),
    ...(hasNonSkid(answers) ? { panel: { name: 'Non-skid panel', kind: 'panel', zone: 'non-skid' } } : {}),
  })
