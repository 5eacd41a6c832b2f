/** Coatings: film, spread, mixing and catalyst. */

export { breaks, type Fault } from './bond/fault.ts'
export { hidingOf, practiceOf } from './bond/film-limits.ts'
export {
  type Bond,
  judgeBond,
  type Pair,
  type Preparation,
  type Said,
  type Wait,
} from './bond/joint.ts'
export { judge } from './bond/judge.ts'
export type { Branch, Joint, Judged } from './bond/judged.ts'
export { type Age, type Coat, fit, type Material, readSelectors, type Selector } from './bond/material.ts'
export { type OutOfOrder, outOfOrder } from './bond/order.ts'
export type {
  Act,
  BondBook,
  BondRule,
  CoatPractice,
  Grit,
  GuessRule,
  HidingRule,
  OrderRule,
  StripRule,
  Verdict,
  Where,
} from './bond/rule.ts'
export type { CoatClocks, Exposed, Sanding, Stack, StackLayer } from './bond/stack.ts'
export { type Cost, type Criterion, compareBy, criteria, type Worth } from './bond/suggest/cost.ts'
export { coatsOf, grants, type Offer, type Search, type Wish } from './bond/suggest/offer.ts'
export { isRefused, type Step } from './bond/suggest/step.ts'
export { type Miss, type Suggested, type Suggestion, suggest } from './bond/suggest/suggest.ts'
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
export { fillsScratches } from './ladder/grit-ladder.ts'
export { type LadderStart, rungsOf } from './ladder/rungs.ts'
export type { CoverageBand, LossBand, LossCause } from './loss-bands.ts'
export { brushCoverageBands, lossBands } from './loss-bands.ts'
export type { Mix, MixDensities, MixMasses, MixRatio, MixVolume } from './mix.ts'
export { mix, mixMasses } from './mix.ts'
export {
  type ChainedPour,
  type ChainInput,
  chainPours,
  type PotClock,
  poursNeeded,
  type Run,
  type Stretch,
  workingMinutes,
} from './pours/chain-pours.ts'
export { measuredParts, wholeShares } from './pours/measured-parts.ts'
export {
  airThatDoes,
  type Crew,
  type RunFault,
  type RunInput,
  type RunRemedies,
  runFault,
  runRemedies,
} from './pours/run-remedies.ts'
export { trayFillings } from './pours/tray-fillings.ts'
export type { Range } from './spread-band.ts'
export { filmLeft, meanTexture, spreadBand } from './spread-band.ts'
export type { VocPart } from './voc.ts'
export { mostThinner, vocBySolids, vocLessWater } from './voc.ts'
