/**
 * The calendar, first version: each step in the order given is set at the earliest time it can have
 * (serial schedule generation), hour by hour inside shifts and paintable hours. Later steps fill the
 * waits of earlier ones. It does not search for a better order.
 */
import { findInOneGo, findSplit } from './find-place.ts'
import { openSlots, worse, worstOver } from './hours.ts'
import { type AirAt, readyAt, shutWindow } from './ready.ts'
import type { HourVerdicts, Interval, Person, Placed, Step, Unplaced, Verdict } from './step.ts'
import { createTimeline, minuteOf, occupy, SLOT, slotFrom, type Timeline } from './timeline.ts'

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
  readonly firstMinute: number
  readonly lastMinute: number
  /** Hours by key; a step whose key is missing here may be done at any hour. */
  readonly hours: ReadonlyMap<string, HourVerdicts>
  /** How long a step waits for a go hour before a risky or unknown one will do. */
  readonly patienceMinutes: number
  /** Minutes of the day, local, are the caller's affair: stretches in which an unknown hour may be used. */
  readonly unknownOpen: readonly Interval[]
  readonly airAt: ReadonlyMap<string, AirAt>
  readonly done: ReadonlyMap<string, Interval>
}

type Run = PlaceInput & {
  readonly timeline: Timeline
  readonly byId: ReadonlyMap<string, Step>
  readonly placed: Map<string, Placed>
  readonly opens: Map<string, readonly Uint8Array[]>
  readonly airOf: (step: string) => AirAt
}

const still: AirAt = () => 20

/** Sets every step that can be set. Deterministic: the same input gives the same calendar. */
export function placeSteps(input: PlaceInput): Calendar {
  const byId = new Map(input.steps.map((step) => [step.id, step]))
  const airOf = (step: string): AirAt => input.airAt.get(byId.get(step)?.air ?? '') ?? still
  const run: Run = {
    ...input,
    timeline: createTimeline(input),
    byId,
    placed: new Map(),
    opens: new Map(),
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
): ReturnType<typeof find> {
  const key: Step = {
    id: `key:${late.step.id}`,
    kind: 'key',
    paces: [{ crew: 1, personMinutes: late.after.keyMinutes }],
    inOneGo: false,
    setUpMinutes: 0,
    cleanUpMinutes: 0,
    needs: [],
    air: late.step.air,
    barred: [],
  }
  const sanding = find(run, key, late.readyMinute)
  if (!sanding) return undefined
  commit(run, key, sanding, undefined, late.step.id)
  return find(run, late.step, sanding.pieces.at(-1)!.endMinute)
}

const tiers: readonly (readonly Verdict[])[] = [['go'], ['go', 'risky'], ['go', 'risky', 'unknown']]

/** Open slots by tier: go; with risky; with unknown hours in the stretches where they may be used. */
function opensFor(run: Run, key: string): readonly Uint8Array[] | undefined {
  const hours = run.hours.get(key)
  if (!hours) return undefined
  const kept = run.opens.get(key)
  if (kept) return kept
  const made = tiers.map((tier) => openSlots({ timeline: run.timeline, hours, allow: new Set(tier) }))
  closeUnknown(run, hours, made[2]!)
  run.opens.set(key, made)
  return made
}

function closeUnknown(run: Run, hours: HourVerdicts, open: Uint8Array): void {
  const usable = new Uint8Array(open.length)
  for (const stretch of run.unknownOpen) {
    usable.fill(1, slotFrom(run.timeline, stretch.startMinute), slotFrom(run.timeline, stretch.endMinute))
  }
  for (let slot = 0; slot < open.length; slot++) {
    const minute = minuteOf(run.timeline, slot)
    const verdict = hours.verdicts[Math.floor((minute - hours.firstMinute) / 60)] ?? 'unknown'
    if (verdict === 'unknown' && !usable[slot]) open[slot] = 0
  }
}

function find(run: Run, step: Step, fromMinute: number) {
  const search = step.inOneGo ? findInOneGo : findSplit
  const base = { timeline: run.timeline, step, fromSlot: slotFrom(run.timeline, fromMinute) }
  const opens = step.hours === undefined ? undefined : opensFor(run, step.hours)
  if (!opens) return search({ ...base, open: undefined })
  const found = opens.map((open) => search({ ...base, open }))
  const start = (tier: number) => found[tier]?.pieces[0]?.startMinute ?? Number.POSITIVE_INFINITY
  // A better hour is worth waiting for, but not for ever.
  if (start(0) <= start(1) + run.patienceMinutes && start(0) <= start(2) + run.patienceMinutes)
    return found[0]
  if (start(1) <= start(2) + run.patienceMinutes) return found[1]
  return found[2]
}

function commit(
  run: Run,
  step: Step,
  found: NonNullable<ReturnType<typeof find>>,
  heldBy: Placed['heldBy'],
  keyFor?: string,
): void {
  const hours = step.hours === undefined ? undefined : run.hours.get(step.hours)
  found.pieces.forEach((piece, index) => {
    occupy(run.timeline, {
      rows: found.rows[index]!,
      fromSlot: slotFrom(run.timeline, piece.startMinute),
      toSlot: slotFrom(run.timeline, piece.endMinute),
    })
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
  fromMinute: piece.startMinute + Math.ceil(step.setUpMinutes / SLOT) * SLOT,
  toMinute: piece.endMinute - Math.ceil(step.cleanUpMinutes / SLOT) * SLOT,
})

/** Nobody may do it at all, or the time at hand is too short. */
function reasonFor(run: Run, step: Step): Unplaced['reason'] {
  const able = run.people.filter((person) => !step.barred.includes(person.id)).length
  return able < (step.paces[0]?.crew ?? 1) ? 'people' : 'horizon'
}
