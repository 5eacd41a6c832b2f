/** What hands do to a deck zone, as edits of the job: each one a step of undo. */
import type { JobEdits, JobView } from '../../../job/job-view.ts'
import { keyStep, lengthText } from './corner-text.ts'
import { middleOf, type Place } from './deck-view.ts'
import type { StartShape } from './start-corners.ts'
import { type Corner, cornersPlace, offsetsPlace, ringOf, zonesPlace } from './zone-corners.ts'

type Hands = Pick<JobView, 'edits' | 'system'>

/** Put by eye on the drawing: a guess until somebody lays a tape. */
export function dropCorner({ edits, system }: Hands, id: string, [x, y]: Place): void {
  edits.together((all) => {
    const place = { ...cornersPlace, item: id }
    all.set({ ...place, key: 'fromStern' }, lengthText(x, { system, about: true }))
    all.set({ ...place, key: 'offCentre' }, lengthText(y, { system, about: true }))
  })
}

export type Nudge = {
  readonly of: 'fromStern' | 'offCentre'
  readonly sign: 1 | -1
  readonly fine: boolean
}

/** By a key: as sure as it was. */
export function nudgeCorner({ edits, system }: Hands, corner: Corner, { of, sign, fine }: Nudge): void {
  if (!corner.place) return
  const step = keyStep(system, fine)
  const had = corner.place[of === 'fromStern' ? 0 : 1]
  const text = lengthText(had + sign * step, { system, about: corner.about[of] })
  edits.set({ ...cornersPlace, item: corner.id, key: of }, text)
}

/** Half way to the next corner of its ring; gives the new one's id. */
export function addCorner(
  { edits, system }: Hands,
  zone: string,
  all: readonly Corner[],
  after: Corner,
): string {
  const ring = all.filter(({ opening }) => opening === after.opening)
  const next = ring[(ring.indexOf(after) + 1) % ring.length] ?? after
  const [from, to] = [after.place ?? [0, 0], next.place ?? [0, 0]]
  const about = { system, about: true }
  return step(edits, (inStep) =>
    inStep.add(
      cornersPlace,
      {
        zone,
        fromStern: lengthText((from[0] + to[0]) / 2, about),
        offCentre: lengthText((from[1] + to[1]) / 2, about),
        ...(after.opening > 0 ? { opening: String(after.opening) } : {}),
      },
      after.id,
    ),
  )
}

export const removeCorner = ({ edits }: Hands, { id }: Corner): void =>
  void step(edits, (inStep) => inStep.remove({ ...cornersPlace, item: id }))

export type FirstShape = StartShape & {
  /** Its size is a guess; where it lies is one anyway, and counts for nothing. */
  readonly about: boolean
  /** Two alike, which the mirror image now makes. */
  readonly pair: boolean
}

/** A first shape, to be dragged to where it is. */
export function drawZone({ edits, system }: Hands, zone: string, shape: FirstShape): void {
  const { corners, mirrored, about, pair } = shape
  edits.together((all) => {
    for (const place of corners) all.add(cornersPlace, { zone, ...cellsAt(place, { system, about }) })
    if (!mirrored) return
    all.set({ ...zonesPlace, item: zone, key: 'mirror' }, 'yes')
    if (pair) all.set({ ...zonesPlace, item: zone, key: 'count' }, undefined)
  })
}

/** Half of an opening's breadth, m, and the most of the zone's that it takes. */
const opening = { half: 0.2, most: 0.15 } as const

/** A square in the middle of the zone, as the next opening. */
export function drawOpening({ edits, system }: Hands, zone: string, corners: readonly Corner[]): void {
  const number = Math.max(0, ...corners.map((corner) => corner.opening)) + 1
  const edge = ringOf(corners, 0)
  const [x, y] = middleOf(edge).map((value) => Math.round(100 * value) / 100) as [number, number]
  const breadth = ([0, 1] as const).map((of) => {
    const values = edge.map((place) => place[of])
    return Math.max(...values) - Math.min(...values)
  })
  const half = Math.round(100 * Math.min(opening.half, ...breadth.map((each) => opening.most * each))) / 100
  edits.together((all) => {
    for (const [dx, dy] of [
      [-1, 1],
      [1, 1],
      [1, -1],
      [-1, -1],
    ] as const) {
      const cells = cellsAt([x + dx * half, y + dy * half], { system, about: true })
      all.add(cornersPlace, { zone, ...cells, opening: String(number) })
    }
  })
}

/** The first two rows, which then are measured. */
export function startOffsets({ edits, system }: Hands, zone: string, rows: readonly Place[]): void {
  edits.together((all) => {
    for (const [x, y] of rows)
      all.add(offsetsPlace, {
        zone,
        fromStern: lengthText(x, { system, about: true }),
        outer: lengthText(y, { system, about: true }),
      })
  })
}

const cellsAt = ([x, y]: Place, how: { readonly system: JobView['system']; readonly about: boolean }) => ({
  fromStern: lengthText(x, how),
  offCentre: lengthText(y, how),
})

/** Alone in its step of undo. */
function step<T>(edits: JobEdits, work: (edits: JobEdits) => T): T {
  let made: T | undefined
  edits.together((all) => {
    made = work(all)
  })
  return made as T
}
