/** Film and spread: how far a paint goes and how thick it must be laid. Thinner is a share of the paint's own volume. */

/**
 * Theoretical spreading rate of unthinned paint.
 * @param paint.volumeSolids share 0..1. @param paint.dryFilm m.
 * @returns m²/m³ (1000 m²/m³ is 1 m²/L).
 * Equation: VS / DFT; in US units 1604 VS / mil ft²/gal.
 * Source: MIL-HDBK-1110 section 2.1.5 (which rounds 1604 to 1600).
 */
export function spreadingRate(paint: { readonly volumeSolids: number; readonly dryFilm: number }): number {
  return paint.volumeSolids / paint.dryFilm
}

/**
 * Spreading rate after what stays in the tray, on the roller, in the air and in the roughness.
 * @param spread.theoretical m²/m³. @param spread.loss share 0..1 of the paint (see `lossBands`).
 * @returns m²/m³. Equation: theoretical (1 - loss). Source: public coating glossary.
 */
export function practicalSpread(spread: { readonly theoretical: number; readonly loss: number }): number {
  return spread.theoretical * (1 - spread.loss)
}

/**
 * Spread from a can label, the first figure most people have.
 * @param label.area m² a coat. @param label.volume m³ as in the can.
 * @returns m²/m³, taken as the label gives it: makers' labels mean one coat of unthinned paint.
 */
export function spreadFromCoverage(label: { readonly area: number; readonly volume: number }): number {
  return label.area / label.volume
}

/**
 * Volume solids left after thinning.
 * @param paint.volumeSolids share 0..1. @param paint.thinnerShare thinner by volume of paint, 0 for none.
 * @returns share. Equation: VS / (1 + t). Source: MIL-HDBK-1110 section 2.1.5.
 */
export function solidsAfterThinning(paint: {
  readonly volumeSolids: number
  readonly thinnerShare: number
}): number {
  return paint.volumeSolids / (1 + paint.thinnerShare)
}

/**
 * Wet film that dries to the wanted dry film.
 * @param paint.dryFilm m. @param paint.volumeSolids share of the unthinned paint. @param paint.thinnerShare
 * thinner by volume of paint.
 * @returns m. Equation: DFT (1 + t) / VS. Source: MIL-HDBK-1110 section 2.1.5.
 */
export function wetFilm(paint: {
  readonly dryFilm: number
  readonly volumeSolids: number
  readonly thinnerShare: number
}): number {
  return paint.dryFilm / solidsAfterThinning(paint)
}

/**
 * Dry film that a measured wet film leaves.
 * @param paint.wetFilm m. @param paint.volumeSolids share of the unthinned paint. @param paint.thinnerShare
 * thinner by volume of paint.
 * @returns m. Equation: WFT VS / (1 + t). Source: MIL-HDBK-1110, section 2.1.5 and procedure 13.
 */
export function dryFilm(paint: {
  readonly wetFilm: number
  readonly volumeSolids: number
  readonly thinnerShare: number
}): number {
  return paint.wetFilm * solidsAfterThinning(paint)
}

/**
 * Mean wet film at the wall when paint is spread at a rate.
 * @param paint.spread m² by m³ of unthinned paint. @param paint.thinnerShare thinner by volume of paint.
 * @returns m. Equation: (1 + t) / spread.
 */
export function wetFilmFromSpread(paint: { readonly spread: number; readonly thinnerShare: number }): number {
  return (1 + paint.thinnerShare) / paint.spread
}

/**
 * Mean dry film from the paint that went onto an area by weight.
 * @param paint.mass kg of unthinned paint. @param paint.density kg/m³. @param paint.volumeSolids share.
 * @param paint.area m².
 * @returns m. Equation: mass VS / (density area). Source: published estimating note, 2007, whose form in grams
 * multiplies by 453.6 where it must divide.
 */
export function dryFilmFromMass(paint: {
  readonly mass: number
  readonly density: number
  readonly volumeSolids: number
  readonly area: number
}): number {
  return (paint.mass * paint.volumeSolids) / (paint.density * paint.area)
}
