/** The ids of every table: what a job may refer to, and what a wrong id is compared with. */
import { type Catalogue, catalogue } from './catalogue.ts'

const keysOf = <T extends object>(table: T): readonly (keyof T & string)[] =>
  Object.keys(table) as (keyof T & string)[]

export type CatalogueIds = {
  readonly sheets: readonly (keyof Catalogue['sheets'])[]
  readonly rates: readonly (keyof Catalogue['rates'])[]
  readonly abrasives: readonly (keyof Catalogue['abrasives'])[]
  readonly gritLadder: readonly (keyof Catalogue['gritLadder'])[]
  readonly consumables: readonly (keyof Catalogue['consumables'])[]
  /** What a price of a consumable may be for: those, and what goes into paint without being a product. */
  readonly priced: readonly string[]
  /** Cells of the one row of limits. */
  readonly limits: readonly string[]
  readonly finishStandards: readonly (keyof Catalogue['finishStandards'])[]
  /** Of hazards and standing cautions. */
  readonly hazards: readonly string[]
  readonly solvents: readonly string[]
}

/** Ids by table, in the order they are written. */
export const catalogueIds: CatalogueIds = {
  sheets: keysOf(catalogue.sheets),
  rates: keysOf(catalogue.rates),
  abrasives: keysOf(catalogue.abrasives),
  gritLadder: keysOf(catalogue.gritLadder),
  consumables: keysOf(catalogue.consumables),
  priced: [...keysOf(catalogue.consumables), 'thinner', 'bead', 'strewn-bead'],
  limits: keysOf(catalogue.limits.cells),
  finishStandards: keysOf(catalogue.finishStandards),
  hazards: [...catalogue.hazards, ...catalogue.standingCautions].map((row) => row.id),
  solvents: catalogue.solvents.map((row) => row.id),
}
