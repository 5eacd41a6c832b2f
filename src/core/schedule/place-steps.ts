/**
 * The calendar, first version: each step in the order given is set at the earliest time it can have
 * (serial schedule generation), hour by hour inside shifts and paintable hours. Later steps fill the
 * waits of earlier ones. It does not search for a better order.
 */
import { bookDust, createDustBook, type DustBook, dustLimits } from './dust.ts'
import { bookExposure, createExposureBook, type ExposureBook, exposureLimits } from './exposure.ts'
import { type Found, findInOneGo, findSplit } from './find-place.ts'
import { bookFooting, createFootingBook, type FootingBook, footingLimits } from './footing.ts'
import { type Grid, type Openings, tiers } from './grid.ts'
import { worse, worstOver } from './hours.ts'
import { type Stretch, wetMinutes } from './limit.ts'
import { type AirAt, outOfHoles, readyAt, type ShutWindow, shutWindow } from './ready.ts'
import type { HourVerdicts, Interval, Person, Piece, Placed, Step, Unplaced, Verdict } from './step.ts'
import { SLOT, shut, slotFrom, type Timeline, wholeSlots } from './timeline.ts'

export type Calendar = {
  readonly placed: readonly Placed[]
  readonly unplaced: readonly Unplaced[]
  /** Sanding put in because a recoat window had shut, by the step it was put in for. */
  readonly keyed: readonly { readonly forStep: string; readonly after: string; readonly shutMinute: number }[]
}

export type PlaceInput = {
  /** In the order they get their pick; every step after all it needs. */
  readonly steps: readonly Step[]
  readonly people: readonly Person[]
  readonly grid: Grid
  readonly firstMinute: number
  /** How long a step waits for a go hour before a risky or unknown one will do. */
  readonly patienceMinutes: number
  readonly airAt: ReadonlyMap<string, AirAt>
  readonly done: ReadonlyMap<string, Interval>
}

type Run = PlaceInput & {
  readonly timeline: Timeline
  readonly placed: Map<string, Placed>
  readonly dust: DustBook
  readonly exposure: ExposureBook
  readonly footing: FootingBook
  readonly airOf: (step: string) => AirAt
}

const still: AirAt = () => 20

const airOn = (run: Run, step: Step): AirAt => run.airAt.get(step.air) ?? still

/** Sets every step that can be set. Deterministic: the same input gives the same calendar. */
export function placeSteps(input: PlaceInput): Calendar {
  const byId = new Map(input.steps.map((step) => [step.id, step]))
  const airOf = (step: string): AirAt => input.airAt.get(byId.get(step)?.air ?? '') ?? still
  const timeline = input.grid.timeline()
  const run: Run = {
    ...input,
    timeline,
    dust: createDustBook(timeline.open),
    exposure: createExposureBook(input.steps, timeline),
    footing: createFootingBook(timeline.open),
    placed: new Map(),
    airOf,
  }
  const unplaced: Unplaced[] = []
  const keyed: Calendar['keyed'][number][] = []
  for (const step of input.steps) {
    const reason = placeOne(run, step, keyed)
    if (reason) unplaced.push({ step: step.id, reason })
  }
  return { placed: [...run.placed.values()], unplaced, keyed }
}

function placeOne(run: Run, step: Step, keyed: Calendar['keyed'][number][]): Unplaced['reason'] | undefined {
  const happened = run.done.get(step.id)
  if (happened) {
    run.placed.set(step.id, { step: step.id, ...happened, pieces: [], verdict: 'go', done: true })
    // What it left may still be wet.
    const stretch = stretchOf(run, step, happened)
    book(run, step, { ...stretch, people: [] })
    return undefined
  }
  const ready = readyAt({ step, placed: run.placed, earliestMinute: run.firstMinute, airOf: run.airOf })
  if (!ready.ok) return ready.reason
  const tried = findOutOfHoles(run, step, ready.minute)
  if (tried === 'clock') return 'clock'
  if (!tried) return reasonFor(run, step)
  const shut = shutWindow({
    step,
    placed: run.placed,
    startMinute: startOf(tried),
    airOf: run.airOf,
  })
  if (shut && shut.keyMinute === undefined) return 'clock'
  const found = shut ? keyThenFind(run, step, shut, Math.max(ready.minute, shut.keyMinute!)) : tried
  if (!found) return 'horizon'
  if (shut) keyed.push({ forStep: step.id, after: shut.step, shutMinute: shut.shutMinute })
  commit(run, step, found, ready.heldBy)
  return undefined
}

/** The coat as soon as its surface can have been sanded, and the sanding as late as that coat allows. */
function keyThenFind(run: Run, step: Step, shut: ShutWindow, fromMinute: number): Found | undefined {
  const key = keying(step, shut)
  const soonest = find(run, key, fromMinute)
  const found = soonest && findOutOfHoles(run, step, endOf(soonest))
  if (!found || found === 'clock') return undefined
  commit(run, key, lastBefore(run, key, { soonest, untilMinute: startOf(found) }), undefined, step.id)
  return found
}

const keying = (step: Step, { window }: ShutWindow): Step => ({
  id: `key:${step.id}`,
  kind: 'key',
  paces: [{ crew: 1, personMinutes: window.keyMinutes }],
  inOneGo: false,
  setUpMinutes: 0,
  cleanUpMinutes: 0,
  needs: [],
  dust: 'makes',
  air: step.air,
  standsOn: step.standsOn,
  barred: window.barred,
})

