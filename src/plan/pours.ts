/** Each coat as pours: how much to mix, when, and until when it can be used, at the temperature of its hour. */
import { mixMasses } from '#core/coating'
import { hoursAt } from '#core/cure'
import type { Note } from '#core/note'
import { type AirAt, type Placed, wholeSlots } from '#core/schedule'
import type { AirOf } from './air-at.ts'
import { weakest } from './certainty.ts'
import type { Known } from './known.ts'
import { pourOf } from './quantities.ts'
import type { Stage } from './remember.ts'
import type {
  BuildUps,
  ClockName,
  Days,
  Pour,
  Pours,
  Quantities,
  ResolvedSheet,
  Steps,
  WorkStep,
} from './types.ts'

export type PoursInput = {
  readonly steps: Steps
  readonly days: Days
  readonly buildUps: BuildUps
  readonly quantities: Quantities
  readonly airOf: AirOf
  readonly known: Known
}

export const pours: Stage<PoursInput, Pours> = { name: 'pours', run: planPours }

function planPours(input: PoursInput): Pours {
  const shelf = shelfOf(input)
  const made = input.steps.steps.flatMap((step) => {
    const at = shelf.placed.get(step.id)
    const coat = at && !at.done ? coatOf(shelf, step, at) : undefined
    return coat ? [{ pours: split(coat), notes: notesOf(coat, input.known) }] : []
  })
  return { pours: made.flatMap((one) => one.pours), notes: made.flatMap((one) => one.notes) }
}

/** What is looked up for every coat. */
type Shelf = {
  readonly known: Known
  readonly placed: ReadonlyMap<string, Placed>
  readonly sheets: ReadonlyMap<string, ResolvedSheet>
  readonly layers: ReadonlyMap<string, BuildUps['layers'][number]>
  readonly quantities: ReadonlyMap<string, Quantities['layers'][number]>
  readonly airOf: AirOf
}

const shelfOf = (input: PoursInput): Shelf => ({
  known: input.known,
  placed: new Map(input.days.placed.map((one) => [one.step, one])),
  sheets: new Map(input.buildUps.sheets.map((sheet) => [sheet.id, sheet])),
  layers: new Map(input.buildUps.layers.map((layer) => [layer.id, layer])),
  quantities: new Map(input.quantities.layers.map((quantity) => [quantity.id, quantity])),
  airOf: input.airOf,
})

type Coat = {
  readonly step: WorkStep
  readonly sheet: ResolvedSheet
  readonly mixedM3: number
  readonly thinnerShare: number
  readonly additiveShare: number
  readonly crew: number
  readonly airAt: AirAt
  readonly startMinute: number
  readonly workMinutes: number
  readonly leadMinutes: number
  readonly certainty: Pour['certainty']
}

function coatOf(shelf: Shelf, step: WorkStep, placed: Placed): Coat | undefined {
  const zoneLayer = `${step.zone}:${step.layer}`
  const sheet = shelf.sheets.get(step.sheet ?? '')
  const layer = shelf.layers.get(zoneLayer)
  const quantity = shelf.quantities.get(zoneLayer)
  if (step.coat === undefined || !sheet || !layer || !quantity) return undefined
  const startMinute = placed.startMinute + wholeSlots(step.setUpMinutes)
  const crew = placed.pieces[0]?.people.length ?? 1
  return {
    step,
    sheet,
    mixedM3: quantity.mixedPerCoatM3,
    thinnerShare: layer.thinnerShare.value,
    additiveShare: layer.additiveShare,
    crew,
    airAt: shelf.airOf(step.air),
    startMinute,
    workMinutes: workMinutesOf(step, crew),
    leadMinutes: shelf.known.mixLeadMinutes.value,
    certainty: weakest(quantity.certainty, sheet.clocks.potLife?.certainty),
  }
}

function workMinutesOf(step: WorkStep, crew: number): number {
  const pace = step.paces.filter((one) => one.crew <= crew).at(-1)
  return pace ? pace.personMinutes / pace.crew : 0
}

/** Induction is a wait, pot life a limit: each is read to its own safe side. */
function minutesAt(sheet: ResolvedSheet, clock: ClockName, airC: number): number | undefined {
  const table = sheet.clocks[clock]?.value
  if (!table) return undefined
  const { hours } = hoursAt(table, airC, clock === 'potLife' ? 'most' : 'least')
  return Number.isFinite(hours) ? hours * 60 : table[0]!.hours * 60
}

/** A pot in the air of the hour in which its paint is first used. */
type Pot = {
  readonly airC: number
  readonly inductionMinutes: number
  /** Absent for a one-part: the tray is topped up as it empties. */
  readonly potMinutes: number | undefined
  /** What is left of the pot life after standing and pouring out. */
  readonly usableMinutes: number
}

