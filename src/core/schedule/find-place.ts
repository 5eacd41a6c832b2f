/** Finds the earliest place for one step on the timeline: a coat in one go, or work split over sessions. */
import type { Limit } from './limit.ts'
import type { Pace, Piece, Step } from './step.ts'
import { closedFor, minuteOf, type Runs, SLOT, slotsOf, type Timeline } from './timeline.ts'

/** Shorter scraps of time than this are not worth starting in. */
const LEAST_PIECE_SLOTS = 2

export type Search = {
  readonly timeline: Timeline
  readonly step: Step
  readonly fromSlot: number
  /** Slots the work itself may lie in; any when left out. */
  readonly open: Runs | undefined
  readonly limits: readonly Limit[]
}

export type Found = { readonly pieces: readonly Piece[]; readonly rows: readonly (readonly number[])[] }

const ALWAYS = Number.POSITIVE_INFINITY

/** The rows of the people who may do it. */
const allowedRows = ({ timeline, step }: Search): readonly number[] =>
  timeline.people.flatMap((id, row) => (step.barred.includes(id) ? [] : [row]))

/**
 * A step in one go: set-up, work and clean-up without a break by the same people, and every slot of the
 * work itself open. The earliest start wins, then the larger crew. `undefined` when there is none.
 */
export function findInOneGo(search: Search): Found | undefined {
  const { timeline, step, open, limits } = search
  const rows = allowedRows(search)
  const before = slotsOf(step.setUpMinutes)
  const after = slotsOf(step.cleanUpMinutes)
  const shapes = step.paces
    .map((pace) => {
      const work = slotsOf(pace.personMinutes / pace.crew)
      return { crew: pace.crew, work, total: before + work + after }
    })
    .reverse()
  const shortest = Math.min(...shapes.map((shape) => shape.total))
  for (let slot = search.fromSlot; slot < timeline.slots; slot++) {
    slot += jumpFrom(search, rows, { slot, openAt: slot + before })
    if (longestFree(timeline, rows, slot) < shortest) continue
    for (const shape of shapes) {
      if ((open ? (open[slot + before] ?? 0) : ALWAYS) < shape.work) continue
      const crew = freeCrew(timeline, rows, { slot, length: shape.total, crew: shape.crew })
      if (crew && limits.every((limit) => isClear(timeline, limit, { slot, length: shape.total })))
        return { pieces: [pieceOf(timeline, crew, { from: slot, to: slot + shape.total })], rows: [crew] }
    }
  }
  return undefined
}

/**
 * How many slots nothing can begin in from here on: nights, weekends and hours that are shut for the work are jumped
 * over, not walked through.
 */
function jumpFrom(
  { timeline, open }: Search,
  rows: readonly number[],
  at: { readonly slot: number; readonly openAt: number },
): number {
  let jump = 0
  for (;;) {
    const slot = at.slot + jump
    if (slot >= timeline.slots) return jump
    const shutFor = open && (open[at.openAt + jump] ?? 0) <= 0 ? closedFor(open[at.openAt + jump] ?? 0) : 0
    const more = shutFor > 0 ? shutFor : awayFor(timeline, rows, slot)
    if (more === 0) return jump
    jump += more
  }
}

/** For how many slots work that may be split cannot go on from here: nobody is free, or something keeps it away. */
function shutFor({ timeline, open, limits }: Search, rows: readonly number[], slot: number): number {
  let shut = awayFor(timeline, rows, slot)
  if (open && open[slot]! <= 0) shut = Math.max(shut, closedFor(open[slot]!))
  for (const { runs } of limits) if (runs[slot]! <= 0) shut = Math.max(shut, closedFor(runs[slot]!))
  return shut
}

/** How many slots nobody is free for; 0 when somebody is. */
function awayFor(timeline: Timeline, rows: readonly number[], slot: number): number {
  let away = timeline.slots - slot
  for (const row of rows) {
    const run = timeline.free[row]![slot]!
    if (run > 0) return 0
    away = Math.min(away, closedFor(run))
  }
  return Math.max(1, away)
}

