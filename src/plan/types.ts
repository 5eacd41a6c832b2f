/** What each stage of the road leaves behind. SI throughout, unless a key names another unit. */

import type { DeckTerms, Hull, HullOutline, RuleComparison } from '#core/boat'
import type { FailingLimit } from '#core/climate'
import type { Judged } from '#core/coating'
import type { CureTable, RecoatWindows } from '#core/cure'
import type { StripeTable, TapeLineTable } from '#core/marking'
import type { Certainty, Note } from '#core/note'
import type { Placed, Step, Unplaced, Verdict } from '#core/schedule'

/** A value and how sure it is. */
export type Sure<T> = { readonly value: T; readonly certainty: Certainty }

/** A figure with the smallest and largest that its source shows, where it stands for a kind of product. */
export type Seen = Sure<number> & { readonly seen?: readonly [number, number] }

/** What a rule lets a kind of coating hold of solvent, kg/m³ as put on and less water. */
export type VocLimit = {
  readonly rules: string
  readonly what: string
  readonly limit: number
  readonly source: string
}

export type ZoneArea = {
  readonly id: string
  readonly name: string
  readonly kind: string
  readonly side: 'port' | 'starboard' | 'both'
  readonly areaM2: number
  /** Edge to mask. */
  readonly perimeterM: number
  readonly certainty: Certainty
  readonly how: 'surface' | 'girths' | 'shape' | 'given' | 'length and width' | 'marks' | 'share'
  /** Hidden by pads and taken off already. */
  readonly padsM2?: number
  /** Of a boot-top on the surface: its lowest place over the floating waterline. */
  readonly lowestM?: number
  readonly existing: string
  readonly texture: string
  /** A loose part is done indoors, whatever the sky does. */
  readonly indoors: boolean
}

/** A deck zone measured by its corners, its offsets, or its sides and what stands on them. */
export type DeckShape = {
  readonly zone: string
  readonly how: 'shape' | 'length and width'
  readonly areaM2: number
  readonly perimeterM: number
  readonly certainty: Certainty
  /** What the area was put together from. */
  readonly terms: DeckTerms
  /** As seen from above, boat frame; empty where nobody said where it lies. */
  readonly edges: readonly Outline2[]
  readonly openings: readonly Outline2[]
}
export type Deck = { readonly shapes: readonly DeckShape[]; readonly notes: readonly Note[] }
export type Outline2 = readonly (readonly [x: number, y: number])[]

/** A place where a stand pad or a keel block hides the hull. */
export type Pad = {
  readonly id: string
  readonly name: string
  readonly hides: 'bottom' | 'topsides'
  readonly side: 'port' | 'starboard' | 'both'
  readonly count: number
  readonly eachM2: number
  readonly areaM2: number
  readonly certainty: Certainty
}

/** The zones that have an area, as the stages after them see them. */
export type Surfaces = {
  readonly zones: readonly ZoneArea[]
  readonly pads: readonly Pad[]
  readonly notes: readonly Note[]
}

/** With the hull they were measured on, for drawings and the boat's own view. */
export type Boat = Surfaces & {
  readonly hull?: Hull
  readonly outline?: HullOutline
  readonly shapes: readonly DeckShape[]
  readonly rules: readonly RuleComparison[]
}

/** How sure the numbers of one row of a stripe are. */
export type RowSure = { readonly lower: Certainty; readonly upper: Certainty; readonly girth: Certainty }

export type StripeMark = {
  readonly kind: 'stripe'
  readonly id: string
  readonly name: string
  readonly zone: string
  readonly table: StripeTable
  /** Of each row: what a guess moves is dotted. */
  readonly sure: readonly RowSure[]
}
/** A single line, the upper edge of the zone it names. */
export type LineMark = {
  readonly kind: 'line'
  readonly id: string
  readonly name: string
  readonly zone: string
  readonly table: TapeLineTable
  readonly certainty: Certainty
}
export type PanelMark = {
  readonly kind: 'panel'
  readonly id: string
  readonly name: string
  readonly zone: string
  readonly count: number
  readonly panelAreaM2: number
  readonly perimeterM: number
  readonly lengthM: number
  readonly widthM: number
  readonly borderM: number
  readonly cornerRadiusM: number
  readonly certainty: Certainty
}
export type Marks = {
  readonly stripes: readonly StripeMark[]
  readonly lines: readonly LineMark[]
  readonly panels: readonly PanelMark[]
  readonly zones: readonly ZoneArea[]
  /** Length of fine-line tape, every edge once. */
  readonly tapeM: number
  readonly notes: readonly Note[]
}

