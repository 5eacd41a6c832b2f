/** Finds the earliest place for one step on the timeline: a coat in one go, or work split over sessions. */
import type { Pace, Piece, Step } from './step.ts'
import { minuteOf, runLengths, SLOT, type Timeline } from './timeline.ts'

/** Shorter scraps of time than this are not worth starting in. */
const LEAST_PIECE_SLOTS = 2

const slotsOf = (minutes: number): number => Math.ceil(minutes / SLOT)

type Found = { readonly pieces: readonly Piece[]; readonly rows: readonly (readonly number[])[] }

/** The pace that so many people work at: that of the largest crew not above it. */
function paceFor(step: Step, crew: number): Pace | undefined {
  return step.paces.filter((pace) => pace.crew <= crew).at(-1)
}

/**
 * A step in one go: set-up, work and clean-up without a break by the same people, and every slot of the
 * work itself open. The earliest start wins, then the larger crew. `undefined` when there is none.
 */
export function findInOneGo(input: {
  readonly timeline: Timeline
  readonly step: Step
  readonly fromSlot: number
  readonly open: Uint8Array | undefined
}): Found | undefined {
  const { timeline, step } = input
  const runs = timeline.free.map(runLengths)
  const openRuns = input.open ? runLengths(input.open) : undefined
  const allowed = timeline.people.map((id) => !step.barred.includes(id))
  const shapes = step.paces
    .map((pace) => ({
      crew: pace.crew,
      before: slotsOf(step.setUpMinutes),
      work: slotsOf(pace.personMinutes / pace.crew),
      total:
        slotsOf(step.setUpMinutes) + slotsOf(pace.personMinutes / pace.crew) + slotsOf(step.cleanUpMinutes),
    }))
    .reverse()
  for (let slot = input.fromSlot; slot < timeline.slots; slot++) {
    for (const shape of shapes) {
      if (openRuns && (openRuns[slot + shape.before] ?? 0) < shape.work) continue
      const rows = runs.flatMap((run, row) => (allowed[row] && run[slot]! >= shape.total ? [row] : []))
      if (rows.length < shape.crew) continue
      const taken = rows.slice(0, shape.crew)
      return { pieces: [pieceOf(timeline, taken, { from: slot, to: slot + shape.total })], rows: [taken] }
    }
  }
  return undefined
}

/** Work that may be split: fills free time in order, as many people as there are, until it is done. */
export function findSplit(input: {
  readonly timeline: Timeline
  readonly step: Step
  readonly fromSlot: number
  readonly open: Uint8Array | undefined
}): Found | undefined {
  const { timeline, step } = input
  const runs = timeline.free.map(runLengths)
  const openRuns = input.open ? runLengths(input.open) : undefined
  const allowed = timeline.people.map((id) => !step.barred.includes(id))
  const most = step.paces.at(-1)!.crew
  const pieces: Piece[] = []
  const rowsOf: number[][] = []
  let left = 1
  let slot = input.fromSlot
  while (slot < timeline.slots) {
    const rows = runs.flatMap((run, row) => (allowed[row] && run[slot]! > 0 ? [row] : [])).slice(0, most)
    const pace = paceFor(step, rows.length)
    if (!pace || (openRuns && openRuns[slot] === 0)) {
      slot++
      continue
    }
    const crew = rows.slice(0, pace.crew)
    const needed = Math.max(1, slotsOf((left * pace.personMinutes) / pace.crew - 1e-9))
    const length = Math.min(
      needed,
      ...crew.map((row) => runs[row]![slot]!),
      openRuns ? openRuns[slot]! : needed,
    )
    if (length < LEAST_PIECE_SLOTS && length < needed) {
      slot += length
      continue
    }
    pieces.push(pieceOf(timeline, crew, { from: slot, to: slot + length }))
    rowsOf.push(crew)
    left -= (length * SLOT * pace.crew) / pace.personMinutes
    slot += length
    if (left <= 1e-9) return { pieces, rows: rowsOf }
  }
  return undefined
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
