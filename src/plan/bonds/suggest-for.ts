/** Suggested build-ups for a job: zones that stand alike, the sheets of the job, what their packs cost. */
import type { Catalogue } from '#catalogue'
import {
  type Fault,
  type Judged,
  judge,
  type Miss,
  type Offer,
  type Suggestion,
  type Wish,
} from '#core/coating'
import type { Note } from '#core/note'
import type { MoneyTerms, Work } from '#job'
import { grounds } from '../grounds.ts'
import type { Known } from '../known.ts'
import { readCatalogue } from '../read-catalogue.ts'
import { usualSpread } from '../sheets/spread-of.ts'
import { textureOf } from '../sheets/texture-of.ts'
import type { Plan, ResolvedSheet, ZoneArea } from '../types.ts'
import { bondNotes, type Names } from './bond-notes.ts'
import { aroundOf } from './bonds.ts'
import { clocksOf, coatOf, groundOf } from './ground.ts'
import { suggestInColour } from './in-colour.ts'
import { whereOf } from './stack-of.ts'

export type SuggestInput = {
  readonly plan: Pick<Plan, 'surfaces' | 'marks' | 'buildUps' | 'repairs'>
  readonly work: Pick<Work, 'zones' | 'packs' | 'findings'>
  readonly prices: MoneyTerms['prices'] | undefined
  readonly catalogue: Catalogue
  /** Only a finish of this family, or this sheet; of any when left out. Non-skid is never narrowed. */
  readonly wish: Pick<Wish, 'family' | 'sheet'>
}

/** A build-up that does not hold, with its faults as notes. */
export type ToldMiss = Miss & { readonly notes: readonly Note[] }

export type ZoneSuggestions = {
  /** With what has to hold besides: a test patch, old paint ground away. */
  readonly suggestions: readonly (Suggestion & { readonly only: readonly Note[] })[]
  readonly none?: { readonly why: 'no finish' | 'no way'; readonly miss?: ToldMiss }
  readonly shortcuts: readonly ToldMiss[]
  readonly zones: readonly string[]
  readonly existing: string
  readonly areaM2: number
  readonly wish: Wish
}

export type Suggestions = {
  readonly groups: readonly ZoneSuggestions[]
  /** Sheets left out, since nobody knows how far they go. */
  readonly unspread: readonly string[]
  /** Sheets that no pack gives a price for. */
  readonly unpriced: readonly string[]
}

/** More than eight layers nobody paints. */
const MOST_LAYERS = 8

const coating: ReadonlySet<string> = new Set(['primer', 'tie coat', 'finish', 'non-skid'])

/**
 * Three build-ups for every group of zones that stand alike.
 * @param input the plan they belong to; its own layers are not looked at. @returns one answer a group, the largest
 * first.
 */
export function suggestBuildUps(input: SuggestInput): Suggestions {
  const known = readCatalogue.run({ catalogue: input.catalogue })
  const sheets = input.plan.buildUps.sheets.filter(({ role }) => coating.has(role))
  const offers = sheets.flatMap((sheet) => offerOf(sheet, input, known))
  const names = namesIn(input)
  const groups = groupsOf(input, known).map((group): ZoneSuggestions => {
    const { zones, ground, where } = group
    const areaM2 = zones.reduce((sum, zone) => sum + zone.areaM2, 0)
    const wish: Wish = { role: group.role, ...(group.role === 'finish' ? input.wish : {}) }
    const eaten = offers.map((offer) => ({ ...offer, litresPerM2: offer.litresPerM2 * group.texture }))
    const search = { ground, where, areaM2, offers: eaten, wish, mostLayers: MOST_LAYERS }
    const found = suggestInColour(known.bonds, search, group.colour)
    const about = { zones: zones.map(({ id }) => id), existing: surfaceOf(zones[0]!, ground) }
    const told = (miss: Miss): ToldMiss => ({
      ...miss,
      notes: bondNotes([{ ...about, faults: miss.faults }], names),
    })
    const { suggestions, shortcuts, none, otherColours } = found
    return {
      ...about,
      areaM2,
      wish,
      suggestions: suggestions.map((one) => ({
        ...one,
        only: [
          ...(otherColours.has(one) ? [otherColour(one, group.colour)] : []),
          ...bondNotes([{ ...about, faults: conditionsIn(judge(known.bonds, one.stack)) }], names),
        ],
      })),
      shortcuts: shortcuts.map(told),
      ...(none ? { none: { why: none.why, ...(none.miss ? { miss: told(none.miss) } : {}) } } : {}),
    }
  })
  const offered = new Set(offers.map(({ id }) => id))
  return {
    groups: groups.sort((a, b) => b.areaM2 - a.areaM2),
    unspread: sheets.filter(({ id }) => !offered.has(id)).map(({ id }) => id),
    unpriced: offers.filter(({ coinsPerL }) => coinsPerL === undefined).map(({ id }) => id),
  }
}