/** A stripe's edges over the level plane the boat was measured from, side by side. */
export type StripeOverFloor = {
  readonly mark: string
  readonly rows: readonly {
    readonly xM: number
    readonly portLowerM: number
    readonly portUpperM: number
    readonly starboardLowerM: number
    readonly starboardUpperM: number
  }[]
}
/** How the boat stands; without `fit` nobody has measured enough. */
export type Standing = {
  readonly fit?: {
    /** Bow up, and port side up, are positive. */
    readonly trimRad: number
    readonly heelRad: number
    /** Of the waterline at the aftmost point. */
    readonly heightM: number
    /** Root mean square of what the marks miss. */
    readonly rmsM: number
    readonly over: 'floor' | 'laser'
    readonly marks: readonly { readonly mark: string; readonly residualM: number }[]
    readonly certainty: Certainty
    readonly date?: string
    readonly stripes: readonly StripeOverFloor[]
  }
  readonly notes: readonly Note[]
}

export type Repair = {
  readonly finding: string
  readonly zone: string
  readonly kind: string
  readonly name: string
  readonly count: number
  readonly hours: number
  readonly sheet?: string
  readonly volumeM3: number
  /** Diameter of a hole or length of a crack, and what it covers, where somebody measured them. */
  readonly sizeM?: number
  readonly areaM2?: number
  /** Middle of it in the boat frame, as far as it was written down. */
  readonly at?: { readonly xM?: number; readonly yM?: number; readonly heightM?: number }
  readonly place: string
  readonly photo: string
  readonly certainty: Certainty
}
export type FittingPlan = {
  readonly fitting: string
  readonly zone: string
  readonly name: string
  readonly count: number
  readonly plan: 'refit' | 'remove' | 'leave'
  readonly leaveAlone: boolean
  readonly hoursOff: Sure<number>
  readonly hoursOn: Sure<number>
  readonly reach: string
  /** Holes it leaves, all pieces. */
  readonly holes: number
  readonly maskM: number
  readonly place: string
  readonly photo: string
  readonly bag: string
  readonly bedding: string
}
export type Repairs = {
  readonly repairs: readonly Repair[]
  readonly fittings: readonly FittingPlan[]
  readonly notes: readonly Note[]
}

export type ClockName =
  | 'induction'
  | 'potLife'
  | 'touchDry'
  | 'dryToDew'
  | 'recoatLeast'
  | 'recoatMost'
  | 'dryToSand'
  | 'dryToTape'
  | 'dryToTread'
  | 'dryToFit'
  | 'dryToSling'
  | 'dryToCover'
  | 'fullCure'

/** Recoat windows for what goes on: `anything`, `itself`, or a family. */
export type Recoat = { readonly next: string; readonly windows: RecoatWindows }

/** A thinner by grade: shares of the mixed paint, for an air and a way of putting it on. */
export type Thinner = {
  readonly name: string
  readonly method: string
  readonly airFromC: number
  readonly airUntilC: number
  readonly least: number
  readonly most: number
}

