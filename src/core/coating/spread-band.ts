/** How far a paint may go: from solids, film and loss as they range, and from what the surface takes. */
import { practicalSpread, spreadingRate } from './film.ts'

export type Range = readonly [least: number, most: number]

/**
 * Smallest and largest practical spread.
 * @param paint.volumeSolids share. @param paint.dryFilm m. @param paint.loss share of the paint.
 * @param paint.texture how many times the paint of a smooth surface is eaten.
 * @returns m²/m³.
 */
export function spreadBand(paint: {
  readonly volumeSolids: Range
  readonly dryFilm: Range
  readonly loss: Range
  readonly texture: number
}): Range {
  const at = (solids: number, film: number, loss: number) =>
    practicalSpread({ theoretical: spreadingRate({ volumeSolids: solids, dryFilm: film }), loss }) /
    paint.texture
  return [
    at(paint.volumeSolids[0], paint.dryFilm[1], paint.loss[1]),
    at(paint.volumeSolids[1], paint.dryFilm[0], paint.loss[0]),
  ]
}

/**
 * How many times the paint of a smooth surface a layer eats on average, when its first coats lie on what was there and
 * the later ones on its own bead.
 * @param layer.under texture of what it lies on, 1 for smooth. @param layer.own texture it leaves, 1 without bead.
 */
export const meanTexture = (layer: {
  readonly coats: number
  readonly under: number
  readonly own: number
}): number => (layer.under + (layer.coats - 1) * Math.max(layer.under, layer.own)) / layer.coats

/**
 * What is left of a film of several coats.
 * @param film.dryFilm m a coat. @param film.between share of a coat that sanding takes off before the next one.
 * @param film.after share of the last coat that is sanded off before the next layer.
 * @returns m.
 */
export const filmLeft = (film: {
  readonly dryFilm: number
  readonly coats: number
  readonly between: number
  readonly after: number
}): number => film.dryFilm * (film.coats - (film.coats - 1) * film.between - film.after)
