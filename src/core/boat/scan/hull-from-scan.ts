/** From a scan and what a person said of it to the hull: scale, frame, stations, and whether a surface goes through them. */

import {
  type Box,
  cropMesh,
  distance3,
  inOrder,
  meshArea,
  meshBox,
  movedMesh,
  movedPoint,
  moving,
  type Point3,
  repairMesh,
  type Similarity,
  type SymmetryPlane,
  scaling,
  symmetryPlane,
  type TriangleMesh,
} from '#core/geometry'
import type { Note } from '#core/note'
import { assumption } from '../fault.ts'
import type { Hull } from '../hull.ts'
import { hullFromStations } from '../hull-from-stations.ts'
import type { Station } from '../station.ts'
import { isTwin } from './lay-scan.ts'
import { grainOf, type PreparedScan, withoutCrumbs } from './prepare-scan.ts'
import { type ScanFit, type ScanMark, scanFrame } from './scan-frame.ts'
import { scaleByTape, unchecked } from './scan-scale.ts'
import type { ScanSides } from './scan-section.ts'
import { stationsFromScan } from './scan-stations.ts'

/** One length that was taped on the boat: between two places picked on the scan, or over all. */
export type ScanCheck =
  | { readonly kind: 'between'; readonly places: readonly [Point3, Point3]; readonly length: number }
  | { readonly kind: 'overall'; readonly length: number }

/** Places are in metres as the scan was laid. */
export type ScanAnswers = {
  /** From the file's axes and unit to where it was laid, see `layScan`. */
  readonly laid: Similarity
  readonly check: ScanCheck | undefined
  readonly marks: readonly ScanMark[]
  /** What of it is the hull; absent when all of it is. */
  readonly crop: Box | undefined
  readonly sides: ScanSides
}

export type HullFromScan = {
  readonly ok: true
  readonly hull: Hull
  readonly stations: readonly Station[]
  /** By what it was made larger than it came. */
  readonly factor: number
  readonly fit: ScanFit
  /** How far its two sides differ, root mean square, m; absent where one side was scanned, or they have nothing in common. */
  readonly deviation?: number
  readonly length: number
  /** Rake of the transom, rad. */
  readonly rake: number
  readonly notes: readonly Note[]
}

export type ScanHullResult = HullFromScan | { readonly ok: false; readonly notes: readonly Note[] }

type Twin = { readonly plane: SymmetryPlane['plane']; readonly box: Box; readonly deviation: number }

/** The hull in a scan, or why there is none. */
export const hullFromScan = (scan: PreparedScan, answers: ScanAnswers): ScanHullResult => {
  const { mesh, twin, notes: cropped } = laidScan(scan, answers)
  const first = scaledAndFitted(mesh, answers, twin)
  if (!first.ok) return first
  const { factor, fit, notes: told } = first
  const stood = movedMesh(mesh, fit.move)
  const box = meshBox(stood)!
  const length = box.most.x - box.least.x
  const move = inOrder(fit.move, moving({ x: -box.least.x, y: 0, z: 0 }))
  const afloat = movedMesh(mesh, move)
  const grain = grainOf(afloat, meshArea(afloat))
  const { stations, rake, notes: cut } = stationsFromScan(afloat, { length, grain, sides: answers.sides })
  const notes = [...noiseNotes(scan), ...cropped, ...told, ...cut]
  if (stations.length === 0) return { ok: false, notes }
  const result = hullFromStations(stations)
  if (!result.ok) return { ok: false, notes: [...notes, ...result.faults] }
  return {
    ok: true,
    hull: result.hull,
    stations,
    factor,
    fit: { ...fit, move },
    ...(twin ? { deviation: factor * twin.deviation } : {}),
    length,
    rake,
    notes: [...notes, ...result.notes],
  }
}

const noiseNotes = ({ settled, lastChangeShare, crumbs }: PreparedScan): readonly Note[] => [
  ...(settled
    ? []
    : [{ code: 'boat.scanNoiseLeft', severity: 'missing', data: { lastChangeShare } } as const]),
  ...(crumbs > 0 ? [{ code: 'boat.scanCrumbs', severity: 'info', data: { count: crumbs } } as const] : []),
]

