/** The layers each zone gets, as the person chose them, with film and spread. */
import { filmLeft, spreadingRate, wetFilm } from '#core/coating'
import type { Note } from '#core/note'
import { planningC, type Work } from '#job'
import { weakest } from './certainty.ts'
import type { Known } from './known.ts'
import type { Stage } from './remember.ts'
import { ladderOf, scratchNotes } from './sheets/ladder-of.ts'
import { resolveSheet } from './sheets/resolve-sheet.ts'
import { solventIn, solventNotes } from './sheets/solvent-in.ts'
import { defaultMethod, lossOf, type Roughness, spreadOf, textureOf } from './sheets/spread-of.ts'
import { thinnerFor, usualShare } from './sheets/thinners.ts'
import type { BuildUps, Marks, ResolvedSheet, Sure, Surfaces, ZoneArea, ZoneLayer } from './types.ts'

export type BuildUpsInput = {
  readonly layers: Work['layers']
  readonly sheets: Work['sheets']
  readonly windows: Work['windows']
  readonly thinners: Work['thinners']
  /** Zones whose old pattern is ground off, one after the other: a text, so that no other finding counts as a change. */
  readonly patternsOff: string
  readonly vocRules: string
  readonly surfaces: Surfaces
  readonly marks: Marks
  readonly known: Known
}

export const buildUps: Stage<BuildUpsInput, BuildUps> = { name: 'buildUps', run: stackLayers }

type LayerItem = Work['layers'][number]

function stackLayers(input: BuildUpsInput): BuildUps {
  const resolved = input.sheets.map((sheet) =>
    resolveSheet(sheet, input.known.sheets.get(sheet.like ?? ''), input),
  )
  const sheets = resolved.map((one) => one.sheet)
  const shelf: Shelf = { sheets, known: input.known, groundOff: new Set(input.patternsOff.split(' ')) }
  const layers = [...input.surfaces.zones, ...input.marks.zones].flatMap((zone) => {
    const own = input.layers.filter((layer) => layer.zones.includes(zone.id))
    return own.flatMap((layer, index) => {
      const next = own[index + 1]
      return layerOn({ zone, below: own.slice(0, index), ...(next ? { next } : {}) }, layer, shelf)
    })
  })
  const used = new Set(layers.map((layer) => layer.sheet))
  const assumed = resolved.flatMap(({ sheet, assumed: names }): readonly Note[] =>
    used.has(sheet.id) && names.length > 0
      ? [
          {
            code: 'buildup.figuresAssumed',
            severity: 'assumed',
            data: { sheet: sheet.id, name: sheet.name, count: names.length, figures: names.join(', ') },
            source: sheet.generic ?? 'assumed',
          },
        ]
      : [],
  )
  const contradicting = sheets.flatMap((sheet) => (used.has(sheet.id) ? contradiction(sheet) : []))
  return {
    sheets,
    layers,
    notes: [
      ...layers.flatMap((layer) => layerNotes(layer, sheets)),
      ...layers.flatMap((layer) => scratchNotes(layer, input.known)),
      ...layers.flatMap((layer) => {
        const sheet = sheets.find((one) => one.id === layer.sheet)
        const { vocLimits: limits } = input.known
        return sheet ? solventNotes(layer, sheet, { limits, rules: input.vocRules }) : []
      }),
      ...resolved.flatMap(({ sheet, notes }) => (used.has(sheet.id) ? notes : [])),
      ...contradicting,
      ...assumed,
    ],
  }
}

type Shelf = {
  readonly sheets: readonly ResolvedSheet[]
  readonly known: Known
  /** Zones whose old pattern is ground off before anything goes on. */
  readonly groundOff: ReadonlySet<string>
}

/** As `patternsOff`: ids hold no spaces. */
export const patternsOffIn = (findings: Work['findings']): string =>
  findings
    .filter(({ kind }) => kind.endsWith('non-skid'))
    .map(({ zone }) => zone)
    .join(' ')

type Place = { readonly zone: ZoneArea; readonly below: readonly LayerItem[]; readonly next?: LayerItem }

