/** How well the wind takes heat off a skin. */

export type Film = {
  /** In still air, W/(m² K). */
  readonly stillWm2K: number
  /** More for every metre a second of wind. */
  readonly perMps: number
  /** Never less than this: warm air rises off a hot skin also without wind, W/(m² K). */
  readonly leastWm2K: number
}

/**
 * 2.8 + 3.0 v. Source: J. H. Watmuff, W. W. S. Charters and D. Proctor, COMPLES 2 (1977) 56, from memory; walls of
 * houses were measured at 6 to 10 W/(m² K) in 0 to 4 m/s (J. D. Jayamaha and others, 1996). The least, 5 W/(m² K), is
 * assumed: that of 0 to 2 m/s in ASTM E1980.
 */
export const usualFilm: Film = { stillWm2K: 2.8, perMps: 3, leastWm2K: 5 }

/**
 * Film coefficient in a wind, W/(m² K).
 * @param windMps NaN (unknown) counts as calm, which makes a skin warmer by day and colder by night.
 */
export function filmAt({ stillWm2K, perMps, leastWm2K }: Film, windMps: number): number {
  const film = stillWm2K + perMps * windMps
  return film > leastWm2K ? film : leastWm2K
}
