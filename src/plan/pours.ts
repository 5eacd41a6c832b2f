/** Each coat as pours: how much to mix, when, and until when it can be used, at the temperature of its hour. */
import { mixMasses } from '#core/coating'
import { hoursAt } from '#core/cure'
import type { Note } from '#core/note'
import { type AirAt, type Placed, wholeSlots } from '#core/schedule'
import { airByPlace } from './air-at.ts'
import { weakest } from './certainty.ts'
import type { Known } from './known.ts'
import { pourOf } from './quantities.ts'
import type { Stage } from './remember.ts'
import type {
  BuildUps,
  ClockName,
  Conditions,
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
  readonly conditions: Conditions
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
  readonly airOf: (place: string) => AirAt
}

const shelfOf = (input: PoursInput): Shelf => ({
  known: input.known,
  placed: new Map(input.days.placed.map((one) => [one.step, one])),
  sheets: new Map(input.buildUps.sheets.map((sheet) => [sheet.id, sheet])),
  layers: new Map(input.buildUps.layers.map((layer) => [layer.id, layer])),
  quantities: new Map(input.quantities.layers.map((quantity) => [quantity.id, quantity])),
  airOf: airByPlace(input.conditions.air),
})

type Coat = {
  readonly step: WorkStep
  readonly sheet: ResolvedSheet
  readonly mixedM3: number
  readonly thinnerShare: number
  readonly additiveShare: number
  readonly crew: number
  readonly airC: number
  readonly startMinute: number
  readonly workMinutes: number
  readonly inductionMinutes: number
  readonly leadMinutes: number
  /** Absent for a one-part: the tray is topped up as it empties. */
  readonly potMinutes: number | undefined
  readonly certainty: Pour['certainty']
}

function coatOf(shelf: Shelf, step: WorkStep, placed: Placed): Coat | undefined {
  const zoneLayer = `${step.zone}:${step.layer}`
  const sheet = shelf.sheets.get(step.sheet ?? '')
  const layer = shelf.layers.get(zoneLayer)
  const quantity = shelf.quantities.get(zoneLayer)
  if (step.coat === undefined || !sheet || !layer || !quantity) return undefined
  const startMinute = placed.startMinute + wholeSlots(step.setUpMinutes)
  const airC = shelf.airOf(step.air)(Math.floor(startMinute / 60))
  const crew = placed.pieces[0]?.people.length ?? 1
  return {
    step,
    sheet,
    mixedM3: quantity.mixedPerCoatM3,
    thinnerShare: layer.thinnerShare.value,
    additiveShare: layer.additiveShare,
    crew,
    airC,
    startMinute,
    workMinutes: workMinutesOf(step, crew),
    inductionMinutes: minutesAt(sheet, 'induction', airC) ?? 0,
    leadMinutes: shelf.known.mixLeadMinutes.value,
    potMinutes: minutesAt(sheet, 'potLife', airC),
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

/** Minutes one pour can be used: pot life less standing and pouring out. */
const usableMinutes = (coat: Coat): number =>
  coat.potMinutes === undefined
    ? Number.POSITIVE_INFINITY
    : coat.potMinutes - coat.inductionMinutes - coat.leadMinutes

/** Even pours, as few as the pot allows; where the pot allows none, one, and a fault note says so. */
function pourCount(coat: Coat): number {
  const usable = usableMinutes(coat)
  return usable > 0 ? Math.max(1, Math.ceil(coat.workMinutes / usable - 1e-9)) : 1
}

function split(coat: Coat): readonly Pour[] {
  const of = pourCount(coat)
  return Array.from({ length: of }, (_, index) => pourAt(coat, { index, of }))
}

function pourAt(coat: Coat, { index, of }: { readonly index: number; readonly of: number }): Pour {
  const { sheet, step } = coat
  const poured = pourOf({
    mixedM3: coat.mixedM3 / of,
    sheet,
    thinnerShare: coat.thinnerShare,
    additiveShare: coat.additiveShare,
  })
  const useFromMinute = coat.startMinute + Math.round((index * coat.workMinutes) / of)
  const mixAtMinute = useFromMinute - Math.ceil(coat.inductionMinutes + coat.leadMinutes)
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
    airC: coat.airC,
    mixAtMinute,
    useFromMinute,
    ...(coat.potMinutes === undefined ? {} : { useUntilMinute: mixAtMinute + Math.floor(coat.potMinutes) }),
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
  const tooShort: readonly Note[] =
    usableMinutes(coat) <= 0
      ? [
          {
            code: 'pours.potTooShort',
            severity: 'fault',
            data: { ...about, airC: coat.airC, potHours: (coat.potMinutes ?? 0) / 60 },
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
  return [...tooShort, ...tooWide]
}
