/** Coatings: film, spread, mixing and catalyst. */

export type { Catalyst } from './catalyst.ts'
export { catalyst } from './catalyst.ts'
export {
  dryFilm,
  dryFilmFromMass,
  practicalSpread,
  solidsAfterThinning,
  spreadFromCoverage,
  spreadingRate,
  wetFilm,
  wetFilmFromSpread,
} from './film.ts'
export type { CoverageBand, LossBand, LossCause } from './loss-bands.ts'
export { brushCoverageBands, lossBands } from './loss-bands.ts'
export type { Mix, MixDensities, MixMasses, MixRatio, MixVolume } from './mix.ts'
export { mix, mixMasses } from './mix.ts'