/** The last place that ends in time, looked for backwards: a keyed surface left for days is dirty again. */
function lastBefore(
  run: Run,
  step: Step,
  { soonest, untilMinute }: { readonly soonest: Found; readonly untilMinute: number },
): Found {
  const shortest = wholeSlots(step.paces[0]!.personMinutes)
  const { timeline } = run
  for (let from = untilMinute - shortest; from > startOf(soonest); from -= SLOT) {
    // Nights and weekends: what is found from there begins later, and was looked at.
    const slot = slotFrom(timeline, from)
    if (timeline.free.every((runs) => runs[slot]! <= 0)) continue
    const found = find(run, step, from)
    if (found && endOf(found) <= untilMinute) return found
  }
  return soonest
}

/** The first place whose start lies in no hole of a window; `clock` when the cold keeps one open for ever. */
function findOutOfHoles(run: Run, step: Step, fromMinute: number): Found | 'clock' | undefined {
  let found = find(run, step, fromMinute)
  while (found) {
    const startMinute = startOf(found)
    const out = outOfHoles({ step, placed: run.placed, startMinute, airOf: run.airOf })
    if (out === undefined) return 'clock'
    if (out === startMinute) return found
    found = find(run, step, out)
  }
  return undefined
}

/** A better hour is worth waiting for, but not for ever: a worse tier wins only by more than the patience. */
function find(run: Run, step: Step, fromMinute: number): Found | undefined {
  const search = step.inOneGo ? findInOneGo : findSplit
  const { timeline } = run
  const airAt = airOn(run, step)
  const base = {
    timeline,
    step,
    fromSlot: slotFrom(timeline, fromMinute),
    limits: [
      ...dustLimits(run.dust, step, airAt),
      ...exposureLimits(run.exposure, step, airAt),
      ...footingLimits(run.footing, step, airAt),
    ],
  }
  const openings = openingsOf(run, step)
  if (!openings) return search({ ...base, open: undefined })
  let best: Found | undefined
  for (let tier = 0; tier < tiers.length; tier++) {
    if (best && startOf(best) <= fromMinute + run.patienceMinutes) return best
    const found = search({ ...base, open: openings.open(tier) })
    if (!best || (found && startOf(found) + run.patienceMinutes < startOf(best))) best = found
  }
  return best
}

const openingsOf = (run: Run, { hoursKey }: Step): Openings | undefined =>
  hoursKey === undefined ? undefined : run.grid.openings.get(hoursKey)

const startOf = (found: Found): number => found.pieces[0]!.startMinute
const endOf = (found: Found): number => found.pieces.at(-1)!.endMinute

function commit(run: Run, step: Step, found: Found, heldBy: Placed['heldBy'], keyFor?: string): void {
  const hours = openingsOf(run, step)?.hours
  found.pieces.forEach((piece, index) => {
    const stretch = stretchOf(run, step, piece)
    for (const row of found.rows[index]!) shut(run.timeline.free[row]!, stretch)
    book(run, step, { ...stretch, people: piece.people })
  })
  const verdict = verdictOf(step, { hours, pieces: found.pieces })
  run.placed.set(step.id, {
    step: step.id,
    startMinute: startOf(found),
    endMinute: endOf(found),
    pieces: found.pieces,
    ...(heldBy ? { heldBy } : {}),
    verdict,
    ...(keyFor ? { keyFor } : {}),
    done: false,
  })
}

/** Work that asks something of the air is not known to be good where nobody judged the hours. */
function verdictOf(
  step: Step,
  { hours, pieces }: { readonly hours: HourVerdicts | undefined; readonly pieces: readonly Piece[] },
): Verdict {
  if (step.hoursKey !== undefined && !hours) return 'unknown'
  return pieces.map((piece) => worstOver(hours, workStretch(step, piece))).reduce(worse, 'go' as Verdict)
}

/** What it keeps others from while it is done, and after. */
function book(run: Run, step: Step, stretch: Stretch & Pick<Piece, 'people'>): void {
  bookDust(run.dust, step, stretch)
  bookExposure(run.exposure, step, stretch)
  bookFooting(run.footing, step, stretch, airOn(run, step))
}

const stretchOf = (run: Run, step: Step, { startMinute, endMinute }: Interval): Stretch => ({
  fromSlot: slotFrom(run.timeline, startMinute),
  toSlot: slotFrom(run.timeline, endMinute),
  endMinute,
  agoMinutes: Math.max(0, run.timeline.firstMinute - endMinute),
  wetMinutes: wetMinutes(step, endMinute, airOn(run, step)),
})

const workStretch = (step: Step, piece: Interval) => ({
  fromMinute: piece.startMinute + wholeSlots(step.setUpMinutes),
  toMinute: piece.endMinute - wholeSlots(step.cleanUpMinutes),
})

/** Nobody may do it at all, those who may never meet for long enough, or the time at hand is too short. */
function reasonFor(run: Run, step: Step): Unplaced['reason'] {
  const crew = step.paces[0]?.crew ?? 1
  const able = run.people.filter((person) => !step.barred.includes(person.id))
  if (able.length < crew) return 'people'
  // Before anything was placed: who is at the boat when.
  const { people, free, slots } = run.grid.timeline()
  const rows = free.filter((_, row) => able.some(({ id }) => id === people[row]))
  for (let slot = 0; slot < slots; slot++)
    if (rows.filter((runs) => runs[slot]! > 0).length >= crew) return 'horizon'
  return 'together'
}
