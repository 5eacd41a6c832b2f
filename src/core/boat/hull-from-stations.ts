/** A fair hull through measured or drawn stations, or what is wrong with them. */

import { loftThrough, sectionCurve } from '#core/geometry'
import type { Note } from '#core/note'
import type { Hull, HullSkin } from './hull.ts'
import { hullParticulars } from './hull-particulars.ts'
import { hullWater } from './hull-water.ts'
import { type Station, widest } from './station.ts'
import { stationFaults } from './station-faults.ts'
import { stationSlips } from './station-slips.ts'
import { type StationStrips, stationStrips } from './station-strips.ts'

export type HullResult =
  | { readonly ok: true; readonly hull: Hull; readonly notes: readonly Note[] }
  | { readonly ok: false; readonly faults: readonly Note[] }

/** A foremost station wider than this share of the beam is taken for a bow that was not measured to its end. */
const openBow = 0.05

const shapeNotes = (stations: readonly Station[]): readonly Note[] => {
  const foremost = stations.at(-1)!
  const half = widest(foremost)
  const greatest = Math.max(...stations.map(widest))
  const data = { station: foremost.id, xM: foremost.x, halfBreadthM: half }
  const lowest = Math.min(...stations.flatMap((station) => station.points.map((point) => point.z)))
  return [
    ...(half > openBow * greatest ? [{ code: 'boat.stemOpen', severity: 'missing', data } as const] : []),
    ...(lowest >= 0
      ? [{ code: 'boat.nothingBelowWaterline', severity: 'missing', data: { lowestM: lowest } } as const]
      : []),
    ...(stations[0]!.x === 0
      ? []
      : [{ code: 'boat.aftmostNotZero', severity: 'info', data: { xM: stations[0]!.x } } as const]),
  ]
}

const loftOf = (
  stations: readonly Station[],
  { edges, strips }: Pick<StationStrips, 'edges' | 'strips'>,
): HullSkin => ({
  surface: loftThrough(stations.map(({ x }, i) => ({ x, curves: strips[i]!.map(sectionCurve) }))),
  edges,
})

/** The bare surface through stations known to be good. */
export const skinThrough = (stations: readonly Station[]): HullSkin =>
  loftOf(stations, stationStrips(stations))

/**
 * Hull through stations given from aft to forward, each keel to sheer, in the boat frame. Sections are splines broken
 * at knuckles and faired along the length by splines, so points far apart still give a round surface. It closes flat
 * at an end whose station has breadth (the transom). Any fault stops it; figures are never mended silently.
 */
export const hullFromStations = (stations: readonly Station[]): HullResult => {
  const faults = stationFaults(stations)
  const slips = faults.length > 0 ? faults : stationSlips(stations)
  if (slips.length > 0) return { ok: false, faults: slips }
  const { edges, strips, notes } = stationStrips(stations)
  const differing = notes.filter((note) => note.severity === 'fault')
  if (differing.length > 0) return { ok: false, faults: differing }
  const skin = loftOf(stations, { edges, strips })
  const wet = { ...skin, water: hullWater(skin) }
  const hull = { ...wet, stations, particulars: hullParticulars(wet) }
  return { ok: true, hull, notes: [...notes, ...shapeNotes(stations)] }
}
