/** Stations of a scan that stands in the boat frame: cut, averaged, with the corners that run along the boat. Metres. */

import type { TriangleMesh } from '#core/geometry'
import type { Note } from '#core/note'
import { assumption, fault } from '../fault.ts'
import type { Knuckle, Station, StationPoint } from '../station.ts'
import { between, inSteps } from './half-section.ts'
import { type Corner, type KnuckleLines, knuckleLines } from './knuckle-lines.ts'
import { closedShare, pointShare, scanEnds } from './scan-ends.ts'
import { hasDeckAt, type ScanSection, type ScanSides, scanSection, sectionSteps } from './scan-section.ts'
import { type ScanTransom, scanTransom } from './scan-transom.ts'
import { reachedSheer } from './sheer-reach.ts'

export type ScanStations = {
  /** From aft to forward; none when a section is missing. */
  readonly stations: readonly Station[]
  readonly rake: number
  readonly notes: readonly Note[]
}

export type StationsAsked = {
  /** From the aftmost point at x = 0, m. */
  readonly length: number
  /** About the side of a triangle, m. */
  readonly grain: number
  readonly sides: ScanSides
}

/** 21 stations as on a lines plan, closer together toward the stem as drawn ones are. */
const intervals = 20
const shareAt = (k: number): number => Math.sin((Math.PI / 2) * (k / intervals))
/** Two sections nearer to each other than this share of the length tell no more than one. */
const leastApart = 0.002

/** The mesh begins at x = 0. */
export const stationsFromScan = (mesh: TriangleMesh, asked: StationsAsked): ScanStations => {
  const { length, grain, sides } = asked
  const transom = scanTransom(mesh, length)
  const hasDeck = isDecked(transom.mesh, asked)
  const section = (x: number) => scanSection(transom.mesh, x, { sides, hasDeck })
  const ends = scanEnds({ length, grain, transom: transom.reach, section })
  const places = Array.from(
    { length: intervals + 1 },
    (_, k) => ends.aft + (ends.fore - ends.aft) * shareAt(k),
  )
  const [aft, fore] = [ends.aftCuts[0], ends.foreCuts[0]]
  const apart = leastApart * length
  const inner = places.filter((x) => x > aft + apart && x < fore - apart)
  const xs = [aft, ...inner, fore]
  const cut = [...new Set([...xs, ends.aftCuts[1], ends.foreCuts[1]])].sort((a, b) => a - b)
  const found = cut.map(section)
  const missing = cut[found.indexOf(undefined)]
  if (missing !== undefined)
    return { stations: [], rake: 0, notes: [fault('boat.scanSectionMissing', { xM: missing })] }
  const reached = reachedSheer(found as readonly ScanSection[])
  const knuckles = knuckleLines(reached.sections, grain)
  const runs = runsOf(knuckles)
  const pointsAt = (x: number) => {
    const i = cut.indexOf(x)
    return rising(pointsOf(reached.sections[i]!, knuckles.corners[i]!, runs), grain)
  }
  const beam = Math.max(...xs.flatMap((x) => pointsAt(x).map(({ y }) => y)))
  const end = (at: number, [near, far]: readonly [number, number]): Row => ({
    x: at,
    points: closed(mixed(pointsAt(near), pointsAt(far), (at - near) / (far - near)), beam),
  })
  const middle = xs.map((x) => ({ x, points: pointsAt(x) }))
  const rows = [end(ends.aft, ends.aftCuts), ...middle, end(ends.fore, ends.foreCuts)]
  return {
    stations: places.map((x, k) => ({
      id: `${intervals - k}`,
      x: x - ends.aft,
      points: onePoint(pointsAtPlace(rows, x)),
    })),
    rake: transom.rake,
    notes: [...reached.notes, ...notesOf(reached.sections, knuckles, { transom, hasDeck, sides })],
  }
}

/** Whether most of the sections along the middle of the boat have a deck. */
const isDecked = (mesh: TriangleMesh, { length, sides }: StationsAsked): boolean => {
  const probes = [0.25, 0.4, 0.5, 0.6, 0.75]
  return 2 * probes.filter((share) => hasDeckAt(mesh, share * length, sides)).length > probes.length
}

type Row = { readonly x: number; readonly points: readonly StationPoint[] }

/** Of a place that was not cut, between the two that were: point by point. */
const pointsAtPlace = (rows: readonly Row[], x: number): readonly StationPoint[] => {
  const same = rows.find((row) => row.x === x)
  if (same) return same.points
  const after = rows.findIndex((row) => row.x > x)
  const [a, b] = [rows[after - 1]!, rows[after]!]
  return mixed(a.points, b.points, (x - a.x) / (b.x - a.x))
}

