/**
 * Splits stations at their knuckles into strips that run the whole length, so that lofting joins like with like:
 * a flat of the keel where there is one, then from knuckle to knuckle up to the sheer.
 */

import { sectionCurve, sectionPointAt } from '#core/geometry'
import type { Note } from '#core/note'
import { assumption, fault } from './fault.ts'
import type { Station, StationPoint } from './station.ts'

/** What runs along the upper edge of a strip. */
export type StripEdge = 'keel' | 'chine' | 'rail' | 'sheer'

export type StationStrips = {
  /** Upper edge of each strip, keel to sheer; the same for every station. */
  readonly edges: readonly StripEdge[]
  /** By station, then by strip: the points from its lower to its upper edge. */
  readonly strips: readonly (readonly (readonly StationPoint[])[])[]
  readonly notes: readonly Note[]
}

type Corner = { readonly index: number; readonly kind: 'chine' | 'rail' }

/** Knuckles inside a section; at keel and sheer the section ends anyway. */
const cornersOf = ({ points }: Station): readonly Corner[] =>
  points.flatMap(({ knuckle }, index) =>
    index > 0 && index < points.length - 1 && (knuckle === 'chine' || knuckle === 'rail')
      ? [{ index, kind: knuckle }]
      : [],
  )

const kindsOf = (corners: readonly Corner[]): string => corners.map((corner) => corner.kind).join(' ')

const isOnePoint = ({ points }: Station): boolean =>
  points.every((point) => Math.hypot(point.y - points[0]!.y, point.z - points[0]!.z) < 1e-9)

const chordsOf = ({ points }: Station): readonly number[] => {
  const sums = [0]
  for (let i = 1; i < points.length; i++) {
    const [a, b] = [points[i - 1]!, points[i]!]
    sums.push(sums[i - 1]! + Math.hypot(b.y - a.y, b.z - a.z))
  }
  return sums
}

/** Share of the girth at each corner. */
const sharesOf = (station: Station): readonly number[] => {
  const chords = chordsOf(station)
  return cornersOf(station).map(({ index }) => chords[index]! / chords.at(-1)!)
}

type Reference = { readonly x: number; readonly shares: readonly number[] }

/** Shares at a place between the stations that have them; the nearest one's beyond the last of those. */
const sharesAt = (references: readonly Reference[], x: number): readonly number[] => {
  const after = references.findIndex((reference) => reference.x >= x)
  if (after <= 0) return (after < 0 ? references.at(-1)! : references[0]!).shares
  const [a, b] = [references[after - 1]!, references[after]!]
  const t = (x - a.x) / (b.x - a.x)
  return a.shares.map((share, k) => share + t * (b.shares[k]! - share))
}

const splitAtCorners = (points: readonly StationPoint[], corners: readonly number[]) => {
  const cuts = [0, ...corners, points.length - 1]
  return cuts.slice(1).map((to, k) => points.slice(cuts[k]!, to + 1))
}

/** Splits a section without corners of its own at shares of its girth. */
const splitAtShares = (station: Station, shares: readonly number[]) => {
  const curve = sectionCurve(station.points)
  const knots = curve.y.knots
  const at = (v: number): StationPoint => {
    const { y, z } = sectionPointAt(curve, v)
    return { y, z }
  }
  const cuts = [0, ...shares, 1]
  return cuts.slice(1).map((to, k) => {
    const from = cuts[k]!
    return [at(from), ...knots.filter((v) => v > from && v < to).map(at), at(to)]
  })
}

const withKeelFlat = (strips: readonly (readonly StationPoint[])[]): readonly (readonly StationPoint[])[] => {
  const edge = strips[0]![0]!
  return [[{ y: 0, z: edge.z }, edge], ...strips]
}

/** A first point nearer the middle than this stands on it. */
const onCentreline = 1e-6

const keelFlatNotes = (stations: readonly Station[]): readonly Note[] => {
  const flats = stations.map((station) => station.points[0]!.y)
  const widestM = 2 * Math.max(...flats)
  const count = flats.filter((y) => y > onCentreline).length
  return count > 0 ? [assumption('boat.keelFlatAssumed', { stations: count, widestM })] : []
}

const differing = (station: Station, own: number, expected: number): Note =>
  fault('boat.knucklesDiffer', { station: station.id, xM: station.x, count: own, expected })

/**
 * Strips of all stations. A station without any knuckle, where others have some, gets them at the share of the girth
 * they have beside it, with a note; one with other knuckles than the rest is a fault.
 */
export const stationStrips = (stations: readonly Station[]): StationStrips => {
  const corners = stations.map(cornersOf)
  const reference = corners.reduce((most, one) => (one.length > most.length ? one : most), [])
  const kinds = kindsOf(reference)
  const references = stations
    .filter((_, i) => kindsOf(corners[i]!) === kinds)
    .map((station) => ({ x: station.x, shares: sharesOf(station) }))
  const notes: Note[] = [...keelFlatNotes(stations)]
  const hasFlat = notes.length > 0
  const strips = stations.map((station, i) => {
    const own = corners[i]!
    if (isOnePoint(station)) return reference.map(() => station.points).concat([station.points])
    if (kindsOf(own) === kinds)
      return splitAtCorners(
        station.points,
        own.map((corner) => corner.index),
      )
    if (own.length > 0) notes.push(differing(station, own.length, reference.length))
    else
      notes.push(
        assumption('boat.knuckleAssumed', { station: station.id, xM: station.x, knuckles: reference.length }),
      )
    return splitAtShares(station, sharesAt(references, station.x))
  })
  return {
    edges: [...(hasFlat ? (['keel'] as const) : []), ...reference.map((corner) => corner.kind), 'sheer'],
    strips: hasFlat ? strips.map(withKeelFlat) : strips,
    notes,
  }
}