function layerOn({ zone, below, next }: Place, layer: LayerItem, shelf: Shelf): readonly ZoneLayer[] {
  const sheet = sheetOf(layer, shelf)
  if (!sheet) return []
  const method = layer.method ?? defaultMethod(sheet)
  const thinner = thinnerFor(sheet, { method })
  const thinnerShare = given(layer.thinnerShare) ?? (thinner ? usualShare(thinner) : sheet.thinnerShare)
  const ownFilm = given(layer.dryFilm)
  const dryFilmM = ownFilm ?? sheet.dryFilmM
  const coverage = given(layer.coverage)
  const { coats } = layer
  const spread = spreadOf({
    sheet,
    own: { ...(coverage ? { coverage } : {}), ...(ownFilm ? { dryFilm: ownFilm } : {}) },
    dryFilmM,
    lossShare: given(layer.lossShare) ?? lossOf(method, shelf.known),
    texture: textureOf(
      { under: roughnessUnder(zone, below, shelf), beaded: isBeaded(layer), coats },
      shelf.known,
    ),
  })
  return [
    {
      id: `${zone.id}:${layer.id}`,
      layer: layer.id,
      zone: zone.id,
      sheet: sheet.id,
      name: layer.name ?? sheet.name,
      role: sheet.role,
      method,
      coats,
      areaM2: zone.areaM2 * (layer.coverShare?.value ?? 1),
      ...(dryFilmM ? { dryFilmM } : {}),
      ...wetFilmOf({ sheet, dryFilmM, thinnerShare }),
      ...leftOf({ dryFilmM, layer, sheet, next, known: shelf.known }),
      thinnerShare,
      additiveShare: layer.additive?.value ?? 0,
      broadcastKgPerM2: layer.broadcast?.value ?? 0,
      ...solventIn(sheet, thinnerShare),
      ...spread,
      sandBefore: layer.sandBefore ?? '',
      sandBetween: layer.sandBetween ?? '',
      ladder: ladderOf(
        { filled: isFilled(below.at(-1), shelf), sandBefore: layer.sandBefore ?? '' },
        shelf.known,
      ),
    },
  ]
}

const sheetOf = (layer: LayerItem, { sheets }: Shelf): ResolvedSheet | undefined =>
  sheets.find((one) => one.id === layer.sheet)

const isFilled = (layer: LayerItem | undefined, shelf: Shelf): boolean =>
  layer !== undefined && ['filler', 'fairing'].includes(sheetOf(layer, shelf)?.role ?? '')

const isBeaded = ({ additive, broadcast }: LayerItem): boolean =>
  (additive?.value ?? 0) > 0 || (broadcast?.value ?? 0) > 0

/** Bead below; or the old pattern, where nothing ground it off and nothing was faired over it. */
function roughnessUnder(zone: ZoneArea, below: readonly LayerItem[], shelf: Shelf): Roughness['under'] {
  const rolesBelow = below.map((layer) => sheetOf(layer, shelf)?.role ?? '')
  if (below.some(isBeaded) || rolesBelow.includes('non-skid')) return 'grit'
  if (zone.texture === 'smooth' || zone.how === 'marks') return 'smooth'
  const faired = below.some(
    (layer, index) =>
      (rolesBelow[index] === 'fairing' || rolesBelow[index] === 'filler') &&
      (layer.coverShare?.value ?? 1) >= COVERING_SHARE,
  )
  if (faired || shelf.groundOff.has(zone.id)) return 'smooth'
  return zone.texture === 'bonded grit' ? 'grit' : 'moulded'
}

/** From half of the zone on a layer covers, below it fills spots. */
const COVERING_SHARE = 0.5

/** What sanding leaves of all coats together. */
function leftOf(of: {
  readonly dryFilmM: Sure<number> | undefined
  readonly layer: LayerItem
  readonly sheet: ResolvedSheet
  readonly next: LayerItem | undefined
  readonly known: Known
}): Pick<ZoneLayer, 'filmLeftM'> {
  const { dryFilmM, layer, sheet, next, known } = of
  if (!dryFilmM) return {}
  const sanded = known.sandedByRole[sheet.role]
  const share = (grit: string | undefined) => (grit && grit !== 'none' ? (sanded?.value ?? 0) : 0)
  const [between, after] = [share(layer.sandBetween), share(next?.sandBefore)]
  const value = filmLeft({ dryFilm: dryFilmM.value, coats: layer.coats, between, after })
  return {
    filmLeftM: {
      value,
      certainty: between + after > 0 ? weakest(dryFilmM.certainty, sanded?.certainty) : dryFilmM.certainty,
    },
  }
}

