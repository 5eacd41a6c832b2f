/** How much paint is lost on its way to the surface: bands seen in print, not laws. */

export type LossCause =
  | 'brush-or-roller'
  | 'roller'
  | 'airless-spray'
  | 'conventional-spray'
  | 'rough-substrate'
  | 'uneven-film'
  | 'wind'
  | 'general'

export type LossBand = {
  readonly cause: LossCause
  /** Shares of the paint, 0..1. */
  readonly least: number
  readonly most: number
  readonly source: string
}

const spreadTable = 'public spreading-rate table'
const spreadPage = 'public spreading-rate page (weak)'
const thinningNote = 'public thinning and spreading note, 2022'

export const lossBands: readonly LossBand[] = [
  { cause: 'brush-or-roller', least: 0.1, most: 0.15, source: spreadTable },
  { cause: 'roller', least: 0.1, most: 0.2, source: spreadPage },
  { cause: 'airless-spray', least: 0.3, most: 0.3, source: spreadTable },
  { cause: 'airless-spray', least: 0.3, most: 0.4, source: spreadPage },
  { cause: 'conventional-spray', least: 0.5, most: 0.5, source: spreadTable },
  { cause: 'rough-substrate', least: 0.05, most: 0.2, source: spreadTable },
  { cause: 'uneven-film', least: 0.05, most: 0.1, source: spreadTable },
  { cause: 'wind', least: 0.05, most: 0.3, source: spreadTable },
  { cause: 'general', least: 0.1, most: 0.3, source: thinningNote },
]

/** Brush coverage of oil paint on sheet steel by coat, m²/m³: a check on whether a figure can be right at all. */
export type CoverageBand = { readonly coat: number; readonly least: number; readonly most: number }

/** 1 ft²/gal in m²/m³. */
const squareFeetAGallon = 0.09290304 / 0.003785411784

/** Source: US Army TM 43-0139, Table 3-2 (400-600, 500-600, 600-700 ft²/gal). */
export const brushCoverageBands: readonly CoverageBand[] = [
  { coat: 1, least: 400 * squareFeetAGallon, most: 600 * squareFeetAGallon },
  { coat: 2, least: 500 * squareFeetAGallon, most: 600 * squareFeetAGallon },
  { coat: 3, least: 600 * squareFeetAGallon, most: 700 * squareFeetAGallon },
]
