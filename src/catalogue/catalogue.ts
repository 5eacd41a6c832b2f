/** The whole catalogue as one frozen value: the plan takes it as an argument and its hash stands on papers. */
import { type AbrasiveFields, type AbrasiveId, abrasives } from './abrasives.ts'
import type {
  BondFields,
  GuessFields,
  HidingFields,
  OrderFields,
  PracticeFields,
  StripFields,
} from './bond-fields.ts'
import { bonds, coatPractice, hidings, oldCoatings, strips, workOrder } from './bonds.ts'
import { type ConsumableFields, type ConsumableId, consumables } from './consumables.ts'
import { type FinishFields, type FinishStandard, finishStandards } from './finish-standards.ts'
import { type GritPurpose, gritLadder, type LadderFields } from './grit-ladder.ts'
import type { Hazard } from './hazard-type.ts'
import { hazards } from './hazards.ts'
import type { LimitFields } from './limit-fields.ts'
import { limits } from './limits.ts'
import type { RateFields } from './rate-fields.ts'
import { type RateId, rates } from './rates.ts'
import type { Row, Table } from './row.ts'
import type { SheetFields } from './sheet-row.ts'
import { type SheetId, sheets } from './sheets.ts'
import { type Solvent, solvents } from './solvents.ts'
import { standingCautions } from './standing-cautions.ts'
import { type VocFields, vocLimits } from './voc-limits.ts'

export type Catalogue = {
  /** Generic data sheets, keyed and read as the job's own sheets. */
  readonly sheets: Table<SheetFields, SheetId>
  readonly rates: Table<RateFields, RateId>
  readonly abrasives: Table<AbrasiveFields, AbrasiveId>
  readonly gritLadder: Table<LadderFields, GritPurpose>
  readonly consumables: Table<ConsumableFields, ConsumableId>
  /** One row: every limit and share of the shop. */
  readonly limits: Row<LimitFields>
  /** What bonds to what. */
  readonly bonds: Table<BondFields, string>
  /** What is done before what. */
  readonly workOrder: Table<OrderFields, string>
  readonly coatPractice: Table<PracticeFields, string>
  readonly hidings: Table<HidingFields, string>
  readonly strips: Table<StripFields, string>
  /** What an old coating may be that nobody has identified. */
  readonly oldCoatings: Table<GuessFields, string>
  /** What rules let a coating hold of solvent. */
  readonly vocLimits: Table<VocFields, string>
  readonly finishStandards: Table<FinishFields, FinishStandard>
  /** Brought by materials and work. */
  readonly hazards: readonly Hazard[]
  /** Brought by the boat, the place and the people. */
  readonly standingCautions: readonly Hazard[]
  readonly solvents: readonly Solvent[]
}

function freeze<T extends object>(value: T): T {
  for (const inner of Object.values(value)) if (typeof inner === 'object' && inner !== null) freeze(inner)
  return Object.freeze(value)
}

export const catalogue: Catalogue = freeze({
  sheets,
  rates,
  abrasives,
  gritLadder,
  consumables,
  limits,
  bonds,
  workOrder,
  coatPractice,
  hidings,
  strips,
  oldCoatings,
  vocLimits,
  finishStandards,
  hazards,
  standingCautions,
  solvents,
})
