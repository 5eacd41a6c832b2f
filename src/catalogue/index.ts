/**
 * The catalogue: what ships with the program so that a plan stands before anybody has read a can.
 * Every table is rows of cells as a person would write them (`50 µm`, `2:1`, `10C: 16h, 23C: 12h`), each cell
 * with its origin: `typical` when it was published, `assumed` when it is common practice without a source.
 * `catalogueFields` says how cells are read (sheets: `sheetFields` of the job). Nothing here is a maker's product.
 */
export { type AbrasiveFields, type AbrasiveId, abrasiveFields } from './abrasives.ts'
export { type Catalogue, catalogue } from './catalogue.ts'
export { catalogueFields } from './catalogue-fields.ts'
export { type CatalogueIds, catalogueIds } from './catalogue-ids.ts'
export { type ConsumableFields, type ConsumableId, consumableFields } from './consumables.ts'
export { type FinishFields, type FinishStandard, finishFields } from './finish-standards.ts'
export { genericSheets } from './generic-sheets.ts'
export { type GritPurpose, type LadderFields, ladderFields } from './grit-ladder.ts'
export {
  type Family,
  type Hazard,
  type HazardFlag,
  type HazardSeverity,
  hazardFlags,
  type Protection,
  protections,
} from './hazard-type.ts'
export { type LimitFields, limitFields } from './limit-fields.ts'
export { type MishapActs, mishapActs } from './mishap-acts.ts'
export { type MishapFields, mishapFields } from './mishap-fields.ts'
export { type MishapId, mishaps } from './mishaps.ts'
export { type Per, type RateFields, rateFields } from './rate-fields.ts'
export type { RateId } from './rates.ts'
export type { Origin, Row, RowCells, RowSources, Table } from './row.ts'
export type { SheetFields } from './sheet-row.ts'
export type { SheetId } from './sheets.ts'
export { type Failure, type Shortcut, type ShortcutId, shortcuts, temptingShortcuts } from './shortcuts.ts'
export { findSolvent, type LelFigure, type Solvent, type SolventFigure, solvents } from './solvents.ts'