function potAt(coat: Coat, minute: number): Pot {
  const airC = coat.airAt(Math.floor(minute / 60))
  const inductionMinutes = minutesAt(coat.sheet, 'induction', airC) ?? 0
  const potMinutes = minutesAt(coat.sheet, 'potLife', airC)
  const usableMinutes =
    potMinutes === undefined ? Number.POSITIVE_INFINITY : potMinutes - inductionMinutes - coat.leadMinutes
  return { airC, inductionMinutes, potMinutes, usableMinutes }
}

/** When the pours of an even split are first used. */
const useFrom = (coat: Coat, of: number): readonly number[] =>
  Array.from({ length: of }, (_, index) => coat.startMinute + Math.round((index * coat.workMinutes) / of))

/** More pours than this for one coat are no way to paint it. */
const MOST_POURS = 60

/**
 * Even pours, as few as will do: each must last through its share of the work in the air of its own hour. Where the
 * pot allows none, one, and a fault note says so.
 */
function pourCount(coat: Coat): number {
  for (let of = 1; of <= MOST_POURS; of++) {
    const each = coat.workMinutes / of
    if (useFrom(coat, of).every((minute) => potAt(coat, minute).usableMinutes >= each - 1e-9)) return of
  }
  return 1
}

function split(coat: Coat): readonly Pour[] {
  const of = pourCount(coat)
  return useFrom(coat, of).map((useFromMinute, index) => pourAt(coat, { index, of, useFromMinute }))
}

function pourAt(
  coat: Coat,
  {
    index,
    of,
    useFromMinute,
  }: { readonly index: number; readonly of: number; readonly useFromMinute: number },
): Pour {
  const { sheet, step } = coat
  const poured = pourOf({
    mixedM3: coat.mixedM3 / of,
    sheet,
    thinnerShare: coat.thinnerShare,
    additiveShare: coat.additiveShare,
  })
  const pot = potAt(coat, useFromMinute)
  const mixAtMinute = useFromMinute - Math.ceil(pot.inductionMinutes + coat.leadMinutes)
  const two = (sheet.mix.value[1] ?? 0) > 0
  return {
    step: step.id,
    zone: step.zone ?? '',
    sheet: sheet.id,
    nr: index + 1,
    of,
    areaM2: (step.areaM2 ?? 0) / of,
    readyM3: poured.readyVolume,
    partsM3: two ? [poured.baseVolume, poured.hardenerVolume] : [poured.baseVolume],
    thinnerM3: poured.thinnerVolume,
    additiveM3: poured.additiveVolume,
    ...massesOf(sheet, poured, two),
    airC: pot.airC,
    mixAtMinute,
    useFromMinute,
    ...(pot.potMinutes === undefined ? {} : { useUntilMinute: mixAtMinute + Math.floor(pot.potMinutes) }),
    certainty: coat.certainty,
  }
}

/** By weight too, where the sheet gives the densities. */
function massesOf(
  sheet: ResolvedSheet,
  poured: ReturnType<typeof pourOf>,
  two: boolean,
): Pick<Pour, 'partsKg' | 'thinnerKg'> {
  const { densityA, densityB, densityThinner } = sheet
  if (!densityA || (two && !densityB)) return {}
  const masses = mixMasses(poured, {
    base: densityA.value,
    hardener: densityB?.value ?? 0,
    thinner: densityThinner?.value ?? 0,
  })
  return {
    partsKg: two ? [masses.baseMass, masses.hardenerMass] : [masses.baseMass],
    ...(densityThinner ? { thinnerKg: masses.thinnerMass } : {}),
  }
}

function notesOf(coat: Coat, known: Known): readonly Note[] {
  const about = { step: coat.step.id, zone: coat.step.zone ?? '', sheet: coat.sheet.id }
  const first = potAt(coat, coat.startMinute)
  const tooShort: readonly Note[] =
    first.usableMinutes <= 0
      ? [
          {
            code: 'pours.potTooShort',
            severity: 'fault',
            data: { ...about, airC: first.airC, potHours: (first.potMinutes ?? 0) / 60 },
          },
        ]
      : []
  const alone = coat.crew === 1 && coat.step.method === 'roll and tip'
  const tooWide: readonly Note[] =
    alone && (coat.step.areaM2 ?? 0) > known.runAloneMostM2.value
      ? [
          {
            code: 'pours.runTooWideAlone',
            severity: 'caution',
            data: { ...about, areaM2: coat.step.areaM2 ?? 0, mostM2: known.runAloneMostM2.value },
          },
        ]
      : []
  const of = pourCount(coat)
  const mixesAlone: readonly Note[] =
    coat.crew === 1 && of > 1
      ? [
          {
            code: 'pours.mixedAlone',
            severity: 'caution',
            data: { ...about, count: of, mixMinutes: coat.leadMinutes },
          },
        ]
      : []
  return [...tooShort, ...tooWide, ...mixesAlone]
}