/** As it was laid, cropped, with its plane of symmetry there. */
const laidScan = (
  scan: PreparedScan,
  { laid, crop, sides }: ScanAnswers,
): { readonly mesh: TriangleMesh; readonly twin: Twin | undefined; readonly notes: readonly Note[] } => {
  const whole = movedMesh(scan.mesh, laid)
  const again = crop ? repairMesh(cropMesh(whole, crop), { tolerance: 0, distinct: true }) : undefined
  const mesh = again ? withoutCrumbs(again.mesh, again).mesh : whole
  const box = meshBox(mesh)
  if (sides !== 'both' || box === undefined) return { mesh, twin: undefined, notes: [] }
  const symmetry = again ? symmetryPlane(again.mesh) : scan.symmetry && movedSymmetry(scan.symmetry, laid)
  if (isTwin(symmetry, box.most.x - box.least.x))
    return { mesh, twin: { plane: symmetry.plane, box, deviation: symmetry.rmsDeviation }, notes: [] }
  return { mesh, twin: undefined, notes: [assumption('boat.scanNotSymmetric', {})] }
}

const movedSymmetry = (
  { plane, rmsDeviation, matchedShare }: SymmetryPlane,
  by: Similarity,
): SymmetryPlane => {
  const { normal, offset } = plane
  const foot = movedPoint(by, { x: normal.x * offset, y: normal.y * offset, z: normal.z * offset })
  const straight = { ...by, scale: 1, move: { x: 0, y: 0, z: 0 } }
  const turned = movedPoint(straight, normal)
  return {
    plane: { normal: turned, offset: turned.x * foot.x + turned.y * foot.y + turned.z * foot.z },
    rmsDeviation: by.scale * rmsDeviation,
    matchedShare,
  }
}

type Fitted =
  | { readonly ok: true; readonly factor: number; readonly fit: ScanFit; readonly notes: readonly Note[] }
  | { readonly ok: false; readonly notes: readonly Note[] }

/** Scaled by the taped length, then put into the frame; a length over all is measured in the frame first. */
const scaledAndFitted = (mesh: TriangleMesh, answers: ScanAnswers, twin: Twin | undefined): Fitted => {
  const { check } = answers
  if (mesh.triangles.length === 0)
    return { ok: false, notes: [{ code: 'boat.scanNothingLeft', severity: 'fault', data: {} }] }
  if (check === undefined) return framed({ answers, twin, factor: 1, notes: [unchecked] })
  let seen = check.kind === 'between' ? distance3(...check.places) : 0
  if (check.kind === 'overall') {
    const whole = framed({ answers, twin, factor: 1, notes: [] })
    if (!whole.ok) return whole
    const box = meshBox(movedMesh(mesh, whole.fit.move))!
    seen = box.most.x - box.least.x
  }
  const scale = scaleByTape({ seen, taped: check.length })
  return scale.ok ? framed({ answers, twin, factor: scale.factor, notes: scale.notes }) : scale
}

type Framing = {
  readonly answers: ScanAnswers
  readonly twin: Twin | undefined
  readonly factor: number
  readonly notes: readonly Note[]
}

const framed = ({ answers, twin, factor, notes }: Framing): Fitted => {
  const larger = scaling(factor)
  const marks = answers.marks.map((mark) => ({ ...mark, at: movedPoint(larger, mark.at) }))
  const mirror = twin && {
    plane: { normal: twin.plane.normal, offset: factor * twin.plane.offset },
    box: { least: movedPoint(larger, twin.box.least), most: movedPoint(larger, twin.box.most) },
  }
  const frame = scanFrame({ marks, ...(mirror ? { mirror } : {}) })
  if (!frame.ok) return { ok: false, notes: [...notes, ...frame.notes] }
  const move = inOrder(larger, frame.fit.move)
  return { ok: true, factor, fit: { ...frame.fit, move }, notes: [...notes, ...frame.notes] }
}
