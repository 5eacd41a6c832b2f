/** The hull of a scan, taken into the job: its stations as a person writes them, in one step of undo. */
import type { RawCells } from '#job'
import type { ScanHull, Station } from '#plan'
import { itemsOf } from '../fields/items.ts'
import type { JobView } from './job-view.ts'

const stations = { part: 'work', section: 'stations' } as const
const points = { part: 'work', section: 'points' } as const
const boat = { part: 'work', section: 'boat' } as const

export type TakenScan = {
  readonly hull: Extract<ScanHull, { readonly ok: true }>
  /** Where it came from, in a line. */
  readonly from: string
}

/** A transom that leans less than this, rad, is plumb. */
const leastRake = (0.5 * Math.PI) / 180

/** What was measured before is gone; undo brings it back. */
export function takeScan(view: Pick<JobView, 'edits' | 'raw'>, { hull, from }: TakenScan): void {
  const old = [points, stations].map((place) => ({ place, ids: itemsOf(view, place).map(({ id }) => id) }))
  view.edits.together((edits) => {
    for (const { place, ids } of old) for (const item of ids) edits.remove({ ...place, item })
    for (const station of hull.stations) {
      const id = edits.add(stations, { name: station.id, x: metres(station.x) })
      for (const cells of pointCells(station, id)) edits.add(points, cells)
    }
    const leans = Math.abs(hull.rakeRad) > leastRake
    const rake = ((180 / Math.PI) * hull.rakeRad).toFixed(1)
    edits.set({ ...boat, key: 'transomRake' }, leans ? `${rake}°` : undefined)
    edits.set({ ...boat, key: 'scan' }, from)
  })
}

const pointCells = (station: Station, id: string): readonly RawCells[] =>
  station.points.map(({ y, z, knuckle }) => ({
    station: id,
    halfBreadth: metres(y),
    height: metres(z),
    ...(knuckle === 'chine' || knuckle === 'rail' ? { knuckle } : {}),
  }))

/** To the millimetre, as it is read off a tape. */
const metres = (value: number): string => `${(Math.round(1000 * value) / 1000 + 0).toFixed(3)} m`
