/** The layers each zone gets, as the person chose them, with film and spread. */
import { filmLeft, wetFilm } from '#core/coating'
import type { Note } from '#core/note'
import type { Work } from '#job'
import { weakest } from './certainty.ts'
import type { Grounds } from './grounds.ts'
import type { Known } from './known.ts'
import type { Stage } from './remember.ts'
import { contradiction } from './sheets/contradiction.ts'
import { fills } from './sheets/fillers.ts'
import { genericFor } from './sheets/generic-for.ts'
import { gripNotes } from './sheets/grip.ts'
import { ladderOf, rungOf, scratchNotes } from './sheets/ladder-of.ts'
import { filmAtSpread, resolveSheet } from './sheets/resolve-sheet.ts'
import { solventIn, solventNotes } from './sheets/solvent-in.ts'
import { defaultMethod, lossOf, spreadOf } from './sheets/spread-of.ts'
import { textureOf } from './sheets/texture-of.ts'
import { thinnerFor, thinnerNotes, usualShare } from './sheets/thinners.ts'
import type { BuildUps, Marks, ResolvedSheet, Sure, Surfaces, ZoneArea, ZoneLayer } from './types.ts'

export type BuildUpsInput = {
  readonly layers: Work['layers']
  readonly sheets: Work['sheets']
  readonly windows: Work['windows']
  readonly thinners: Work['thinners']
  readonly grounds: Grounds
  readonly vocRules: string
  readonly surfaces: Surfaces
  readonly marks: Marks
  readonly known: Known
}

export const buildUps: Stage<BuildUpsInput, BuildUps> = { name: 'buildUps', run: stackLayers }

type LayerItem = Work['layers'][number]

function stackLayers(input: BuildUpsInput): BuildUps {
  const resolved = input.sheets.map((sheet) =>
    resolveSheet(sheet, genericFor(sheet, input.known.sheets), input),
  )
  const sheets = resolved.map((one) => one.sheet)
  const shelf: Shelf = { sheets, known: input.known, grounds: input.grounds }
  const zones = [...input.surfaces.zones, ...input.marks.zones]
  const layers = zones.flatMap((zone) => {
    const own = input.layers.filter((layer) => layer.zones.includes(zone.id))
    return own.flatMap((layer, index) => {
      const next = own[index + 1]
      return layerOn({ zone, below: own.slice(0, index), ...(next ? { next } : {}) }, layer, shelf)
    })
  })
  const used = new Set(layers.map((layer) => layer.sheet))
  return {
    sheets,
    layers,
    notes: [
      ...onceEach(layers).flatMap((layer) => layerNotes(layer, sheets, input)),
      ...gripNotes({ zones, layers, grounds: input.grounds }),
      ...resolved.flatMap(({ sheet, notes, assumed }) =>
        used.has(sheet.id)
          ? [...notes, ...dryingNotes(sheet), ...contradiction(sheet), ...assumedNotes(sheet, assumed)]
          : [],
      ),
    ],
  }
}

/** What is told of a layer holds on all its zones: it is told of the first. */
const onceEach = (layers: readonly ZoneLayer[]): readonly ZoneLayer[] =>
  [...new Map(layers.toReversed().map((layer) => [layer.layer, layer])).values()].toReversed()

/** Without these a coat would be sanded and coated over as soon as it lies there. */
const dryingNotes = ({ id, name, clocks }: ResolvedSheet): readonly Note[] =>
  clocks.dryToSand || clocks.recoatLeast
    ? []
    : [{ code: 'buildup.dryingUnknown', severity: 'missing', data: { sheet: id, name } }]

const assumedNotes = (sheet: ResolvedSheet, names: readonly string[]): readonly Note[] =>
  names.length === 0
    ? []
    : [
        {
          code: 'buildup.figuresAssumed',
          severity: 'assumed',
          data: { sheet: sheet.id, name: sheet.name, count: names.length, figures: names.join(', ') },
          source: sheet.generic ?? 'assumed',
        },
      ]

type Shelf = {
  readonly sheets: readonly ResolvedSheet[]
  readonly known: Known
  readonly grounds: Grounds
}

type Place = { readonly zone: ZoneArea; readonly below: readonly LayerItem[]; readonly next?: LayerItem }

