/** How litres came about: area by coats over spread, the spread from solids and film or as printed, and the pours of it. */
import { wholeShares } from '#core/coating'
import type { LayerQuantity, Pour, Repair, ResolvedSheet, ZoneLayer } from '../types.ts'
import { areaPart } from './area-ways.ts'
import { counted, limitPart, sheetOf, sheetPart, type Told, workCell, zoneOf } from './told.ts'
import {
  given,
  minus,
  number,
  over,
  type Part,
  type PourPart,
  plus,
  type Term,
  times,
  up,
  type Way,
  wayOf,
  worked,
} from './way.ts'

const layerOf = (told: Told, id: string): ZoneLayer | undefined =>
  told.plan.buildUps.layers.find((layer) => layer.id === id)

const itemOf = (told: Told, { layer }: ZoneLayer) => told.work.layers.find(({ id }) => id === layer)

const cellOf = ({ layer }: ZoneLayer, key: string) => workCell('layers', layer, key)

/** What one layer takes on one zone. */
export function layerLitres(told: Told, quantity: LayerQuantity): Part {
  const layer = layerOf(told, quantity.id)
  const sheet = sheetOf(told, quantity.sheet)
  const zone = zoneOf(told, quantity.zone)
  const base = {
    name: 'layerLitres',
    of: [layer?.name, zone?.name].filter((name) => name !== undefined).join(', '),
    key: 'volumeM3',
    certainty: quantity.certainty,
  }
  if (!layer || !sheet || !zone) return given({ ...base, value: quantity.mixedM3 })
  const coats = counted('coats', layer.coats, { at: cellOf(layer, 'coats') })
  return worked(base, over(times(...coveredArea(told, layer), coats), spreadPart(told, layer, sheet)))
}

/** The area of the zone, and the share of it that is covered where that is not all. */
function coveredArea(told: Told, layer: ZoneLayer): readonly Term[] {
  const zone = zoneOf(told, layer.zone)!
  const share = itemOf(told, layer)?.coverShare
  return [
    areaPart(told, zone),
    ...(share
      ? [
          given({
            name: 'coverShare',
            key: 'share',
            value: share.value,
            certainty: share.certainty,
            at: cellOf(layer, 'coverShare'),
          }),
        ]
      : []),
  ]
}

function spreadPart(told: Told, layer: ZoneLayer, sheet: ResolvedSheet): Part {
  const spread = layer.spreadM2PerM3!
  const base = { name: 'spread', of: layer.name, key: 'spreadM2PerM3', certainty: spread.certainty }
  if (layer.spreadFrom === 'own measure')
    return given({ ...base, value: spread.value, at: cellOf(layer, 'coverage') })
  const rough = layer.texture.value > 1
  if (layer.spreadFrom === 'coverage' || !sheet.volumeSolids) {
    const value = spread.value * layer.texture.value
    const printed = sheetPart(told, sheet, 'coverage', { ...base, name: 'coverage', value })
    return rough ? worked(base, over(printed, texturePart(told, layer))) : { ...printed, name: base.name }
  }
  return worked(
    base,
    over(
      times(solidsPart(told, sheet), minus(number(1), lossPart(told, layer))),
      rough ? times(filmPart(told, layer, sheet), texturePart(told, layer)) : filmPart(told, layer, sheet),
    ),
  )
}

/** By the catalogue's figure for what it lies on; the mean of its coats where only the later ones lie on bead. */
const texturePart = (told: Told, { texture }: ZoneLayer): Part =>
  limitPart(told, texture.certainty === 'assumed' ? 'textureMoulded' : 'textureGrit', {
    name: 'texture',
    key: 'factor',
    value: texture.value,
  })

const solidsPart = (told: Told, sheet: ResolvedSheet): Part =>
  sheetPart(told, sheet, 'volumeSolids', { name: 'solids', key: 'share', ...sheet.volumeSolids! })

