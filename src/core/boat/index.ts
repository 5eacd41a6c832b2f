/**
 * The hull as a surface, from a few sizes or from measured stations: zones, areas, lines and drawing outlines.
 * Boat frame: x forward from the aftmost point, y to port, z up from the floating waterline; metres and radians.
 */

export {
  type Attitude,
  type AttitudeFit,
  attitudeFrom,
  heightOverLevel,
  type LevelMark,
  type MarkResidual,
} from './attitude.ts'
export { areaBetween, type BandArea, type BandLimits, wettedArea } from './band-area.ts'
export { beyondSheer } from './deck/beyond-sheer.ts'
export { camberFactor } from './deck/camber.ts'
export type { DeckShapeInput } from './deck/deck-shape.ts'
export { type DeckTerms, type DeckZone, type DeckZoneResult, deckZone } from './deck/deck-zone.ts'
export { type DeckOffset, edgeOfOffsets } from './deck/offsets.ts'
export { deckShare } from './deck-share.ts'
export type { Facing } from './facing.ts'
export { camberFacings, type FacingShare, meshFacings, type Triangles } from './facings.ts'
export { areaFromGirths, type Girth, type GirthBand, girthBands } from './girth-area.ts'
export type { Height } from './height.ts'
export type { Hull, HullParticulars, Side } from './hull.ts'
export type { BootTop, BottomEdge, HullCuts } from './hull-cuts.ts'
export { hullFromSizes } from './hull-from-sizes.ts'
export { type HullResult, hullFromStations } from './hull-from-stations.ts'
export {
  type HullMesh,
  hullMesh,
  type MeshAsked,
  type MeshLine,
  type MeshLineKind,
  type MeshZone,
} from './hull-mesh.ts'
export type { Bilge, HullSizes } from './hull-sizes.ts'
export { type HullZone, type HullZoneKind, type HullZones, hullZones, type ZoneFace } from './hull-zones.ts'
export {
  type GirthFrom,
  type HeightLine,
  type HeightMark,
  lineAtHeight,
  type MarksAsked,
  marksAtHeight,
} from './line-at-height.ts'
export { type BodySection, type HullOutline, hullOutline, type Line2, type LinesView } from './outline.ts'
export { compareHullWithRules, ruleSizesOf } from './rule-sizes.ts'
export {
  compareWithRules,
  type RuleArea,
  type RuleCheck,
  type RuleComparison,
  type RuleSizes,
  type RuleZone,
  rulesOfThumb,
  type WorkedAreas,
} from './rules-of-thumb.ts'
export {
  type HullFromScan,
  hullFromScan,
  type ScanAnswers,
  type ScanCheck,
  type ScanHullResult,
} from './scan/hull-from-scan.ts'
export { isTwin, type Laying, layScan } from './scan/lay-scan.ts'
export { type PreparedScan, prepareScan } from './scan/prepare-scan.ts'
export type { ScanFit, ScanMark, ScanResidual } from './scan/scan-frame.ts'
export { guessUnit, metresIn, type ScanUnit, type UnitGuess } from './scan/scan-scale.ts'
export type { ScanSides } from './scan/scan-section.ts'
export type { Knuckle, Station, StationPoint } from './station.ts'
export type { StripEdge } from './station-strips.ts'
export { type Stripe, stripeArea } from './stripe-area.ts'
export { rakeOutline, rakeTransom } from './transom-rake.ts'
export type { ZoneEdge, ZoneEdgeKind } from './zone-edges.ts'
