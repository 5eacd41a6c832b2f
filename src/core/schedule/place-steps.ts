/**
 * The calendar, first version: each step in the order given is set at the earliest time it can have
 * (serial schedule generation), hour by hour inside shifts and paintable hours. Later steps fill the
 * waits of earlier ones. It does not search for a better order.
 */
import { bookDust, createDustBook, type DustBook, dustLimit, wetMinutes } from './dust.ts'
import { type Found, findInOneGo, findSplit } from './find-place.ts'
import { type Grid, type Openings, tiers } from './grid.ts'
import { worse, worstOver } from './hours.ts'
import { type AirAt, readyAt, shutWindow } from './ready.ts'
import type { Interval, Person, Placed, Step, Unplaced, Verdict } from './step.ts'
import { shut, slotFrom, type Timeline, wholeSlots } from './timeline.ts'

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
  readonly airOf: (step: string) => AirAt
}

const still: AirAt = () => 20

const airOn = (run: Run, step: Step): AirAt => run.airAt.get(step.air) ?? still

/** Sets every step that can be set. Deterministic: the same input gives the same calendar. */
export function placeSteps(input: PlaceInput): Calendar {
  const byId = new Map(input.steps.map((step) => [step.id, step]))
  const airOf = (step: string): AirAt => input.airAt.get(byId.get(step)?.air ?? '') ?? still
  const timeline = input.grid.timeline()
  const run: Run = { ...input, timeline, dust: createDustBook(timeline.slots), placed: new Map(), airOf }
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
    return undefined
  }
  const ready = readyAt({ step, placed: run.placed, earliestMinute: run.firstMinute, airOf: run.airOf })
  if (!ready.ok) return ready.reason
  const tried = find(run, step, ready.minute)
  if (!tried) return reasonFor(run, step)
  const shut = shutWindow({
    step,
    placed: run.placed,
    startMinute: tried.pieces[0]!.startMinute,
    airOf: run.airOf,
  })
  const found = shut ? keyThenFind(run, { step, after: shut, readyMinute: ready.minute }) : tried
  if (!found) return 'horizon'
  if (shut) keyed.push({ forStep: step.id, after: shut.step, shutMinute: shut.shutMinute })
  commit(run, step, found, ready.heldBy)
  return undefined
}

/** Sands the surface first, then looks again: the coat follows the sanding as soon as it can. */
function keyThenFind(
  run: Run,
  late: {
    readonly step: Step
    readonly after: { readonly keyMinutes: number }
    readonly readyMinute: number
  },
): Found | undefined {
  const key: Step = {
    id: `key:${late.step.id}`,
    kind: 'key',
    paces: [{ crew: 1, personMinutes: late.after.keyMinutes }],
    inOneGo: false,
    setUpMinutes: 0,
    cleanUpMinutes: 0,
    needs: [],
    dust: 'makes',
    air: late.step.air,
    barred: [],
  }
  const sanding = find(run, key, late.readyMinute)
  if (!sanding) return undefined
  commit(run, key, sanding, undefined, late.step.id)
  return find(run, late.step, sanding.pieces.at(-1)!.endMinute)
}

/** A better hour is worth waiting for, but not for ever: a worse tier wins only by more than the patience. */
function find(run: Run, step: Step, fromMinute: number): Found | undefined {
  const search = step.inOneGo ? findInOneGo : findSplit
  const { timeline } = run
  const base = {
    timeline,
    step,
    fromSlot: slotFrom(timeline, fromMinute),
    dust: dustLimit(run.dust, step, airOn(run, step)),
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

function commit(run: Run, step: Step, found: Found, heldBy: Placed['heldBy'], keyFor?: string): void {
  const hours = openingsOf(run, step)?.hours
  found.pieces.forEach((piece, index) => {
    const stretch = {
      fromSlot: slotFrom(run.timeline, piece.startMinute),
      toSlot: slotFrom(run.timeline, piece.endMinute),
    }
    for (const row of found.rows[index]!) shut(run.timeline.free[row]!, stretch)
    bookDust(run.dust, step, { ...stretch, wetMinutes: wetMinutes(step, piece.endMinute, airOn(run, step)) })
  })
  const startMinute = found.pieces[0]!.startMinute
  const endMinute = found.pieces.at(-1)!.endMinute
  const verdict = found.pieces
    .map((piece) => worstOver(hours, workStretch(step, piece)))
    .reduce(worse, 'go' as Verdict)
  run.placed.set(step.id, {
    step: step.id,
    startMinute,
    endMinute,
    pieces: found.pieces,
    ...(heldBy ? { heldBy } : {}),
    verdict,
    ...(keyFor ? { keyFor } : {}),
    done: false,
  })
}

const workStretch = (step: Step, piece: Interval) => ({
  fromMinute: piece.startMinute + wholeSlots(step.setUpMinutes),
  toMinute: piece.endMinute - wholeSlots(step.cleanUpMinutes),
})

/** Nobody may do it at all, or the time at hand is too short. */
function reasonFor(run: Run, step: Step): Unplaced['reason'] {
  const able = run.people.filter((person) => !step.barred.includes(person.id)).length
  return able < (step.paces[0]?.crew ?? 1) ? 'people' : 'horizon'
}
