/**
 * Slips in a table of half breadths: a figure that fits neither its own section nor the stations beside it, such as
 * one with the decimal point a place off.
 */

import type { Note } from '#core/note'
import { fault } from './fault.ts'
import { heightRange, type Station, type StationPoint, widest } from './station.ts'

/** Of three stations the middle one has nothing to be held against. */
const fewestStations = 4
/** A slip is at least this share of the greatest half breadth off everything beside it ... */
const leastGap = 0.06
/** ... and this many times larger or smaller than the stations beside it ... */
const timesAlong = 3
/** ... and than the points beside it in its own section; or so far off both that no factor is needed. */
const timesAcross = 2
const wideGap = 0.35
/** A sheer this share of the greatest depth off the line of its neighbours is a slip. */
const sheerOff = 0.5

type Pair = readonly [at: number, value: number]

const line = (t: number, [t0, v0]: Pair, [t1, v1]: Pair): number =>
  t0 === t1 ? (v0 + v1) / 2 : v0 + ((v1 - v0) * (t - t0)) / (t1 - t0)

/** Half breadth of a station at a share of its height from keel to sheer, by straight pieces. */
const halfBreadthAt = (station: Station, share: number): number => {
  const { points } = station
  const { lowest, highest } = heightRange(station)
  const z = lowest + share * (highest - lowest)
  const above = points.findIndex((point) => point.z >= z)
  if (above <= 0) return (above < 0 ? points.at(-1)! : points[0]!).y
  const [low, high] = [points[above - 1]!, points[above]!]
  return line(z, [low.z, low.y], [high.z, high.y])
}

/** What stands beside a figure: the least and the most of it, and the figure to expect there. */
type Beside = { readonly least: number; readonly most: number; readonly expected: number }

/** From the stations on both sides; at an end from the next one and the line through the next two. */
const besideAlong = (stations: readonly Station[], i: number, share: number): Beside => {
  const last = stations.length - 1
  const isEnd = i === 0 || i === last
  const [a, b] = i === 0 ? [1, 2] : i === last ? [last - 1, last - 2] : [i - 1, i + 1]
  const [from, to] = [stations[a]!, stations[b]!]
  const [here, there] = [halfBreadthAt(from, share), halfBreadthAt(to, share)]
  const expected = Math.max(line(stations[i]!.x, [from.x, here], [to.x, there]), 0)
  const other = isEnd ? expected : there
  return { least: Math.min(here, other), most: Math.max(here, other), expected }
}

/** From the points on both sides in the section; at the sheer, from the one below. */
const besideAcross = (points: readonly StationPoint[], j: number): { least: number; most: number } => {
  const below = points[j - 1]!.y
  const above = points[j + 1]?.y ?? below
  return { least: Math.min(below, above), most: Math.max(below, above) }
}

type Judged = {
  readonly value: number
  readonly along: Beside
  readonly across: { readonly least: number; readonly most: number }
  readonly isEnd: boolean
  /** Greatest half breadth of the hull. */
  readonly scale: number
}

const isTooLarge = ({ value, along, across, scale }: Judged): boolean => {
  const byTimes = value > timesAlong * along.most && value > timesAcross * across.most
  const byGap = value - Math.max(along.most, across.most) > wideGap * scale
  return value - along.most > leastGap * scale && (byTimes || byGap)
}

/** Next to the centreline the section itself says nothing about a small figure: both stations beside must. */
const isTooSmall = ({ value, along, across, isEnd, scale }: Judged): boolean => {
  const bySection = timesAcross * value < across.least
  const byStations = !isEnd && timesAlong * value < along.least
  return (
    along.expected - value > leastGap * scale &&
    timesAlong * value < along.expected &&
    (bySection || byStations)
  )
}

/** A size most stations reach, so that one slip cannot set it. */
const typicalOf = (sizes: readonly number[]): number =>
  [...sizes].sort((a, b) => a - b)[Math.floor(0.75 * (sizes.length - 1))]!

const breadthSlips = (stations: readonly Station[], i: number, scale: number): readonly Note[] => {
  const station = stations[i]!
  const { lowest, highest } = heightRange(station)
  const isEnd = i === 0 || i === stations.length - 1
  if (highest === lowest || stations.length < fewestStations) return []
  return station.points.flatMap((point, j) => {
    if (j === 0) return []
    const along = besideAlong(stations, i, (point.z - lowest) / (highest - lowest))
    const judged = { value: point.y, along, across: besideAcross(station.points, j), isEnd, scale }
    if (!isTooLarge(judged) && !isTooSmall(judged)) return []
    const place = { station: station.id, xM: station.x, point: j + 1, heightM: point.z }
    return [fault('boat.halfBreadthJumps', { ...place, halfBreadthM: point.y, expectedM: along.expected })]
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

/** Slips of stations that `stationFaults` has let pass; stations and section must both disagree before a figure is doubted. */
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
