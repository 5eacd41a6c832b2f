/** The road a job travels: from the document to days, stores, money and cautions. */

export { limitNote, readingFadesHours, skinLimits } from '#core/climate'
export {
  type SuggestInput,
  type Suggestions,
  suggestBuildUps,
  type ToldMiss,
  type ZoneSuggestions,
} from './bonds/suggest-for.ts'
export { weakest } from './certainty.ts'
export { hasDeckShape } from './deck-shapes.ts'
export { describeMadeHour, heatCaution } from './describe-made-hour.ts'
export { describeStep, type StepText } from './describe-step.ts'
export { type BehindSpread, type HourOrigin, type HourSpread, originOf } from './horizon/behind-spread.ts'
export { type LikeDays, likeDaysOf, likeDaysOfWork } from './horizon/like-days.ts'
export { lampsOver } from './hours-light.ts'
export { judgedFromM } from './judged-from.ts'
export { type Asked as HoursAsked, hourMaker, type MadeHour } from './make-hour.ts'
export { createPlanner, type PlanInput, type Planned, type Planner, plan } from './plan.ts'
export { describeLaying } from './pours/describe-laying.ts'
export { coverOf, coverTells, describeCover, describeHandling } from './pours/describe-pour.ts'
export { type MixAmounts, type MixPart, mixAmounts, partKey } from './pours/mix-amounts.ts'
export { bondBook } from './read-bonds.ts'
export type { TraceEntry } from './remember.ts'
export type { Box, Laying, Point3, ScanAnswers, ScanSides, ScanUnit, Station } from './scan.ts'
export {
  type LaidScan,
  laidScan,
  metresIn,
  type OpenedScan,
  openScan,
  type Pick3,
  pickOnScan,
  type ScanHull,
  type ScanOutline,
  type ScanView,
  type SeenScan,
  scanHull,
} from './scan.ts'
export { COVERS_FROM } from './sheets/covers-from.ts'
export { type SandingRow, sandingRows } from './sheets/sanding-rows.ts'
export { type Solid, type SolidFace, solidOf } from './solid.ts'
export { hashOf, shortHash } from './stamp.ts'
export { tellWay } from './tell-way.ts'
export type * from './types.ts'
export type { TellInput } from './ways/index.ts'
export type { CellAt, FigureRef, Part as WayPart, Term, Way } from './ways/way.ts'
export { partsIn, valueIn } from './ways/way.ts'
export { type LitPlace, type WeatherAtHand, weatherAtHand } from './weather-at-hand.ts'
export { type CoatWindow, coatWindows } from './windows.ts'
