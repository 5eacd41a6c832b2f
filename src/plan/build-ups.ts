/** The layers each zone gets, as the person chose them, with film and spread. */
import { practicalSpread, spreadingRate, wetFilm } from '#core/coating'
import type { Note } from '#core/note'
import { planningC, type Work } from '#job'
import type { Known } from './known.ts'
import type { Stage } from './remember.ts'
import { resolveSheet } from './sheets/resolve-sheet.ts'
import { thinnerFor, usualShare } from './sheets/thinners.ts'
import type { BuildUps, Marks, ResolvedSheet, Sure, Surfaces, ZoneArea, ZoneLayer } from './types.ts'

export type BuildUpsInput = {
  readonly layers: Work['layers']
  readonly sheets: Work['sheets']
  readonly windows: Work['windows']
  readonly thinners: Work['thinners']
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
  const layers = [...input.surfaces.zones, ...input.marks.zones].flatMap((zone) =>
    input.layers
      .filter((layer) => layer.zones.includes(zone.id))
      .flatMap((layer) => layerOn(zone, layer, { sheets, known: input.known })),
  )
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
      ...resolved.flatMap(({ sheet, notes }) => (used.has(sheet.id) ? notes : [])),
      ...contradicting,
      ...assumed,
    ],
  }
}

type Shelf = { readonly sheets: readonly ResolvedSheet[]; readonly known: Known }

function layerOn(zone: ZoneArea, layer: LayerItem, shelf: Shelf): readonly ZoneLayer[] {
  const sheet = shelf.sheets.find((one) => one.id === layer.sheet)
  if (!sheet) return []
  const method = layer.method ?? defaultMethod(sheet)
  const thinner = thinnerFor(sheet, { method })
  const thinnerShare = given(layer.thinnerShare) ?? (thinner ? usualShare(thinner) : sheet.thinnerShare)
  const dryFilmM = given(layer.dryFilm) ?? sheet.dryFilmM
  const spread = spreadOf({ layer, sheet, dryFilmM, lossShare: lossOf(layer, method, shelf.known) })
  return [
    {
      id: `${zone.id}:${layer.id}`,
      layer: layer.id,
      zone: zone.id,
      sheet: sheet.id,
      name: layer.name ?? sheet.name,
      role: sheet.role,
      method,
      coats: layer.coats,
      areaM2: zone.areaM2 * (layer.coverShare?.value ?? 1),
      ...(dryFilmM ? { dryFilmM } : {}),
      ...wetFilmOf({ sheet, dryFilmM, thinnerShare }),
      thinnerShare,
      additiveShare: layer.additive?.value ?? 0,
      ...spread,
      sandBefore: layer.sandBefore ?? '',
      sandBetween: layer.sandBetween ?? '',
    },
  ]
}

/** How far a product goes as its sheet has it, put on as is usual for its role. */
export function usualSpread(sheet: ResolvedSheet, known: Known): Sure<number> | undefined {
  const lossShare = known.lossByMethod[defaultMethod(sheet)] ?? { value: 0, certainty: 'assumed' }
  return spreadOf({ layer: {}, sheet, dryFilmM: sheet.dryFilmM, lossShare }).spreadM2PerM3
}

const given = (
  figure: { readonly value: number; readonly certainty: 'measured' | 'assumed' } | undefined,
): Sure<number> | undefined => figure && { value: figure.value, certainty: figure.certainty }

const defaultMethod = (sheet: ResolvedSheet): string =>
  ({ finish: 'roll and tip', filler: 'filler knife', fairing: 'filler knife' })[sheet.role] ?? 'roller'

const lossOf = (layer: LayerItem, method: string, known: Known): Sure<number> =>
  given(layer.lossShare) ?? known.lossByMethod[method] ?? { value: 0, certainty: 'assumed' }

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

/**
 * How far a cubic metre of mixed paint goes. A spread the person measured comes first and has its losses in it;
 * then the coverage as printed on their own sheet, taken as it stands; then solids over film, less what stays in
 * roller, tray and pot.
 */
function spreadOf(of: {
  readonly layer: Pick<LayerItem, 'coverage' | 'dryFilm'>
  readonly sheet: ResolvedSheet
  readonly dryFilmM: Sure<number> | undefined
  readonly lossShare: Sure<number>
}): Pick<ZoneLayer, 'spreadM2PerM3' | 'spreadFrom' | 'lossShare'> {
  const { layer, sheet, dryFilmM, lossShare } = of
  const none: Sure<number> = { value: 0, certainty: 'worked' }
  if (layer.coverage) {
    return {
      spreadM2PerM3: { value: layer.coverage.value, certainty: layer.coverage.certainty },
      spreadFrom: 'own measure',
      lossShare: none,
    }
  }
  const printed = sheet.coverageM2PerM3
  if (printed && (printed.certainty === 'sheet' || !(dryFilmM && sheet.volumeSolids)) && !layer.dryFilm) {
    return { spreadM2PerM3: printed, spreadFrom: 'coverage', lossShare: none }
  }
  if (!dryFilmM || !sheet.volumeSolids) return { spreadFrom: 'nothing', lossShare }
  const theoretical = spreadingRate({ volumeSolids: sheet.volumeSolids.value, dryFilm: dryFilmM.value })
  const value = practicalSpread({ theoretical, loss: lossShare.value })
  return { spreadM2PerM3: { value, certainty: 'worked' }, spreadFrom: 'solids and film', lossShare }
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