const given = (
  figure: { readonly value: number; readonly certainty: 'measured' | 'assumed' } | undefined,
): Sure<number> | undefined => figure && { value: figure.value, certainty: figure.certainty }

function wetFilmOf(film: {
  readonly sheet: ResolvedSheet
  readonly dryFilmM: Sure<number> | undefined
  readonly thinnerShare: Sure<number>
}): Pick<ZoneLayer, 'wetFilmM'> {
  const { sheet, dryFilmM, thinnerShare } = film
  if (!dryFilmM || !sheet.volumeSolids) return {}
  const value = wetFilm({
    dryFilm: dryFilmM.value,
    volumeSolids: sheet.volumeSolids.value,
    thinnerShare: thinnerShare.value,
  })
  return { wetFilmM: { value, certainty: 'worked' } }
}

/** A label's coverage may round, and leaves out what is lost: below this share of what solids and film give, assumed. */
const LEAST_OF_THEORETICAL = 0.5
const MOST_OF_THEORETICAL = 1.05

/** Solids, film and coverage of one sheet are two figures and their quotient: a label cannot go beyond it. */
function contradiction(sheet: ResolvedSheet): readonly Note[] {
  const { volumeSolids, dryFilmM, coverageM2PerM3: printed } = sheet
  if (![volumeSolids, dryFilmM, printed].every((figure) => figure?.certainty === 'sheet')) return []
  const theoretical = spreadingRate({ volumeSolids: volumeSolids!.value, dryFilm: dryFilmM!.value })
  const share = printed!.value / theoretical
  if (share >= LEAST_OF_THEORETICAL && share <= MOST_OF_THEORETICAL) return []
  return [
    {
      code: 'buildup.sheetContradicts',
      severity: 'warning',
      data: {
        sheet: sheet.id,
        name: sheet.name,
        spreadM2PerL: printed!.value / 1000,
        theoreticalM2PerL: theoretical / 1000,
        dryFilmUm: dryFilmM!.value * 1e6,
        reachedUm: (volumeSolids!.value / printed!.value) * 1e6,
      },
      source: 'spread = volume solids / dry film',
    },
  ]
}

function layerNotes(layer: ZoneLayer, sheets: readonly ResolvedSheet[]): readonly Note[] {
  const sheet = sheets.find((one) => one.id === layer.sheet)
  const about = { zone: layer.zone, layer: layer.layer, name: layer.name }
  const noSpread: readonly Note[] =
    layer.spreadFrom === 'nothing' ? [{ code: 'buildup.noSpread', severity: 'fault', data: about }] : []
  return [...noSpread, ...(sheet ? thinnerNotes(layer, sheet) : [])]
}

/** Over the most or under the least of the grade that suits, or no grade that suits at all. */
function thinnerNotes(layer: ZoneLayer, sheet: ResolvedSheet): readonly Note[] {
  const about = { zone: layer.zone, layer: layer.layer, name: layer.name }
  const share = layer.thinnerShare.value
  const suits = thinnerFor(sheet, layer)
  if (!suits && sheet.thinners.length > 0 && share > 0)
    return [
      {
        code: 'buildup.thinnerNone',
        severity: 'warning',
        data: { ...about, method: layer.method, airC: planningC },
      },
    ]
  const most = suits?.most ?? sheet.thinnerMost?.value
  const grade = suits?.name ? { grade: suits.name } : {}
  if (most !== undefined && share > most + ROUNDED_SHARE)
    return [
      {
        code: 'buildup.thinnerOver',
        severity: 'warning',
        data: { ...about, ...grade, thinnerShare: share, mostShare: most },
      },
    ]
  if (suits && share < suits.least - ROUNDED_SHARE)
    return [
      {
        code: 'buildup.thinnerUnder',
        severity: 'caution',
        data: { ...about, ...grade, thinnerShare: share, leastShare: suits.least },
      },
    ]
  return []
}

const ROUNDED_SHARE = 1e-9
