/** How much of each product the layers and the repairs take, at the spread of each layer. */
import { mix } from '#core/coating'
import type { Note } from '#core/note'
import { weakest } from './certainty.ts'
import type { Stage } from './remember.ts'
import type {
  BuildUps,
  LayerQuantity,
  Quantities,
  Repairs,
  ResolvedSheet,
  SheetQuantity,
  ZoneLayer,
} from './types.ts'

export type QuantitiesInput = { readonly buildUps: BuildUps; readonly repairs: Repairs }

export const quantities: Stage<QuantitiesInput, Quantities> = { name: 'quantities', run: takeOff }

function takeOff({ buildUps, repairs }: QuantitiesInput): Quantities {
  const layers = buildUps.layers.flatMap((layer) => {
    const sheet = buildUps.sheets.find((one) => one.id === layer.sheet)
    return sheet && layer.spreadM2PerM3 ? [layerQuantity(layer, sheet)] : []
  })
  const sheets = buildUps.sheets.flatMap((sheet) => sheetQuantity(sheet, layers, repairs))
  const unspecified = repairs.repairs.filter((repair) => repair.sheet === undefined && repair.volumeM3 === 0)
  const notes: readonly Note[] =
    unspecified.length === 0
      ? []
      : [
          {
            code: 'quantities.repairsWithoutMaterial',
            severity: 'missing',
            data: { count: unspecified.length },
          },
        ]
  const filled = repairs.repairs.flatMap(({ finding, sheet, volumeM3, certainty }) =>
    sheet !== undefined && volumeM3 > 0 ? [{ finding, volumeM3, certainty }] : [],
  )
  return { layers, filled, sheets, notes }
}

/** Mixed paint is area over spread; thinner is a share of it and comes on top. */
function layerQuantity(layer: ZoneLayer, sheet: ResolvedSheet): LayerQuantity {
  const spread = layer.spreadM2PerM3!
  const mixedPerCoatM3 = layer.areaM2 / spread.value
  const mixedM3 = mixedPerCoatM3 * layer.coats
  const poured = pourOf({
    mixedM3,
    sheet,
    thinnerShare: layer.thinnerShare.value,
    additiveShare: layer.additiveShare,
  })
  return {
    id: layer.id,
    layer: layer.layer,
    zone: layer.zone,
    sheet: layer.sheet,
    coats: layer.coats,
    areaM2: layer.areaM2,
    mixedPerCoatM3,
    mixedM3,
    thinnerM3: poured.thinnerVolume,
    additiveM3: poured.additiveVolume,
    broadcastKg: layer.broadcastKgPerM2 * layer.areaM2 * layer.coats,
    certainty: weakest(spread.certainty, layer.dryFilmM?.certainty, layer.lossShare.certainty),
  }
}

/** A pour of mixed paint split into its parts; a one-part has no hardener. */
export function pourOf(pour: {
  readonly mixedM3: number
  readonly sheet: ResolvedSheet
  readonly thinnerShare: number
  readonly additiveShare: number
}) {
  const [base = 1, hardener = 0] = pour.sheet.mix.value
  return mix({
    partsVolume: pour.mixedM3,
    ratio: { base, hardener },
    thinnerShare: pour.thinnerShare,
    additiveShare: pour.additiveShare,
  })
}

function sheetQuantity(
  sheet: ResolvedSheet,
  layers: readonly LayerQuantity[],
  repairs: Repairs,
): readonly SheetQuantity[] {
  const own = layers.filter((layer) => layer.sheet === sheet.id)
  const fixed = repairs.repairs.filter((repair) => repair.sheet === sheet.id)
  const repairsM3 = fixed.reduce((sum, repair) => sum + repair.volumeM3, 0)
  const mixedM3 = own.reduce((sum, layer) => sum + layer.mixedM3, repairsM3)
  if (mixedM3 === 0) return []
  const [base = 1, hardener = 0] = sheet.mix.value
  return [
    {
      sheet: sheet.id,
      mixedM3,
      partsM3: [base, hardener]
        .slice(0, hardener > 0 ? 2 : 1)
        .map((part) => (mixedM3 * part) / (base + hardener)),
      thinnerM3: own.reduce((sum, layer) => sum + layer.thinnerM3, 0),
      additiveM3: own.reduce((sum, layer) => sum + layer.additiveM3, 0),
      repairsM3,
      certainty: weakest(...own.map((layer) => layer.certainty), ...fixed.map((repair) => repair.certainty)),
    },
  ]
}