/** A product with every figure the plan needs, each as sure as where it came from. */
export type ResolvedSheet = {
  readonly id: string
  readonly name: string
  readonly family: string
  readonly role: string
  readonly colour: string
  readonly shade: string
  readonly generic?: string
  readonly mix: Sure<readonly number[]>
  readonly volumeSolids?: Seen
  readonly dryFilmM?: Seen
  readonly coverageM2PerM3?: Sure<number>
  readonly thinnerShare: Sure<number>
  readonly thinnerMost?: Sure<number>
  readonly densityA?: Sure<number>
  readonly densityB?: Sure<number>
  readonly densityThinner?: Sure<number>
  readonly clocks: Readonly<Partial<Record<ClockName, Sure<CureTable>>>>
  readonly airLeastC: Sure<number>
  readonly airMostC: Sure<number>
  /** Of the surface itself; absent where neither sheet tells them. */
  readonly skinLeastC?: Sure<number>
  readonly skinMostC?: Sure<number>
  readonly humidityMost: Sure<number>
  readonly dewMarginK: Sure<number>
  readonly flashPointC?: Sure<number>
  readonly vocKgPerM3?: Sure<number>
  readonly openedLifeH?: Sure<number>
  readonly shelfLifeH?: Sure<number>
  readonly recoat: readonly Recoat[]
  readonly thinners: readonly Thinner[]
  readonly isocyanate: boolean
}

/** One layer on one zone. */
export type ZoneLayer = {
  readonly id: string
  readonly layer: string
  readonly zone: string
  readonly sheet: string
  readonly name: string
  readonly role: string
  readonly method: string
  readonly coats: number
  readonly areaM2: number
  readonly dryFilmM?: Sure<number>
  readonly wetFilmM?: Sure<number>
  readonly thinnerShare: Sure<number>
  readonly additiveShare: number
  readonly lossShare: Sure<number>
  /** Mixed paint without thinner: square metres a cubic metre covers, losses counted. */
  readonly spreadM2PerM3?: Sure<number>
  readonly spreadFrom: 'own measure' | 'coverage' | 'solids and film' | 'nothing'
  /** Between which the spread may lie, as solids, film and losses range; none for one's own measure. */
  readonly spreadBand?: readonly [number, number]
  /** How many times the paint of a smooth surface it takes; counted in the spread. */
  readonly texture: Sure<number>
  /** Dry film of all coats after sanding. */
  readonly filmLeftM?: Sure<number>
  /** Bead strewn on each coat. */
  readonly broadcastKgPerM2: number
  /** Solvent in it as put on, thinner counted, less water. */
  readonly vocKgPerM3?: Sure<number>
  readonly sandBefore: string
  readonly sandBetween: string
  /** Of all the times that it is sanded between its coats. */
  readonly between?: LadderRung
  /** What the surface below is sanded with, one after the other; the last is `sandBefore`, over all of it. */
  readonly ladder: readonly LadderRung[]
}
/** One grit of a ladder, what of the zone it goes over, and what a square metre takes. */
export type LadderRung = {
  readonly grit: string
  readonly areaM2: number
  /** Person-hours. */
  readonly hoursPerM2: Sure<number>
  readonly disc: LadderDisc
}
export type LadderDisc = { readonly id: string; readonly perM2: number }
export type BuildUps = {
  readonly sheets: readonly ResolvedSheet[]
  /** By zone as in the document, from the boat outward. */
  readonly layers: readonly ZoneLayer[]
  readonly notes: readonly Note[]
}

/** Zones that are the same to the judge, with what he says of them. */
export type BondStack = Judged & {
  readonly zones: readonly string[]
  readonly existing: string
  /** Its faults as notes, the breaking ones first. */
  readonly notes: readonly Note[]
}
export type Bonds = { readonly stacks: readonly BondStack[]; readonly notes: readonly Note[] }

export type LayerQuantity = {
  readonly id: string
  readonly layer: string
  readonly zone: string
  readonly sheet: string
  readonly coats: number
  readonly areaM2: number
  /** Mixed parts, no thinner, for one coat and for all. */
  readonly mixedPerCoatM3: number
  readonly mixedM3: number
  readonly thinnerM3: number
  readonly additiveM3: number
  readonly broadcastKg: number
  readonly certainty: Certainty
}
export type SheetQuantity = {
  readonly sheet: string
  readonly mixedM3: number
  readonly partsM3: readonly number[]
  readonly thinnerM3: number
  readonly additiveM3: number
  readonly repairsM3: number
  readonly certainty: Certainty
}
/** What fills a repair, mixed. */
export type FilledQuantity = {
  readonly finding: string
  readonly volumeM3: number
  readonly certainty: Certainty
}

