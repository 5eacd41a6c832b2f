/** Peroxide catalyst for polyester, vinylester and gelcoat: weighed first, measured second. */

export type Catalyst = {
  /** kg. */
  readonly mass: number
  /** m³ at the density given. */
  readonly volume: number
}

/**
 * Catalyst for a mass of resin.
 * @param batch.resinMass kg. @param batch.share catalyst by mass of resin (0.01..0.02 is usual; the maker's
 * limits rule). @param batch.density kg/m³ of the catalyst solution (1000 in some guides, 1100 to 1200 for
 * solutions, from memory).
 * @returns kg and m³. Cold is never made up for with more catalyst.
 */
export function catalyst(batch: {
  readonly resinMass: number
  readonly share: number
  readonly density: number
}): Catalyst {
  const mass = batch.resinMass * batch.share
  return { mass, volume: mass / batch.density }
}