function longestFree(timeline: Timeline, rows: readonly number[], slot: number): number {
  let longest = 0
  for (const row of rows) longest = Math.max(longest, timeline.free[row]![slot]!)
  return longest
}

/** Clear to the end of the grid counts as clear. */
function isClear(
  timeline: Timeline,
  limit: Limit,
  { slot, length }: { readonly slot: number; readonly length: number },
): boolean {
  const clear = limit.runs[slot] ?? 0
  if (clear < length) return false
  // Clear for longer than it is ever minded: the clock need not be run.
  if (clear >= length + slotsOf(limit.longestMinutes)) return true
  const tail = slotsOf(limit.tailMinutes(minuteOf(timeline, slot + length)))
  return clear >= Math.min(length + tail, limit.runs.length - 1 - slot)
}

function freeCrew(
  timeline: Timeline,
  rows: readonly number[],
  wanted: { readonly slot: number; readonly length: number; readonly crew: number },
): readonly number[] | undefined {
  const free: number[] = []
  for (const row of rows) {
    if (timeline.free[row]![wanted.slot]! >= wanted.length) free.push(row)
    if (free.length === wanted.crew) return free
  }
  return undefined
}

/** Work that may be split: fills free time in order, as many people as there are, until it is done. */
export function findSplit(search: Search): Found | undefined {
  const { timeline, step } = search
  const rows = allowedRows(search)
  const pieces: Piece[] = []
  const crews: (readonly number[])[] = []
  let left = 1
  let slot = search.fromSlot
  while (slot < timeline.slots) {
    const shut = shutFor(search, rows, slot)
    if (shut > 0) {
      slot += shut
      continue
    }
    const stretch = stretchAt(search, { rows, slot, left })
    if (!stretch) {
      slot++
      continue
    }
    const { crew, length } = stretch
    pieces.push(pieceOf(timeline, crew, { from: slot, to: slot + length }))
    crews.push(crew)
    left -= (length * SLOT * crew.length) / paceFor(step, crew.length)!.personMinutes
    slot += length
    if (left <= 1e-9) return { pieces, rows: crews }
  }
  return undefined
}

type Stretch = { readonly crew: readonly number[]; readonly length: number }

/**
 * The work that can be begun in a slot: by everybody who is free for long enough to be worth it, else by whoever is
 * free when that finishes the step. `undefined` when only a scrap of time is there.
 */
function stretchAt(
  { timeline, step, open, limits }: Search,
  at: { readonly rows: readonly number[]; readonly slot: number; readonly left: number },
): Stretch | undefined {
  const { rows, slot, left } = at
  const room = Math.min(open ? open[slot]! : ALWAYS, ...limits.map((limit) => limit.runs[slot]!))
  if (room <= 0) return undefined
  const most = step.paces.at(-1)!.crew
  for (const least of [LEAST_PIECE_SLOTS, 1]) {
    const here = rows.filter((row) => timeline.free[row]![slot]! >= least).slice(0, most)
    const pace = paceFor(step, here.length)
    if (!pace) continue
    const crew = here.slice(0, pace.crew)
    const needed = Math.max(1, slotsOf((left * pace.personMinutes) / pace.crew - 1e-9))
    const length = Math.min(needed, room, ...crew.map((row) => timeline.free[row]![slot]!))
    if (length >= LEAST_PIECE_SLOTS || length === needed) return { crew, length }
  }
  return undefined
}

/** The pace that so many people work at: that of the largest crew not above it. */
function paceFor(step: Step, crew: number): Pace | undefined {
  return step.paces.filter((pace) => pace.crew <= crew).at(-1)
}

function pieceOf(
  timeline: Timeline,
  rows: readonly number[],
  slots: { readonly from: number; readonly to: number },
): Piece {
  return {
    startMinute: minuteOf(timeline, slots.from),
    endMinute: minuteOf(timeline, slots.to),
    people: rows.map((row) => timeline.people[row]!),
  }
}
