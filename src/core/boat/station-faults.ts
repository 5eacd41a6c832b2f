/** What is wrong with measured stations one by one and in their order; codes point at the station and the point. */

import type { Note } from '#core/note'
import { fault } from './fault.ts'
import { heightRange, type Station, type StationPoint, widest } from './station.ts'

const fewestStations = 3

/** A section may dip this share of its depth between two points that are not at a chine. */
const allowedDip = 0.05

const duplicateIds = (stations: readonly Station[]): readonly Note[] =>
  stations.flatMap((station, i) =>
    stations.findIndex((other) => other.id === station.id) < i
      ? [fault('boat.stationNamedTwice', { station: station.id, position: i + 1 })]
      : [],
  )

const notNumbers = (station: Station): readonly Note[] => {
  const bad = station.points.flatMap((point, i) =>
    (['y', 'z'] as const)
      .filter((axis) => !Number.isFinite(point[axis]))
      .map((axis) => fault('boat.pointNotNumber', { station: station.id, point: i + 1, axis })),
  )
  return Number.isFinite(station.x) ? bad : [fault('boat.stationNotNumber', { station: station.id }), ...bad]
}

const negatives = (station: Station): readonly Note[] =>
  station.points.flatMap((point, i) =>
    point.y < 0
      ? [
          fault('boat.halfBreadthNegative', {
            station: station.id,
            xM: station.x,
            point: i + 1,
            halfBreadthM: point.y,
            heightM: point.z,
          }),
        ]
      : [],
  )

const atChine = (...points: readonly StationPoint[]): boolean => points.some((p) => p.knuckle === 'chine')

/** Heights must rise from keel to sheer; a chine flat may fall, and a hollow may dip a little. */
const fallingHeights = (station: Station): readonly Note[] => {
  const { points } = station
  const { lowest, highest } = heightRange(station)
  if (points.length > 1 && points[0]!.z > points.at(-1)!.z) {
    const ends = { keelHeightM: points[0]!.z, sheerHeightM: points.at(-1)!.z }
    return [fault('boat.stationUpsideDown', { station: station.id, xM: station.x, ...ends })]
  }
  return points.flatMap((point, i) => {
    const before = points[i - 1]
    if (!before || atChine(before, point) || before.z - point.z <= allowedDip * (highest - lowest)) return []
    const heights = { heightM: point.z, previousHeightM: before.z }
    return [fault('boat.heightsFall', { station: station.id, xM: station.x, point: i + 1, ...heights })]
  })
}

const tooFewPoints = (station: Station, atEnd: boolean): readonly Note[] => {
  const needed = atEnd ? 1 : 2
  const count = station.points.length
  return count < needed ? [fault('boat.stationTooFewPoints', { station: station.id, count, needed })] : []
}

/** Nobody measures less, and less leaves nothing to put a surface through, m. COMMON PRACTICE. */
const leastHalfBreadth = 1e-4

/** An inner station without breadth would cut the hull in two. */
const noBreadth = (station: Station, atEnd: boolean): readonly Note[] =>
  !atEnd && widest(station) < leastHalfBreadth
    ? [fault('boat.stationNoBreadth', { station: station.id, xM: station.x })]
    : []

/** Which of two stations in falling order is the odd one: the later, unless it fits behind the one before both. */
const oddOneOut = (stations: readonly Station[], i: number): readonly [odd: number, beside: number] => {
  const earlier = stations[i - 2]
  return earlier && stations[i]!.x > earlier.x ? [i - 1, i] : [i, i - 1]
}

const orderFaults = (stations: readonly Station[]): readonly Note[] =>
  stations.flatMap((station, i) => {
    const before = stations[i - 1]
    if (!before || station.x > before.x) return []
    if (station.x === before.x) {
      return [fault('boat.stationsAtSamePlace', { station: station.id, other: before.id, xM: station.x })]
    }
    const [odd, beside] = oddOneOut(stations, i)
    const [out, neighbour] = [stations[odd]!, stations[beside]!]
    return [
      fault('boat.stationOutOfOrder', {
        station: out.id,
        xM: out.x,
        position: odd + 1,
        neighbour: neighbour.id,
        neighbourXM: neighbour.x,
      }),
    ]
  })

/**
 * Faults of stations given from aft to forward, each keel to sheer. Values that are no numbers are reported alone:
 * nothing else can be judged beside them.
 */
export const stationFaults = (stations: readonly Station[]): readonly Note[] => {
  if (stations.length < fewestStations) {
    return [fault('boat.tooFewStations', { count: stations.length, needed: fewestStations })]
  }
  const unreadable = stations.flatMap(notNumbers)
  if (unreadable.length > 0) return unreadable
  const atEnd = (i: number) => i === 0 || i === stations.length - 1
  const faults = [
    ...duplicateIds(stations),
    ...orderFaults(stations),
    ...stations.flatMap((station, i) => tooFewPoints(station, atEnd(i))),
    ...stations.flatMap(negatives),
    ...stations.flatMap(fallingHeights),
  ]
  if (faults.length > 0) return faults
  if (stations.every((station) => widest(station) === 0)) return [fault('boat.noBeam', { beamM: 0 })]
  return stations.flatMap((station, i) => noBreadth(station, atEnd(i)))
}