export type Quantities = {
  readonly filled: readonly FilledQuantity[]
  readonly layers: readonly LayerQuantity[]
  readonly sheets: readonly SheetQuantity[]
  readonly notes: readonly Note[]
}

export type Hazard = {
  readonly id: string
  readonly code: string
  readonly severity: 'notice' | 'caution' | 'warning' | 'danger'
  readonly data: Note['data']
  readonly protection: readonly string[]
  readonly source: string
  /** Products that bring it. */
  readonly sheets: readonly string[]
  /** Kinds of step that bring it, on these zones. */
  readonly kinds: readonly string[]
  readonly zones: readonly string[] | 'any'
  /** It holds for the whole job. */
  readonly job: boolean
}
export type Hazards = { readonly hazards: readonly Hazard[]; readonly notes: readonly Note[] }

/** A step as the schedule sees it, and what a person needs to know of it. */
export type WorkStep = Step & {
  readonly phase: number
  readonly zone?: string
  readonly layer?: string
  readonly coat?: number
  readonly coats?: number
  readonly sheet?: string
  readonly subject?: string
  readonly areaM2?: number
  readonly lengthM?: number
  /** Tape that is pulled when the coat is on. */
  readonly tapeOffM?: number
  readonly grit?: string
  /** All grits one after the other where it takes more than one. */
  readonly rungs?: readonly LadderRung[]
  readonly method?: string
  /** Person-hours at the smallest crew. */
  readonly hours: number
  readonly certainty: Certainty
  readonly hazards: readonly string[]
}
export type Steps = { readonly steps: readonly WorkStep[]; readonly notes: readonly Note[] }

/** Parts of a boat that stands in the open: each looks its own way, and has its own skin. */
export type OpenPlace = 'deck' | 'port' | 'starboard' | 'sides' | 'transom' | 'bottom'

/** `boat` where a roof or a cloth makes all of it alike, and for what is asked of the boat as a whole. */
export type SkinPlace = 'boat' | 'indoors' | OpenPlace

/** Hours of one kind of place for one product. */
export type ZoneHours = {
  readonly key: string
  readonly sheet: string
  readonly place: SkinPlace
  readonly firstMinute: number
  /** How long dew and rain must stay off after a coat of each hour; one figure when it is the same for all. */
  readonly hoursAfter: readonly number[]
  /** The warmest skin under this product, °C, where its colour takes in more of the sun than the light one of the place. */
  readonly warmestC?: readonly number[]
  readonly verdicts: readonly Verdict[]
  readonly failing: readonly (readonly FailingLimit[])[]
  /**
   * On how many of the 21 days of the typical year about its date each hour would be a go; NaN before the horizon. Absent
   * where no hour is of a typical year.
   */
  readonly goOnDays?: readonly number[]
}
export type AirHours = {
  readonly key: string
  readonly shelter: string
  readonly firstMinute: number
  readonly airC: readonly number[]
  readonly humidityShare: readonly number[]
  readonly surfaceC: readonly number[]
  readonly dewC: readonly number[]
  /** The warmer of two sides; only where `surfaceC` is the colder of them. */
  readonly warmestC?: readonly number[]
}
/** Rain and wind in the open, hour by hour; a column that the weather does not have is empty, an unknown hour NaN. */
export type SkyHours = {
  readonly firstMinute: number
  readonly rainMm: readonly number[]
  readonly rainChanceShare: readonly number[]
  readonly windMps: readonly number[]
  /** Where it comes from, clockwise from true north. */
  readonly windFromRad: readonly number[]
}
/** Where the hours of a forecast end and those of a typical year begin; between them it goes over into the other. */
export type Horizon = {
  /** Start of the first hour that is not wholly of the forecast. */
  readonly forecastUntilMinute: number
  /** Start of the first hour that is wholly of the typical year. */
  readonly typicalFromMinute: number
}

