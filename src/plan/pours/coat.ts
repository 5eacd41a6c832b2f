/** One coat on one zone with all its pours depend on: its runs, its crew, its air and the clocks of its product. */
import { type PotClock, type Run, type RunFault, runFault } from '#core/coating'
import { hoursAt } from '#core/cure'
import { type AirAt, type Placed, wholeSlots } from '#core/schedule'
import type { Work } from '#job'
import type { AirOf } from '../air-at.ts'
import { weakest } from '../certainty.ts'
import type { Known } from '../known.ts'
import type {
  AirHours,
  BuildUps,
  ClockName,
  Days,
  LayingOff,
  Pour,
  Quantities,
  ResolvedSheet,
  Steps,
  WorkStep,
} from '../types.ts'
import { cupMinutes, type FillerCup, fillerCup } from './filler-cup.ts'
import type { Runs, ZoneRun } from './runs.ts'
import { type SunnySide, sunnySide } from './sunny-side.ts'
import { floorAt } from './wet-floor.ts'

export type PoursInput = {
  readonly steps: Steps
  readonly days: Days
  readonly buildUps: BuildUps
  readonly quantities: Quantities
  readonly runs: Runs
  readonly airOf: AirOf
  readonly place: Work['place']
  readonly air: readonly AirHours[]
  readonly known: Known
}

/** What is looked up for every coat. */
export type Shelf = Pick<PoursInput, 'known' | 'runs' | 'airOf' | 'place' | 'air'> & {
  readonly placed: ReadonlyMap<string, Placed>
  readonly sheets: ReadonlyMap<string, ResolvedSheet>
  readonly layers: ReadonlyMap<string, BuildUps['layers'][number]>
  readonly quantities: ReadonlyMap<string, Quantities['layers'][number]>
  readonly filled: ReadonlyMap<string, Quantities['filled'][number]>
}

export const shelfOf = ({
  known,
  runs,
  airOf,
  place,
  air,
  days,
  buildUps,
  quantities,
}: PoursInput): Shelf => ({
  known,
  runs,
  airOf,
  place,
  air,
  placed: new Map(days.placed.map((one) => [one.step, one])),
  sheets: new Map(buildUps.sheets.map((sheet) => [sheet.id, sheet])),
  layers: new Map(buildUps.layers.map((layer) => [layer.id, layer])),
  quantities: new Map(quantities.layers.map((quantity) => [quantity.id, quantity])),
  filled: new Map(quantities.filled.map((one) => [one.finding, one])),
})

/** A run of this coat, broken where a lap hides when it has to be. */
export type CoatRun = Run & Pick<ZoneRun, 'where' | 'lengthM'>

export type Coat = {
  readonly step: WorkStep
  readonly sheet: ResolvedSheet
  readonly mixedM3: number
  readonly thinnerShare: number
  readonly additiveShare: number
  readonly crew: number
  readonly startMinute: number
  /** m² in a minute. */
  readonly pace: number
  readonly leadMinutes: number
  readonly runs: readonly CoatRun[]
  /** A lap would show: it is tipped off, and has to be laid wet into wet. */
  readonly shows: boolean
  readonly airAt: AirAt
  readonly potAt: (minute: number) => PotClock
  readonly wetEdgeAt: (minute: number) => number
  readonly sunny: SunnySide
  readonly floorAt: (minute: number) => LayingOff['floor']
  readonly certainty: Pour['certainty']
  /** Filler, mixed cup by cup. */
  readonly cup?: FillerCup
}

export function coatOf(shelf: Shelf, step: WorkStep, placed: Placed): Coat | undefined {
  const sheet = shelf.sheets.get(step.sheet ?? '')
  const amount = sheet && amountOf(shelf, step)
  if (!amount) return undefined
  const { known } = shelf
  const crew = placed.pieces[0]?.people.length ?? 1
  const airAt = shelf.airOf(step.air)
  const startMinute = placed.startMinute + wholeSlots(step.setUpMinutes)
  const cup = fillerCup(sheet, step.coat === undefined, known)
  const bare: Coat = {
    step,
    sheet,
    mixedM3: amount.mixedM3,
    thinnerShare: amount.thinnerShare,
    additiveShare: amount.additiveShare,
    crew,
    startMinute,
    pace: (step.areaM2 ?? 0) / workMinutesOf(step, crew),
    leadMinutes: cup?.leadMinutes ?? known.mixLeadMinutes.value,
    runs: [],
    shows: step.method === 'roll and tip',
    airAt,
    potAt: (minute) => potIn(sheet, airAt(Math.floor(minute / 60))),
    floorAt: (minute) =>
      floorAt(
        shelf.air.find(({ key }) => key === step.air),
        { minute, known },
      ),
    sunny: sunnySide(shelf.place, startMinute),
    wetEdgeAt: (minute) => wetEdge(known.wetEdgeMinutes.value, airAt(Math.floor(minute / 60))),
    certainty: weakest(amount.certainty, sheet.clocks.potLife?.certainty),
    ...(cup ? { cup } : {}),
  }
  if (step.coat === undefined) return bare
  const whole: readonly ZoneRun[] = [{ where: 'whole', share: 1, lapPlaces: 0 }]
  const runs = (shelf.runs[step.zone ?? ''] ?? whole).flatMap((run) => broken(bare, run, known))
  return { ...bare, runs: shadeFirst(runs, bare.sunny) }
}