const lossLimits: Readonly<Record<string, 'lossKnife' | 'lossBrush'>> = {
  'filler knife': 'lossKnife',
  brush: 'lossBrush',
}

function lossPart(told: Told, layer: ZoneLayer): Part {
  const part = { name: 'loss', key: 'share', value: layer.lossShare.value, at: cellOf(layer, 'lossShare') }
  if (itemOf(told, layer)?.lossShare) return given({ ...part, certainty: layer.lossShare.certainty })
  return limitPart(told, lossLimits[layer.method] ?? 'lossRoller', part)
}

/** The film as the layer says, else as the sheet does. */
function filmPart(told: Told, layer: ZoneLayer, sheet: ResolvedSheet): Part {
  const film = layer.dryFilmM!
  const part = { name: 'dryFilm', key: 'filmM', value: film.value, certainty: film.certainty }
  return itemOf(told, layer)?.dryFilm
    ? given({ ...part, at: cellOf(layer, 'dryFilm') })
    : sheetPart(told, sheet, 'dryFilm', part)
}

function thinnerPart(told: Told, layer: ZoneLayer, sheet: ResolvedSheet): Part {
  const part = { name: 'thinnerShare', key: 'share', ...layer.thinnerShare }
  return itemOf(told, layer)?.thinnerShare
    ? given({ ...part, at: cellOf(layer, 'thinnerShare') })
    : sheetPart(told, sheet, 'thinnerShare', part)
}

/** A film is set, not worked out; what follows from it is the wet film to check with a comb. */
export function layerFilmWay(
  told: Told,
  ref: { readonly layer: string; readonly zone: string },
): Way | undefined {
  const layer = layerOf(told, `${ref.zone}:${ref.layer}`)
  const sheet = layer && sheetOf(told, layer.sheet)
  if (!layer?.dryFilmM || !sheet) return undefined
  const film = filmPart(told, layer, sheet)
  if (!sheet.volumeSolids) return wayOf(film, { parts: [film] })
  const thinned = plus(number(1), thinnerPart(told, layer, sheet))
  const wet = worked(
    { name: 'wetFilm', of: layer.name, key: 'filmM', certainty: 'worked' },
    over(times(film, thinned), solidsPart(told, sheet)),
  )
  return wayOf(film, { parts: [film, wet], how: { code: 'way.filmSet' } })
}

export function zoneLitresWay(told: Told, zone: string): Way | undefined {
  const own = told.plan.quantities.layers.filter((layer) => layer.zone === zone)
  return own.length === 0 ? undefined : wayOf(litresOf(told, own, zoneOf(told, zone)?.name))
}

export function layerLitresWay(
  told: Told,
  ref: { readonly layer: string; readonly zones: readonly string[] },
): Way | undefined {
  const own = told.plan.quantities.layers.filter(
    (layer) => layer.layer === ref.layer && ref.zones.includes(layer.zone),
  )
  if (own.length === 0) return undefined
  const [only] = own
  return wayOf(
    own.length === 1 ? layerLitres(told, only!) : litresOf(told, own, layerOf(told, only!.id)?.name),
  )
}

function litresOf(told: Told, layers: readonly LayerQuantity[], of: string | undefined): Part {
  const parts = layers.map((layer) => layerLitres(told, layer))
  return worked(
    {
      name: 'litres',
      ...(of === undefined ? {} : { of }),
      key: 'volumeM3',
      certainty: weakestOf(parts),
    },
    plus(...parts),
  )
}

const order = ['worked', 'measured', 'sheet', 'typical', 'assumed'] as const

export const weakestOf = (parts: readonly Part[]): Part['certainty'] =>
  order[Math.max(0, ...parts.map(({ certainty }) => order.indexOf(certainty)))] ?? 'worked'

/** What fills a repair, as it is written down. */
export const repairLitres = (told: Told, repair: Repair): Part =>
  given({
    name: 'repairLitres',
    of: repair.name,
    key: 'volumeM3',
    value: repair.volumeM3,
    certainty: told.work.findings.find(({ id }) => id === repair.finding)?.volume?.certainty ?? 'assumed',
    at: workCell('findings', repair.finding, 'volume'),
  })