export type Conditions = {
  readonly zones: readonly ZoneHours[]
  readonly air: readonly AirHours[]
  /** Absent without any weather. */
  readonly sky?: SkyHours
  /** Absent where no hour is of a typical year. */
  readonly horizon?: Horizon
  readonly firstMinute: number
  readonly lastMinute: number
  readonly notes: readonly Note[]
}

export type DayPiece = {
  readonly step: string
  readonly startMinute: number
  readonly endMinute: number
  readonly people: readonly string[]
  readonly part: number
  readonly parts: number
}
export type Day = {
  /** Local date, YYYY-MM-DD, and ISO weekday. */
  readonly date: string
  readonly weekday: number
  readonly startMinute: number
  readonly endMinute: number
  readonly people: readonly { readonly person: string; readonly minutes: number }[]
  readonly pieces: readonly DayPiece[]
}
export type Days = {
  readonly placed: readonly Placed[]
  readonly unplaced: readonly Unplaced[]
  readonly days: readonly Day[]
  readonly startMinute: number
  /** End of the last work, and when slings may touch; absent when something could not be placed. */
  readonly workEndMinute?: number
  readonly launchMinute?: number
  readonly sessions: number
  readonly sessionMinutes: number
  readonly timeZone: string
  readonly notes: readonly Note[]
}

/** Where a run of wet film lies; `piece` is one of several alike. */
export type RunPlace = 'whole' | 'port' | 'starboard' | 'stern' | 'bow' | 'piece'
/** What one pour covers of a run: from one place where a lap hides to the next. */
export type PourRun = {
  readonly nr: number
  readonly of: number
  readonly where: RunPlace
  readonly areaM2: number
  /** Of the whole run. */
  readonly runM2: number
}
/** How a pour is laid off: section by section, against the edge that dries. */
export type LayingOff = {
  readonly crew: number
  /** Along its runs; left out where the surface does not tell how long they are. */
  readonly sections?: { readonly count: number; readonly widthM: number; readonly minutes: number }
  /** How long the edge takes the next section; only where a lap shows. */
  readonly edgeMinutes?: number
  readonly sunny: 'port' | 'starboard' | 'neither' | 'unknown'
  /** How far the brush goes back into the patch before. */
  readonly overlapM: number
  /** Whether the floor may be damped against dust: damp air and a thin margin over dew forbid it. */
  readonly floor: 'damp' | 'dry' | 'unknown'
}
export type Pour = {
  readonly step: string
  readonly zone: string
  readonly sheet: string
  readonly nr: number
  readonly of: number
  /** The same cup so many times, one after the other: filler is mixed as it is spread. */
  readonly times: number
  /** How often, where the time it takes is known. */
  readonly everyMinutes?: number
  readonly areaM2: number
  readonly runs: readonly PourRun[]
  readonly laying: LayingOff
  /** It is laid wet into the pour before it, in the middle of a run. */
  readonly intoWet: boolean
  /** Of one cup, in whole millilitres, or tenths where a part is a few drops: what stands here adds up. */
  readonly readyM3: number
  readonly partsM3: readonly number[]
  readonly thinnerM3: number
  readonly additiveM3: number
  readonly partsKg?: readonly number[]
  readonly thinnerKg?: number
  /** The grade of thinner that suits the air of its hour, where the sheet tells grades. */
  readonly thinnerGrade?: string
  /** Each filling of the tray. */
  readonly trayM3: readonly number[]
  /** Bead sinks: it is stirred again so often. */
  readonly stirMinutes?: number
  readonly airC: number
  readonly mixAtMinute: number
  readonly useFromMinute: number
  readonly useUntilMinute?: number
  readonly certainty: Certainty
}
export type Pours = { readonly pours: readonly Pour[]; readonly notes: readonly Note[] }