function layerOn({ zone, below, next }: Place, layer: LayerItem, shelf: Shelf): readonly ZoneLayer[] {
  const sheet = sheetOf(layer, shelf)
  if (!sheet) return []
  const method = layer.method ?? defaultMethod(sheet)
  const thinner = thinnerFor(sheet, { method })
  const thinnerShare = given(layer.thinnerShare) ?? (thinner ? usualShare(thinner) : sheet.thinnerShare)
  const ownFilm = given(layer.dryFilm)
  const coverage = given(layer.coverage)
  const { coats } = layer
  const layerM2 = zone.areaM2 * (layer.coverShare?.value ?? 1)
  const ground = shelf.grounds[zone.id]
  const isFirstPaint = !fills(sheet.role) && below.every((one) => fills(roleOf(one, shelf)))
  const lossShare = given(layer.lossShare) ?? lossOf(method, shelf.known)
  const texture = textureOf(
    layer,
    {
      zone,
      below,
      roleOf: (one) => roleOf(one, shelf),
      isGroundOff: (ground?.patternOff ?? 'none') !== 'none',
    },
    shelf.known,
  )
  const dryFilmM = ownFilm ?? measuredFilm({ coverage, sheet, lossShare, texture }) ?? sheet.dryFilmM
  const spread = spreadOf({
    sheet,
    own: { ...(coverage ? { coverage } : {}), ...(ownFilm ? { dryFilm: ownFilm } : {}) },
    dryFilmM,
    lossShare,
    texture,
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
      areaM2: layerM2,
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
      ...(coats > 1 && wantsSanding(layer.sandBetween)
        ? { between: rungOf(layer.sandBetween, layerM2 * (coats - 1), shelf.known) }
        : {}),
      ladder: ladderOf(
        {
          // Spot filling is keyed where it goes, and nowhere else.
          areaM2: fills(sheet.role) ? layerM2 : zone.areaM2,
          filledM2: filledUnder(zone, below.at(-1), shelf),
          ground: isFirstPaint ? ground : undefined,
          sandBefore: layer.sandBefore ?? '',
        },
        shelf.known,
      ),
    },
  ]
}

/** A spread that was measured has what was lost and what texture ate in it: the rest is on the wall. */
function measuredFilm(of: {
  readonly coverage: Sure<number> | undefined
  readonly sheet: ResolvedSheet
  readonly lossShare: Sure<number>
  readonly texture: Sure<number>
}): Sure<number> | undefined {
  const { coverage, sheet, lossShare, texture } = of
  if (!coverage || !sheet.volumeSolids) return undefined
  return filmAtSpread((coverage.value * texture.value) / (1 - lossShare.value), sheet.volumeSolids)
}

const wantsSanding = (grit: string | undefined): grit is string =>
  grit !== undefined && grit !== '' && grit !== 'none'

const sheetOf = (layer: LayerItem, { sheets }: Shelf): ResolvedSheet | undefined =>
  sheets.find((one) => one.id === layer.sheet)

const roleOf = (layer: LayerItem, shelf: Shelf): string => sheetOf(layer, shelf)?.role ?? ''

/** m² of filler that the layer lies on. */
const filledUnder = (zone: ZoneArea, layer: LayerItem | undefined, shelf: Shelf): number =>
  layer && fills(roleOf(layer, shelf)) ? zone.areaM2 * (layer.coverShare?.value ?? 1) : 0

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
  const share = (grit: string | undefined) => (wantsSanding(grit) ? (sanded?.value ?? 0) : 0)
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

function layerNotes(
  layer: ZoneLayer,
  sheets: readonly ResolvedSheet[],
  { known, vocRules }: Pick<BuildUpsInput, 'known' | 'vocRules'>,
): readonly Note[] {
  const sheet = sheets.find((one) => one.id === layer.sheet)
  const about = { zone: layer.zone, layer: layer.layer, name: layer.name }
  const noSpread: readonly Note[] =
    layer.spreadFrom === 'nothing' ? [{ code: 'buildup.noSpread', severity: 'fault', data: about }] : []
  return [
    ...noSpread,
    ...scratchNotes(layer, sheet, known),
    ...(sheet ? thinnerNotes(layer, sheet) : []),
    ...(sheet ? solventNotes(layer, sheet, { limits: known.vocLimits, rules: vocRules }) : []),
  ]
}
