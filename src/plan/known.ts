/** The catalogue's figures as plain numbers, each with how sure it is: what the stages reckon with. */
import type { BondBook, Grit } from '#core/coating'
import type { ConsumableRate } from '#core/stores'
import type { GenericSheet } from './sheets/resolve-sheet.ts'
import type { Seen, Sure, VocLimit } from './types.ts'

/** Sanding, by the number of the grit. */
export type GritRates = Readonly<Record<string, Sure<number>>>

export type Rates = {
  readonly surveyHours: Sure<number>
  readonly referenceHours: Sure<number>
  readonly fuelHours: Sure<number>
  readonly guardHoursEach: Sure<number>
  readonly washHoursPerM2: Sure<number>
  readonly sandHoursPerM2: GritRates
  readonly fillHoursPerM2: Sure<number>
  readonly pinholeHoursPerM2: Sure<number>
  readonly maskHoursPerM: Sure<number>
  readonly tapeOffHoursPerM: Sure<number>
  readonly strikeHoursPerM: Sure<number>
  readonly layOutHoursPerM: Sure<number>
  /** Square metres an hour of the clock, alone and in pairs. */
  readonly tipAloneM2PerH: Sure<number>
  readonly tipPairM2PerH: Sure<number>
  readonly rollHoursPerM2: Sure<number>
  readonly brushHoursPerM2: Sure<number>
  readonly coatSetUpHours: Sure<number>
  readonly coatCleanUpHours: Sure<number>
  readonly settleHours: Sure<number>
  readonly clearUpHours: Sure<number>
  readonly fittingHours: Sure<number>
  readonly refitFactor: Sure<number>
  readonly reachFactors: Readonly<Record<string, number>>
  readonly snagHours: Sure<number>
  readonly handoverHours: Sure<number>
  readonly sessionOpenHours: Sure<number>
  readonly sessionCloseHours: Sure<number>
}

/** Everything the stages take from the catalogue. */
export type Known = {
  readonly rates: Rates
  readonly sheets: ReadonlyMap<string, GenericSheet>
  /** What bonds to what. */
  readonly bonds: BondBook
  readonly grits: readonly Grit[]
  /** How many times finer the next grit of a ladder is, and grain over film, at most. */
  readonly gritStep: Sure<number>
  readonly gritOverFilm: Sure<number>
  /** What filler is cut with, what the grinder leaves where old pattern was, and the coarsest under a dark finish. */
  readonly usualGrits: { readonly fillerCut: string; readonly patternOff: string; readonly underDark: string }
  readonly lossByMethod: Readonly<Record<string, Seen>>
  /** How many times the paint of a smooth surface each texture takes. */
  readonly textures: { readonly grit: Sure<number>; readonly moulded: Sure<number> }
  /** Share of a coat that is sanded off again, by role; none where the role is not listed. */
  readonly sandedByRole: Readonly<Record<string, Sure<number>>>
  readonly vocLimits: readonly VocLimit[]
  readonly mixLeadMinutes: Sure<number>
  /** Filler: stirred so long, so much at a time of what takes peroxide and of what does not, spread within this share of its pot life. */
  readonly fillerLeadMinutes: Sure<number>
  readonly puttyCupM3: Sure<number>
  readonly fillerCupM3: Sure<number>
  readonly fillerPotShare: Sure<number>
  readonly runAloneMostM2: Sure<number>
  readonly trayPourM3: Seen
  /** How long a wet edge takes the next section, at 20 °C. */
  readonly wetEdgeMinutes: Sure<number>
  readonly stirAgainMinutes: Sure<number>
  /** Only over this margin to the dew point, and up to this humidity, a floor is damped against dust. */
  readonly wetFloorMarginK: Sure<number>
  readonly wetFloorHumidity: Sure<number>
  /** Width rolled before it is tipped, by two and by one. */
  readonly sectionM: Sure<number>
  readonly sectionAloneM: Sure<number>
  /** How far tipping goes back into the patch before. */
  readonly tipOverlapM: Sure<number>
  readonly reserveByRole: Readonly<Record<string, Sure<number>>>
  readonly touchUpM3: Sure<number>
  /** How long an opened hardener still goes on what is seen. */
  readonly hardenerOpenHours: Sure<number>
  readonly consumableRates: readonly ConsumableRate[]
  readonly consumableUnits: Readonly<Record<string, 'piece' | 'pair' | 'm' | 'L'>>
  /** `disc` stands for the disc of the step's grit. */
  readonly consumablesByKind: Readonly<Record<string, readonly string[]>>
  readonly consumablesByMethod: Readonly<Record<string, readonly string[]>>
  readonly consumablesByPersonDay: readonly string[]
  readonly consumablesByPour: readonly string[]
}
