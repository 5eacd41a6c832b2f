/** A 3D scan on its way to a hull, in plain values that a worker can hand to a page. Metres, as the scan was laid. */
import {
  guessUnit,
  type HullOutline,
  type HullZoneKind,
  hullFromScan,
  hullOutline,
  hullZones,
  isTwin,
  type Laying,
  layScan,
  type PreparedScan,
  prepareScan,
  type ScanAnswers,
  type ScanResidual,
  type ScanSides,
  type ScanUnit,
  type Station,
} from '#core/boat'
import {
  type Box,
  type MeshFindings,
  meshBox,
  movedMesh,
  type Point3,
  repairMesh,
  type Similarity,
  type TriangleMesh,
} from '#core/geometry'
import type { Note } from '#core/note'
import { usualBottom } from './colours.ts'

export { metresIn } from '#core/boat'
export type { Box, Laying, Point3, PreparedScan, ScanAnswers, ScanSides, ScanUnit, Similarity, Station }

/** What is told of a scan once it is read. */
export type SeenScan = Pick<PreparedScan, 'triangles' | 'takenOffShare' | 'settled' | 'size'> & {
  readonly found: MeshFindings
  readonly unit: ScanUnit
  readonly unitNotes: readonly Note[]
  /** Whether its two sides are mirror images. */
  readonly twin: boolean
}

export type OpenedScan = { readonly scan: PreparedScan; readonly seen: SeenScan }

export type ScanFile = {
  readonly mesh: TriangleMesh
  readonly distinct: boolean
  readonly unit: ScanUnit | undefined
}

/** Puts a scan in order and takes its noise out; undefined when it was not to go on. */
export function openScan(
  { mesh, distinct, unit: told }: ScanFile,
  goesOn: (rounds: number) => boolean,
): OpenedScan | undefined {
  const repaired = repairMesh(mesh, { tolerance: 0, distinct })
  const scan = prepareScan(repaired, goesOn)
  if (scan === undefined) return undefined
  const { triangles, takenOffShare, settled, size } = scan
  const { unit, notes } = guessUnit(size, told)
  const twin = isTwin(scan.symmetry, size)
  return {
    scan,
    seen: { triangles, takenOffShare, settled, size, found: repaired.found, unit, unitNotes: notes, twin },
  }
}

export type ScanView = 'side' | 'above' | 'astern'
export type ScanOutline = readonly (readonly [number, number])[]

/** What is drawn of a scan. */
export type LaidScan = {
  readonly box: Box
  /** x, y, z of the middles of some of its triangles. */
  readonly dots: Float32Array
  readonly outlines: Readonly<Record<ScanView, ScanOutline>>
}

const axesOf: Readonly<Record<ScanView, readonly [keyof Point3, keyof Point3]>> = {
  side: ['x', 'z'],
  above: ['x', 'y'],
  astern: ['y', 'z'],
}
const mostDots = 2400
/** Steps of an outline along the boat; fewer across her, where the triangles are as large. */
const [mostBins, fewestBins] = [120, 24]

/** Lays a scan for a person to set marks on; undefined without any area. */
export function laidScan(
  scan: PreparedScan,
  laying: Laying,
): { readonly laid: Similarity; readonly shown: LaidScan } | undefined {
  const laid = layScan(scan, laying)
  if (laid === undefined) return undefined
  const mesh = movedMesh(scan.mesh, laid)
  const box = meshBox(mesh)
  if (box === undefined) return undefined
  const outlines = {
    side: outlineOf(mesh, box, 'side'),
    above: outlineOf(mesh, box, 'above'),
    astern: outlineOf(mesh, box, 'astern'),
  }
  return { laid, shown: { box, dots: dotsOf(mesh), outlines } }
}

function dotsOf({ positions, triangles }: TriangleMesh): Float32Array {
  const count = triangles.length / 3
  const stride = Math.max(1, Math.ceil(count / mostDots))
  const dots = new Float32Array(3 * Math.ceil(count / stride))
  for (let t = 0, at = 0; t < count; t += stride, at += 3)
    for (let k = 0; k < 3; k++) {
      const sum = [0, 1, 2].reduce((all, corner) => all + positions[3 * triangles[3 * t + corner]! + k]!, 0)
      dots[at + k] = sum / 3
    }
  return dots
}

