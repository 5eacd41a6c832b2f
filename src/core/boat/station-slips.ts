/**
 * Slips in a table of half breadths: a figure that fits neither its own section nor the stations beside it, such as
 * one with the decimal point a place off.
 */

import type { Note } from '#core/note'
import { fault } from './fault.ts'
import { heightRange, type Station, type StationPoint, widest } from './station.ts'

/** A figure is a slip when it is this share of the greatest half breadth off both guesses ... */
const farOff = 0.25
/** ... or this share off both and also four times too large or too small. */
const off = 0.06
const timesOff = 4
/** A sheer this share of the greatest depth off the line of its neighbours is a slip. */
const sheerOff = 0.5

const line = (t: number, a: readonly [number, number], b: readonly [number, number]): number =>
  a[0] === b[0] ? (a[1] + b[1]) / 2 : a[1] + ((b[1] - a[1]) * (t - a[0])) / (b[0] - a[0])

/** Half breadth of a station at a height, by straight pieces; nothing below the keel, the sheer's above it. */
const halfBreadthAt = ({ points }: Station, z: number): number => {
  if (z < points[0]!.z) return 0
  const above = points.findIndex((point) => point.z >= z)
  if (above < 0) return points.at(-1)!.y
  const [low, high] = [points[Math.max(above - 1, 0)]!, points[above]!]
  return above === 0 ? high.y : line(z, [low.z, low.y], [high.z, high.y])
}

/** Guess at station `i` from the stations on both sides, or from the two beyond an end. */
const guessAlong = (
  stations: readonly Station[],
  i: number,
  measure: (station: Station) => number,
): number => {
  const last = stations.length - 1
  const [a, b] = i === 0 ? [1, 2] : i === last ? [last - 1, last - 2] : [i - 1, i + 1]
  const [from, to] = [stations[a]!, stations[b]!]
  return Math.max(line(stations[i]!.x, [from.x, measure(from)], [to.x, measure(to)]), 0)
}

/** Guess at point `j` from the points on both sides; at the sheer, from the one below. */
const guessAcross = (points: readonly StationPoint[], j: number): number => {
  const [below, above] = [points[j - 1]!, points[j + 1]]
  return above ? line(points[j]!.z, [below.z, below.y], [above.z, above.y]) : below.y
}

const isOff = (value: number, guess: number, scale: number): boolean => {
  const gap = Math.abs(value - guess)
  const times = Math.max(value, guess) > timesOff * Math.min(value, guess)
  return gap > farOff * scale || (gap > off * scale && times)
}

/** A size most stations reach, so that one slip cannot set it. */
const typicalOf = (sizes: readonly number[]): number =>
  [...sizes].sort((a, b) => a - b)[Math.floor(0.75 * (sizes.length - 1))]!

const breadthSlips = (stations: readonly Station[], i: number, scale: number): readonly Note[] => {
  const station = stations[i]!
  return station.points.flatMap((point, j) => {
    if (j === 0) return []
    const along = guessAlong(stations, i, (other) => halfBreadthAt(other, point.z))
    const across = guessAcross(station.points, j)
    if (!isOff(point.y, along, scale) || !isOff(point.y, across, scale)) return []
    const place = { station: station.id, xM: station.x, point: j + 1, heightM: point.z }
    return [fault('boat.halfBreadthJumps', { ...place, halfBreadthM: point.y, expectedM: along })]
  })
}

const sheerSlip = (stations: readonly Station[], i: number, depth: number): readonly Note[] => {
  const sheer = (station: Station) => station.points.at(-1)!.z
  const last = stations.length - 1
  if (i === 0 || i === last) return []
  const [before, station, after] = [stations[i - 1]!, stations[i]!, stations[i + 1]!]
  const expected = line(station.x, [before.x, sheer(before)], [after.x, sheer(after)])
  const gaps = [expected, sheer(before), sheer(after)].map((guess) => Math.abs(sheer(station) - guess))
  if (Math.min(...gaps) <= sheerOff * depth) return []
  const data = { station: station.id, xM: station.x, heightM: sheer(station), expectedM: expected }
  return [fault('boat.sheerJumps', data)]
}

/** Slips of stations that `stationFaults` has let pass; both guesses must disagree before a figure is doubted. */
export const stationSlips = (stations: readonly Station[]): readonly Note[] => {
  const scale = typicalOf(stations.map(widest))
  const depth = typicalOf(
    stations.map((station) => {
      const { lowest, highest } = heightRange(station)
      return highest - lowest
    }),
  )
  return stations.flatMap((_, i) => [...breadthSlips(stations, i, scale), ...sheerSlip(stations, i, depth)])
}
