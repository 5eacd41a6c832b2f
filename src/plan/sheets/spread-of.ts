/** How far a product goes on a layer: by one's own measure, by its label, or by solids and film less what is lost. */
import { practicalSpread, type Range, spreadBand, spreadingRate } from '#core/coating'
import type { Known } from '../known.ts'
import type { ResolvedSheet, Seen, Sure, ZoneLayer } from '../types.ts'

export type SpreadOf = {
  readonly sheet: ResolvedSheet
  /** What the layer itself says. */
  readonly own: { readonly coverage?: Sure<number>; readonly dryFilm?: Sure<number> }
  readonly dryFilmM: Seen | undefined
  readonly lossShare: Seen
  readonly texture: Sure<number>
}

export type LayerSpread = Pick<
  ZoneLayer,
  'spreadM2PerM3' | 'spreadFrom' | 'spreadBand' | 'lossShare' | 'texture'
>

const smooth: Sure<number> = { value: 1, certainty: 'worked' }
const lossless: Sure<number> = { value: 0, certainty: 'worked' }

/**
 * How far a cubic metre of mixed paint goes. A spread the person measured comes first and has losses and texture in
 * it; then the coverage as printed on their own sheet, which is for a smooth surface; then solids over film, less what
 * stays in roller, tray and pot.
 */
export function spreadOf(of: SpreadOf): LayerSpread {
  const { own, sheet, dryFilmM, lossShare, texture } = of
  if (own.coverage)
    return { spreadM2PerM3: own.coverage, spreadFrom: 'own measure', lossShare: lossless, texture: smooth }
  const band = bandOf(of)
  const printed = sheet.coverageM2PerM3
  if (printed && (printed.certainty === 'sheet' || !(dryFilmM && sheet.volumeSolids)) && !own.dryFilm)
    return {
      spreadM2PerM3: { ...printed, value: printed.value / texture.value },
      spreadFrom: 'coverage',
      lossShare: lossless,
      texture,
      ...band,
    }
  if (!dryFilmM || !sheet.volumeSolids) return { spreadFrom: 'nothing', lossShare, texture }
  const theoretical = spreadingRate({ volumeSolids: sheet.volumeSolids.value, dryFilm: dryFilmM.value })
  const value = practicalSpread({ theoretical, loss: lossShare.value }) / texture.value
  return {
    spreadM2PerM3: { value, certainty: 'worked' },
    spreadFrom: 'solids and film',
    lossShare,
    texture,
    ...band,
  }
}

const rangeOf = ({ value, seen }: Seen): Range => seen ?? [value, value]

/** As solids, film and loss range where the generic sheet stands in; a printed coverage lies in it or widens it. */
function bandOf({ sheet, dryFilmM, lossShare, texture }: SpreadOf): Pick<ZoneLayer, 'spreadBand'> {
  const loss = rangeOf(lossShare)
  const printed = sheet.coverageM2PerM3 && sheet.coverageM2PerM3.value / texture.value
  const bands: Range[] = printed === undefined ? [] : [[printed * (1 - loss[1]), printed]]
  if (sheet.volumeSolids && dryFilmM)
    bands.push(
      spreadBand({
        volumeSolids: rangeOf(sheet.volumeSolids),
        dryFilm: rangeOf(dryFilmM),
        loss,
        texture: texture.value,
      }),
    )
  if (bands.length === 0) return {}
  return {
    spreadBand: [Math.min(...bands.map(([least]) => least)), Math.max(...bands.map(([, most]) => most))],
  }
}

/** How far a product goes as its sheet has it, put on as is usual for its role on a smooth surface. */
export function usualSpread(sheet: ResolvedSheet, known: Known): Sure<number> | undefined {
  const lossShare = lossOf(defaultMethod(sheet), known)
  return spreadOf({ own: {}, sheet, dryFilmM: sheet.dryFilmM, lossShare, texture: smooth }).spreadM2PerM3
}

export const defaultMethod = ({ role }: Pick<ResolvedSheet, 'role'>): string =>
  ({ finish: 'roll and tip', filler: 'filler knife', fairing: 'filler knife' })[role] ?? 'roller'

export const lossOf = (method: string, known: Known): Seen =>
  known.lossByMethod[method] ?? { value: 0, certainty: 'assumed' }