/** The upper edge of what is seen from one end to the other, and the lower one back. */
function outlineOf({ positions }: TriangleMesh, { least, most }: Box, view: ScanView): ScanOutline {
  const [u, v] = axesOf[view]
  const [from, size] = [least[u], Math.max(most[u] - least[u], 1e-9)]
  const [at, up] = [offsetOf(u), offsetOf(v)]
  const along = Math.max(most.x - least.x, 1e-9)
  const bins = Math.max(fewestBins, Math.min(mostBins, Math.round((mostBins * size) / along)))
  const low = new Float64Array(bins).fill(Number.POSITIVE_INFINITY)
  const high = new Float64Array(bins).fill(Number.NEGATIVE_INFINITY)
  for (let p = 0; p < positions.length; p += 3) {
    const bin = Math.min(Math.floor((bins * (positions[p + at]! - from)) / size), bins - 1)
    low[bin] = Math.min(low[bin]!, positions[p + up]!)
    high[bin] = Math.max(high[bin]!, positions[p + up]!)
  }
  const place = (bin: number): number => from + (size * (bin + 0.5)) / bins
  const seen = Array.from({ length: bins }, (_, bin) => bin).filter((bin) => high[bin]! >= low[bin]!)
  // One step without a point of the rim in it is no notch.
  const filled = (
    edge: Float64Array,
    least: (a: number, b: number) => number,
    most: (a: number, b: number) => number,
  ) =>
    seen.map((bin, k) => {
      const [before, after] = [edge[seen[k - 1] ?? bin]!, edge[seen[k + 1] ?? bin]!]
      return [place(bin), most(edge[bin]!, least(before, after))] as const
    })
  const upper = filled(high, Math.min, Math.max)
  const lower = filled(low, Math.max, Math.min)
  return [...upper, ...lower.reverse()]
}

const offsetOf = (axis: keyof Point3): number => ({ x: 0, y: 1, z: 2 })[axis]

export type Pick3 = {
  readonly view: ScanView
  /** Where it was touched, along the two axes of the view. */
  readonly at: readonly [number, number]
  /** Which side of the boat is meant; on the centreline the middle of both. */
  readonly side: 'port' | 'starboard' | 'middle'
}

/** How far beside the place points still count, m; and how many of the nearest there are when none is. */
const pickReach = 0.04

/** The place on a scan that is meant by a touch in one of its views. */
export function pickOnScan({ mesh }: PreparedScan, laid: Similarity, { view, at, side }: Pick3): Point3 {
  const [u, v] = axesOf[view]
  const deep = (['x', 'y', 'z'] as const).find((axis) => axis !== u && axis !== v)!
  const { positions } = movedMesh(mesh, laid)
  const [i, k, d] = [offsetOf(u), offsetOf(v), offsetOf(deep)]
  let nearest = Number.POSITIVE_INFINITY
  for (let p = 0; p < positions.length; p += 3)
    nearest = Math.min(nearest, Math.hypot(positions[p + i]! - at[0], positions[p + k]! - at[1]))
  let [least, most] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY]
  for (let p = 0; p < positions.length; p += 3) {
    const off = Math.hypot(positions[p + i]! - at[0], positions[p + k]! - at[1])
    if (off > nearest + pickReach) continue
    least = Math.min(least, positions[p + d]!)
    most = Math.max(most, positions[p + d]!)
  }
  const middle = (least + most) / 2
  const depth =
    deep === 'y' && side !== 'middle' ? (side === 'port' ? most : least) : deep === 'x' ? least : middle
  return { ...{ x: 0, y: 0, z: 0 }, [u]: at[0], [v]: at[1], [deep]: depth }
}

/** A hull from a scan as it is shown before a person takes it. */
export type ScanHull =
  | {
      readonly ok: true
      readonly outline: HullOutline
      readonly zones: readonly { readonly kind: HullZoneKind; readonly areaM2: number }[]
      readonly stations: readonly Station[]
      readonly factor: number
      readonly deviationM: number | undefined
      readonly lengthM: number
      readonly rakeRad: number
      readonly marks: readonly ScanResidual[]
      readonly notes: readonly Note[]
    }
  | { readonly ok: false; readonly notes: readonly Note[] }

/** Works the hull out of a scan and what a person said of it. */
export function scanHull(scan: PreparedScan, answers: ScanAnswers): ScanHull {
  const result = hullFromScan(scan, answers)
  if (!result.ok) return result
  const { hull, stations, factor, deviation, length, rake, fit, notes } = result
  const bottomTo = usualBottom(hull)
  return {
    ok: true,
    outline: hullOutline(hull, [0]),
    zones: hullZones(hull, { bottomTo }).zones.map(({ kind, area }) => ({ kind, areaM2: area })),
    stations,
    factor,
    deviationM: deviation,
    lengthM: length,
    rakeRad: rake,
    marks: fit.marks,
    notes,
  }
}