type Amount = Pick<Coat, 'mixedM3' | 'thinnerShare' | 'additiveShare' | 'certainty'>

/** What a coat takes, or what fills a repair; nothing for other work. */
function amountOf(shelf: Shelf, step: WorkStep): Amount | undefined {
  const filled = step.kind === 'fill-repair' ? shelf.filled.get(step.subject ?? '') : undefined
  if (filled)
    return { mixedM3: filled.volumeM3, thinnerShare: 0, additiveShare: 0, certainty: filled.certainty }
  const zoneLayer = `${step.zone}:${step.layer}`
  const layer = shelf.layers.get(zoneLayer)
  const quantity = shelf.quantities.get(zoneLayer)
  if (step.coat === undefined || !layer || !quantity || !((step.areaM2 ?? 0) > 0)) return undefined
  return {
    mixedM3: quantity.mixedPerCoatM3,
    thinnerShare: layer.thinnerShare.value,
    additiveShare: layer.additiveShare,
    certainty: quantity.certainty,
  }
}

/** The side out of the sun first; what has no side keeps its place behind. */
const shadeFirst = (runs: readonly CoatRun[], sunny: SunnySide): readonly CoatRun[] =>
  sunny === 'neither' || sunny === 'unknown'
    ? runs
    : [...runs].sort((a, b) => Number(a.where === sunny) - Number(b.where === sunny))

/** As a whole where it can be laid so; else broken where a lap hides, in as few pieces as will do. */
function broken(coat: Coat, { where, share, lengthM, lapPlaces }: ZoneRun, known: Known): readonly CoatRun[] {
  const areaM2 = share * (coat.step.areaM2 ?? 0)
  // The places lie about evenly: between two of them lies one stretch of so many.
  const stretches = lapPlaces + 1
  const piece = (count: number): CoatRun => ({
    where,
    area: (areaM2 * count) / stretches,
    ...(lengthM === undefined ? {} : { lengthM: (lengthM * count) / stretches }),
  })
  for (let of = 1; of < stretches; of++) {
    const pieces = evenly(stretches, of).map(piece)
    if (pieces.every((run) => faultOf(coat, run, known) === undefined)) return pieces
  }
  return evenly(stretches, stretches).map(piece)
}

/** So many parts of whole numbers that differ by one at most, the larger first. */
const evenly = (all: number, of: number): readonly number[] =>
  Array.from({ length: of }, (_, at) => Math.floor(all / of) + (at < all % of ? 1 : 0))

function workMinutesOf(step: WorkStep, crew: number): number {
  const pace = step.paces.filter((one) => one.crew <= crew).at(-1)
  return pace ? pace.personMinutes / pace.crew : 1
}

/** Induction is a wait, pot life a limit: each is read to its own safe side. */
function minutesAt(sheet: ResolvedSheet, clock: ClockName, airC: number): number | undefined {
  const table = sheet.clocks[clock]?.value
  if (!table) return undefined
  const { hours } = hoursAt(table, airC, clock === 'potLife' ? 'most' : 'least')
  return Number.isFinite(hours) ? hours * 60 : table[0]!.hours * 60
}

/** A pot at a temperature; a one-part has no end: the tray is topped up as it empties. */
export const potIn = (sheet: ResolvedSheet, airC: number): PotClock => ({
  induction: minutesAt(sheet, 'induction', airC) ?? 0,
  life: minutesAt(sheet, 'potLife', airC) ?? Number.POSITIVE_INFINITY,
})

/** COMMON PRACTICE: what dries by solvent and cure alike halves for each 10 °C, as pot lives do. */
const wetEdge = (minutesAt20: number, airC: number): number => minutesAt20 * 2 ** ((20 - airC) / 10)

/** A run as the sums of the coating room take it. */
export const asked = (coat: Coat, { area }: Pick<CoatRun, 'area'>, start: number) => ({
  area,
  start,
  lead: coat.leadMinutes,
  wetEdge: coat.shows ? coat.wetEdgeAt(start) : Number.POSITIVE_INFINITY,
  leastWork: coat.shows ? coat.leadMinutes : 0,
  potAt: coat.potAt,
})

/** Two lay while one of them mixes; one alone has to stop, and a wide run dries behind him. */
export const crewOf = (coat: Coat, known: Known) => ({
  people: coat.crew,
  pace: coat.pace,
  break: coat.crew > 1 ? 0 : coat.leadMinutes,
  most: coat.shows && coat.crew === 1 ? known.runAloneMostM2.value : Number.POSITIVE_INFINITY,
})

/** Filler has no edge to keep wet: any number of cups will do, if one of them gives time at all. */
export function faultOf(coat: Coat, run: CoatRun, known: Known): RunFault | undefined {
  if (coat.cup) return cupMinutes(coat.cup, coat.potAt(coat.startMinute)) > 0 ? undefined : 'pot'
  return runFault(asked(coat, run, coat.startMinute), crewOf(coat, known))
}