/** One part of one cup: what its area takes of mixed paint, by the ratio; the card has it as the cup measures it. */
export function pourWay(
  told: Told,
  ref: { readonly step: string; readonly nr: number; readonly of: PourPart },
): Way | undefined {
  const pour = told.plan.pours.pours.find(({ step, nr }) => step === ref.step && nr === ref.nr)
  const sheet = pour && sheetOf(told, pour.sheet)
  const step = told.plan.steps.steps.find(({ id }) => id === ref.step)
  if (!pour || !sheet || !step) return undefined
  const base = { name: ref.of, of: sheet.name, key: 'volumeM3', certainty: pour.certainty }
  const layer = layerOf(told, `${step.zone}:${step.layer}`)
  const exact = mixedPart(told, { pour, layer, sheet, finding: step.subject })
  if (!exact || (!layer && (ref.of === 'thinner' || ref.of === 'additive'))) return undefined
  const mixed = measured(exact, sheet)
  if (layer && ref.of === 'thinner') return wayOf(worked(base, times(mixed, thinnerPart(told, layer, sheet))))
  if (layer && ref.of === 'additive') {
    const additive = given({
      name: 'additiveShare',
      key: 'share',
      value: layer.additiveShare,
      certainty: itemOf(told, layer)?.additive?.certainty ?? 'assumed',
      at: cellOf(layer, 'additive'),
    })
    const ready = plus(number(1), thinnerPart(told, layer, sheet))
    return wayOf(worked(base, times(mixed, ready, additive)))
  }
  const [a = 1, b = 0] = sheet.mix.value.map((value, at) =>
    sheetPart(told, sheet, 'mix', {
      name: at === 0 ? 'partsA' : 'partsB',
      key: 'parts',
      value,
      certainty: sheet.mix.certainty,
    }),
  )
  if (typeof a === 'number' || typeof b === 'number') return wayOf(worked(base, mixed))
  return wayOf(worked(base, over(times(mixed, ref.of === 'base' ? a : b), plus(a, b))))
}

/** A cup is filled up to the next whole share of its ratio. */
function measured(exact: Part, { mix }: ResolvedSheet): Term {
  const [base = 1, hardener = 0] = mix.value
  const shares = hardener > 0 ? wholeShares(base / hardener) : undefined
  return shares ? up(exact, (shares.base + shares.hardener) * 1e-6) : exact
}

type Poured = {
  readonly pour: Pour
  readonly sheet: ResolvedSheet
  readonly layer: ZoneLayer | undefined
  readonly finding: string | undefined
}

/** What goes in one cup: by area on a zone, by what fills it in a repair. */
function mixedPart(told: Told, { pour, layer, sheet, finding }: Poured): Part | undefined {
  const all = layer ? laidPart(told, { pour, layer, sheet }) : filledPart(told, finding)
  if (!all) return undefined
  const base = { name: 'mixed', of: layer?.name ?? sheet.name, key: 'volumeM3', certainty: pour.certainty }
  if (pour.times === 1) return worked(base, all)
  return worked(base, over(all, counted('cups', pour.times)))
}

function laidPart(
  told: Told,
  { pour, layer, sheet }: { readonly pour: Pour; readonly layer: ZoneLayer; readonly sheet: ResolvedSheet },
): Term {
  const area = given({ name: 'pourArea', key: 'areaM2', value: pour.areaM2, certainty: 'worked' })
  return over(pour.of === 1 ? times(...coveredArea(told, layer)) : area, spreadPart(told, layer, sheet))
}

function filledPart(told: Told, finding: string | undefined): Part | undefined {
  const repair = told.plan.repairs.repairs.find((one) => one.finding === finding)
  return repair && repairLitres(told, repair)
}