const mixed = (a: readonly StationPoint[], b: readonly StationPoint[], t: number): readonly StationPoint[] =>
  a.map((point, i) => {
    const { y, z } = between(point, b[i]!, t)
    return { ...point, y: Math.max(y, 0), z }
  })

/** An end that is sharp is closed, in a point where it is low. */
const closed = (points: readonly StationPoint[], beam: number): readonly StationPoint[] => {
  if (Math.max(...points.map(({ y }) => y)) > closedShare * beam) return points
  const [keel, sheer] = [points[0]!, points.at(-1)!]
  const isPoint = sheer.z - keel.z < pointShare * beam
  return points.map((point) => ({ ...point, y: 0, z: isPoint ? sheer.z : point.z }))
}

/** A hull that closes in a point has one there. */
const onePoint = (points: readonly StationPoint[]): readonly StationPoint[] => {
  const last = points.at(-1)!
  const isOne = points.every(({ y, z }) => y === last.y && z === last.z)
  return isOne ? [{ y: last.y, z: last.z }] : points
}

/** Points of a section without any corner, and the fewest of a strip between two. */
const [roundSteps, stripSteps] = [14, 3]
/** A corner farther up the girth than this is a rail and no chine; assumed. */
const railShare = 0.8

/** As many points from corner to corner at every station. */
const pointsOf = (
  { spots }: ScanSection,
  corners: readonly Corner[],
  lines: readonly KnuckleRun[],
): readonly StationPoint[] => {
  const cuts = [{ at: 0, spot: spots[0]! }, ...corners, { at: spots.length - 1, spot: spots.at(-1)! }]
  const strips = cuts.slice(1).map((to, k) => {
    const from = cuts[k]!
    // Beside a corner smoothing has taken something off.
    const guard = Math.min(Math.round(sectionSteps / 40), Math.floor((to.at - from.at) / 3))
    const first = from.at + (k > 0 ? guard : 1)
    const last = to.at - (k < corners.length ? guard : 1)
    return inSteps([from.spot, ...spots.slice(first, last + 1), to.spot], stepsOf(lines, k))
  })
  return strips.flatMap((strip, k) => {
    const knuckle = lines[k - 1]?.kind
    const own = strip.slice(0, k === strips.length - 1 ? undefined : -1)
    return own.map((point, i) => (i === 0 && knuckle ? { ...point, knuckle } : point))
  })
}

/** What falls by less than the noise of a scan, half a triangle, runs level. */
const rising = (points: readonly StationPoint[], grain: number): readonly StationPoint[] => {
  let highest = Number.NEGATIVE_INFINITY
  return points.map((point) => {
    const isNoise = point.z < highest && highest - point.z < grain / 2
    highest = Math.max(highest, point.z)
    return isNoise ? { ...point, z: highest } : point
  })
}

type KnuckleRun = { readonly kind: Knuckle; readonly share: number }

const runsOf = ({ corners }: KnuckleLines): readonly KnuckleRun[] =>
  corners[0]!.map((_, k) => {
    const share = corners.reduce((sum, own) => sum + own[k]!.at, 0) / corners.length / sectionSteps
    return { kind: share > railShare ? 'rail' : 'chine', share }
  })

const stepsOf = (lines: readonly KnuckleRun[], k: number): number => {
  const share = (lines[k]?.share ?? 1) - (lines[k - 1]?.share ?? 0)
  return Math.max(stripSteps, Math.round(roundSteps * share))
}

type Made = { readonly transom: ScanTransom; readonly hasDeck: boolean; readonly sides: ScanSides }

/** Gaps wider than this share of the girth, and than this, m, are told. */
const [toldGap, leastGap] = [0.03, 0.05]

const notesOf = (
  sections: readonly ScanSection[],
  { shown }: KnuckleLines,
  { transom, hasDeck, sides }: Made,
): readonly Note[] => {
  const gaps = sections.filter(({ widestGap, girth }) => widestGap > Math.max(toldGap * girth, leastGap))
  const widestM = Math.max(0, ...gaps.map(({ widestGap }) => widestGap))
  const info = (code: string, data: Note['data']): Note => ({ code, severity: 'info', data })
  return [
    ...(gaps.length > 0 ? [assumption('boat.scanHolesBridged', { stations: gaps.length, widestM })] : []),
    ...(hasDeck ? [info('boat.scanDeckCut', {})] : []),
    ...shown.map((stations) => info('boat.scanCornerFound', { stations, of: sections.length })),
    ...(transom.rake === 0 ? [] : [info('boat.scanTransomFound', { angleRad: transom.rake })]),
    ...(sides === 'both' ? [] : [assumption('boat.scanMirrored', { side: sides })]),
  ]
}