export type StorePack = {
  readonly pack: string
  readonly volumeM3: number
  readonly count: number
  /** Empty where nobody said. */
  readonly shop: string
  readonly priceCoins?: number
}
export type StoreItem = {
  readonly sheet: string
  readonly name: string
  readonly colour: string
  readonly needM3: number
  readonly reserveM3: number
  /** Still to be bought, bought for this job already, and taken from what was there before. */
  readonly buy: readonly StorePack[]
  readonly bought: readonly StorePack[]
  readonly fromStock: readonly StorePack[]
  /** Not covered, since no pack is known. */
  readonly shortM3: number
  readonly leftoverM3: number
  /** The same of each part: a kit that does not hold the ratio leaves more of one. */
  readonly leftoverPartsM3: readonly number[]
  /** Person-hours that running short on the largest zone would cost. */
  readonly shortSide?: { readonly zone: string; readonly hours: number }
  readonly certainty: Certainty
}
export type ConsumableItem = {
  readonly id: string
  /** The product it goes with, when it goes with one. */
  readonly sheet?: string
  readonly amount: number
  readonly unit: 'piece' | 'pair' | 'm' | 'L' | 'kg'
  readonly certainty: Certainty
}
export type Stores = {
  readonly items: readonly StoreItem[]
  readonly consumables: readonly ConsumableItem[]
  readonly notes: readonly Note[]
}

export type MoneyLine = {
  readonly id: string
  readonly group: 'labour' | 'materials' | 'consumables' | 'costs' | 'changes'
  /** What it is for: a role, a product, a consumable, or the name a person gave. */
  readonly subject: string
  readonly quantity: number
  readonly unit: 'h' | 'pack' | 'piece' | 'pair' | 'm' | 'L' | 'kg' | 'sum'
  readonly unitCoins?: number
  readonly coins?: number
}
export type ChangeOrder = {
  readonly id: string
  readonly name: string
  readonly found: string
  readonly zone?: string
  readonly photo: string
  readonly date: string
  readonly hours: number
  readonly hourlyCoins?: number
  readonly labourCoins: number
  readonly materialsCoins: number
  readonly sheet?: string
  readonly volumeM3: number
  readonly netCoins: number
  readonly taxCoins: number
  readonly totalCoins: number
  readonly complete: boolean
  /** Working days it adds at the hours the crew has in a week. */
  readonly days: number
}
export type Estimate = {
  readonly currency: string
  readonly lines: readonly MoneyLine[]
  readonly subtotals: Readonly<Record<MoneyLine['group'], number>>
  readonly marginCoins: number
  readonly netCoins: number
  readonly taxCoins: number
  readonly totalCoins: number
  readonly depositCoins: number
  readonly complete: boolean
  readonly marginShare: number
  readonly taxShare: number
  readonly depositShare: number
  /** Total the owner signed for, and when. */
  readonly signedCoins?: number
  readonly signedDate?: string
  readonly quoteNumber: string
  readonly validDays: number
  readonly exclusions: string
  readonly unitPrices: readonly { readonly name: string; readonly per: string; readonly coins: number }[]
  readonly changes: readonly ChangeOrder[]
  readonly notes: readonly Note[]
}

export type Caution = {
  readonly code: string
  readonly severity: 'notice' | 'caution' | 'warning' | 'danger'
  readonly data: Note['data']
  readonly protection: readonly string[]
  readonly source: string
  /** Steps it stands before; empty: it stands over the whole job. */
  readonly steps: readonly string[]
}
export type Cautions = { readonly cautions: readonly Caution[] }

/** What a result was made from; on every paper. */
export type Stamp = {
  readonly app: string
  readonly work: string
  readonly money?: string
  readonly log: string
  readonly weather?: string
  /** The typical year for what the weather does not reach. */
  readonly typical?: string
  readonly catalogue: string
  readonly nowMs: number
  readonly seed: number
}

export type Plan = {
  readonly stamp: Stamp
  readonly surfaces: Boat
  readonly marks: Marks
  readonly standing: Standing
  readonly repairs: Repairs
  readonly buildUps: BuildUps
  readonly bonds: Bonds
  readonly quantities: Quantities
  readonly hazards: Hazards
  readonly steps: Steps
  readonly conditions: Conditions
  readonly days: Days
  readonly pours: Pours
  readonly stores: Stores
  readonly money?: Estimate
  readonly cautions: Cautions
  /** Every note of every stage, worst first. */
  readonly notes: readonly Note[]
}
