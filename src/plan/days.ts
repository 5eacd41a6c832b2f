/** Who does what, when: the steps set forward hour by hour, gathered into days. */
import type { Note } from '#core/note'
import {
  type Calendar,
  clockMinute,
  createGrid,
  createOpenings,
  type Grid,
  type GridSpan,
  type Interval,
  type Openings,
  type Placed,
  placeSteps,
} from '#core/schedule'
import type { Work } from '#job'
import type { AirOf } from './air-at.ts'
import type { CalendarDays } from './calendar.ts'
import type { Runner, Stage } from './remember.ts'
import type {
  BuildUps,
  Conditions,
  Day,
  DayPiece,
  Days,
  Marks,
  Steps,
  Surfaces,
  WorkStep,
  ZoneHours,
} from './types.ts'

export type SpanInput = { readonly calendar: CalendarDays; readonly nowMinute: number }

/** From when to when the calendar reaches, and where in it an unknown hour may be used. */
const span: Stage<SpanInput, GridSpan> = {
  name: 'days span',
  run: ({ calendar, nowMinute }) => ({
    firstMinute: firstMinuteOf(calendar, nowMinute),
    lastMinute: calendar.days.at(-1)?.endMinute ?? nowMinute,
    unknownOpen: calendar.middays,
  }),
  fresh: true,
}

const openings = (
  key: string,
): Stage<{ readonly hours: ZoneHours; readonly within: GridSpan }, Openings> => ({
  name: `days openings ${key}`,
  run: ({ hours, within }) => createOpenings(hours, within),
  fresh: true,
})

/** Who is free when and which hours are open: made anew only for the shifts and the kind of hours that changed. */
export function daysGrid(run: Runner, input: SpanInput & { readonly conditions: Conditions }): Grid {
  const { calendar, conditions, nowMinute } = input
  const within = run(span, { calendar, nowMinute })
  const byKey = conditions.zones.map(
    (hours) => [hours.key, run(openings(hours.key), { hours, within })] as const,
  )
  return run(grid, { people: calendar.people, within, ...Object.fromEntries(byKey) })
}

type GridInput = { readonly people: CalendarDays['people']; readonly within: GridSpan } & Readonly<
  Record<string, unknown>
>

const grid: Stage<GridInput, Grid> = {
  name: 'days grid',
  run: ({ people, within, ...opens }) =>
    createGrid({
      people,
      span: within,
      openings: new Map(Object.entries(opens as Readonly<Record<string, Openings>>)),
    }),
  fresh: true,
}

const firstMinuteOf = (calendar: CalendarDays, nowMinute: number): number =>
  Math.max(calendar.days[0]?.startMinute ?? 0, nowMinute)

export type DaysInput = {
  readonly grid: Grid
  readonly steps: Steps
  readonly airOf: AirOf
  readonly calendar: CalendarDays
  readonly buildUps: BuildUps
  readonly surfaces: Surfaces
  readonly marks: Marks
  /** What has happened already. */
  readonly done: ReadonlyMap<string, Interval>
  readonly launch: Work['job']['launch']
  readonly nowMinute: number
}

export const days: Stage<DaysInput, Days> = { name: 'days', run: setDays }

/** How long a coat waits for an hour that is sure before a risky or unknown one will do. */
const PATIENCE_MINUTES = 7 * 24 * 60

function setDays(input: DaysInput): Days {
  const { calendar } = input
  const result = placeSteps({
    steps: input.steps.steps,
    people: calendar.people,
    grid: input.grid,
    firstMinute: firstMinuteOf(calendar, input.nowMinute),
    patienceMinutes: PATIENCE_MINUTES,
    airAt: new Map(['boat', 'indoors'].map((place) => [place, input.airOf(place)])),
    done: input.done,
  })
  const gathered = gather(result.placed, calendar)
  const sessions = gathered.reduce((sum, day) => sum + day.people.length, 0)
  const ends = endsOf(input, result)
  return {
    placed: result.placed,
    unplaced: result.unplaced,
    days: gathered,
    startMinute: Math.min(...result.placed.map((placed) => placed.startMinute), Number.MAX_SAFE_INTEGER),
    ...ends,
    sessions,
    sessionMinutes: sessions * (calendar.openMinutes + calendar.closeMinutes),
    timeZone: calendar.timeZone,
    notes: [...notesOf(input, result), ...lateNotes(input, ends)],
  }
}