const otherColour = ({ steps }: Suggestion, wanted: string): Note => ({
  code: 'suggest.otherColour',
  severity: 'notice',
  data: { colour: steps.at(-1)?.offer.colour || 'none', wantedColour: wanted },
})

const conditionsIn = ({ faults }: Judged): readonly Fault[] => faults.filter(({ kind }) => kind === 'only')

/** Layers of suggestions go by their sheets. */
function namesIn({ plan }: SuggestInput): Names {
  const sheetName = (id: string | undefined) => plan.buildUps.sheets.find((sheet) => sheet.id === id)?.name
  const zones = [...plan.surfaces.zones, ...plan.marks.zones]
  return {
    zone: (id) => zones.find((zone) => zone.id === id)?.name ?? id,
    coat: (id) =>
      sheetName(id) ??
      sheetName(plan.buildUps.layers.find((layer) => layer.layer === id)?.sheet) ??
      sheetName(plan.repairs.repairs.find((repair) => repair.finding === id)?.sheet),
  }
}

const surfaceOf = (zone: ZoneArea, ground: Group['ground']): string =>
  ground[0]?.material.age === 'fresh' ? 'fresh paint' : zone.existing

type Group = {
  readonly zones: ZoneArea[]
  readonly ground: ReturnType<typeof groundOf>
  readonly where: 'above water' | 'below water'
  readonly role: string
  /** How many times the paint of a smooth surface it takes. */
  readonly texture: number
  /** Of the finish that is planned there; empty where none is. */
  readonly colour: string
}

function groupsOf({ plan, work }: SuggestInput, known: Known): readonly Group[] {
  const around = aroundOf({ ...plan, zones: work.zones, known })
  const grounded = grounds.run(work)
  const groups = new Map<string, Group>()
  for (const zone of around.zones) {
    const ground = groundOf(zone, around)
    const where = whereOf(zone)
    const role = zone.kind === 'non-skid' ? 'non-skid' : 'finish'
    // Which finding it was matters to nobody here, what it was mended with does.
    const colour = colourOn(zone, plan.buildUps)
    const isGroundOff = (grounded[zone.id]?.patternOff ?? 'none') !== 'none'
    const bare = { zone, below: [], roleOf: () => '', isGroundOff }
    const texture = textureOf({ coats: 1 }, bare, known).value
    const key = JSON.stringify([
      ground.map(({ id: _id, ...exposed }) => exposed),
      ...[where, role, texture, colour],
    ])
    const same = groups.get(key)
    if (same) same.zones.push(zone)
    else groups.set(key, { zones: [zone], ground, where, role, texture, colour })
  }
  return [...groups.values()]
}

const colourOn = (zone: ZoneArea, { layers, sheets }: SuggestInput['plan']['buildUps']): string => {
  const last = layers.findLast((layer) => layer.zone === zone.id)
  return sheets.find(({ id }) => id === last?.sheet)?.colour ?? ''
}

function offerOf(sheet: ResolvedSheet, input: SuggestInput, known: Known): readonly Offer[] {
  const spread = usualSpread(sheet, known)
  if (!spread || spread.value <= 0) return []
  const coins = coinsPerLitre(sheet.id, input)
  return [
    {
      id: sheet.id,
      ...coatOf(sheet),
      colour: sheet.colour,
      clocks: clocksOf(sheet),
      ...(sheet.dryFilmM ? { dryFilmM: sheet.dryFilmM.value } : {}),
      litresPerM2: 1000 / spread.value,
      ...(coins === undefined ? {} : { coinsPerL: coins }),
    },
  ]
}

/** By the pack that is cheapest a litre; whole packs are bought in the stores. */
function coinsPerLitre(sheet: string, { work, prices }: SuggestInput): number | undefined {
  const each = work.packs
    .filter((pack) => pack.sheet === sheet)
    .flatMap((pack) => {
      const price = prices?.find((one) => one.pack === pack.id)?.price.coins
      return price === undefined ? [] : [price / (pack.volume.value * 1000)]
    })
  return each.length === 0 ? undefined : Math.min(...each)
}