/** End of work, and the first minute slings may touch every hull zone. */
function endsOf(input: DaysInput, result: Calendar): Pick<Days, 'workEndMinute' | 'launchMinute'> {
  if (result.unplaced.length > 0 || result.placed.length === 0) return {}
  const workEndMinute = Math.max(...result.placed.map((placed) => placed.endMinute))
  const ready = slingMinutes(input, new Map(result.placed.map((placed) => [placed.step, placed])))
  return ready.includes(undefined)
    ? { workEndMinute }
    : { workEndMinute, launchMinute: Math.max(workEndMinute, ...(ready as readonly number[])) }
}

/** Where slings, pads and water touch. */
const slung: ReadonlySet<string> = new Set(['topsides', 'transom', 'bottom', 'boot-top', 'boot stripe'])

function slingMinutes(
  input: DaysInput,
  placed: ReadonlyMap<string, Placed>,
): readonly (number | undefined)[] {
  const zones = [...input.surfaces.zones, ...input.marks.zones]
  const hull = new Set(zones.flatMap((zone) => (slung.has(zone.kind) ? [zone.id] : [])))
  const airC = input.airOf('boat')
  return input.steps.steps.flatMap((step) => {
    const clocks = input.buildUps.sheets.find((sheet) => sheet.id === step.sheet)?.clocks
    const at = placed.get(step.id)
    if (
      step.kind !== 'coat' ||
      step.coat !== step.coats ||
      !hull.has(step.zone ?? '') ||
      !clocks?.dryToSling ||
      !at
    )
      return []
    return [clocks.dryToSling, clocks.touchDry].flatMap((clock) =>
      clock
        ? [clockMinute({ table: clock.value, sense: 'least', fromMinute: at.endMinute, airAt: airC })]
        : [],
    )
  })
}

/** Pieces by local day, in order of time; empty days are left out. */
function gather(placed: readonly Placed[], calendar: CalendarDays): readonly Day[] {
  const pieces = placed
    .flatMap(piecesOf)
    .sort((a, b) => a.startMinute - b.startMinute || (a.step < b.step ? -1 : 1))
  let next = 0
  return calendar.days.flatMap((day) => {
    const from = next
    while (next < pieces.length && pieces[next]!.startMinute < day.endMinute) next++
    const own = pieces.slice(from, next)
    return own.length === 0 ? [] : [{ ...day, people: hoursByPerson(own), pieces: own }]
  })
}

const piecesOf = (placed: Placed): readonly DayPiece[] =>
  placed.pieces.map((piece, index) => ({
    step: placed.step,
    ...piece,
    part: index + 1,
    parts: placed.pieces.length,
  }))

function hoursByPerson(pieces: readonly DayPiece[]): Day['people'] {
  const minutes = new Map<string, number>()
  for (const piece of pieces) {
    for (const person of piece.people) {
      minutes.set(person, (minutes.get(person) ?? 0) + piece.endMinute - piece.startMinute)
    }
  }
  return [...minutes]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([person, spent]) => ({ person, minutes: spent }))
}

function notesOf(input: DaysInput, result: Calendar): readonly Note[] {
  const known = new Map<string, WorkStep>(input.steps.steps.map((step) => [step.id, step]))
  const unplaced = result.unplaced.map(
    (one): Note => ({
      code: 'days.unplaced',
      severity: 'fault',
      data: { step: one.step, reason: one.reason },
    }),
  )
  const keyed = result.keyed.map(
    (one): Note => ({
      code: 'days.windowShut',
      severity: 'notice',
      data: { step: one.forStep, after: one.after, shutAtMs: one.shutMinute * 60_000 },
    }),
  )
  const coats = result.placed.filter(
    (placed) => known.get(placed.step)?.hoursKey !== undefined && !placed.done,
  )
  return [
    ...unplaced,
    ...keyed,
    ...hourNotes(coats, 'risky', 'days.riskyHours'),
    ...hourNotes(coats, 'unknown', 'days.beyondWeather'),
  ]
}

function hourNotes(coats: readonly Placed[], verdict: string, code: string): readonly Note[] {
  const count = coats.filter((placed) => placed.verdict === verdict).length
  return count === 0 ? [] : [{ code, severity: 'caution', data: { count, of: coats.length } }]
}

function lateNotes(input: DaysInput, ends: Pick<Days, 'launchMinute'>): readonly Note[] {
  const { launch } = input
  if (launch === undefined || ends.launchMinute === undefined) return []
  const day = input.calendar.days.find((one) => ends.launchMinute! < one.endMinute)
  if (!day || day.date <= launch) return []
  return [{ code: 'days.late', severity: 'warning', data: { wantedDate: launch, possibleDate: day.date } }]
}
