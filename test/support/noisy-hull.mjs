// A scan of the parabolic hull as a phone makes it, and what its surface really is: for the test at a reduced size and
// the bench at the full one. Wetted area and design waterline of the hull of 1 m and of 4 m by two quadratures.

import { hullFromScan, hullZones, prepareScan } from '#core/boat'
import {
  levelPlane,
  movedMesh,
  planeSection,
  repairMesh,
  scaling,
  scalingTo,
  smoothMesh,
  splitByPlane,
} from '#core/geometry'
import { noisy, parabolicHull } from './hull-meshes.mjs'

const length = 7.5
export const trueWettedArea = 0.14879063105 * length ** 2
export const trueWaterline = (4.0265089089 * length) / 4

/** @typedef {{ along: number, up: number, upAbove: number, deviation: number, scaleError: number, seed: number }} Scan */

/**
 * Measures a scan with topsides of 0.4 m: noise on every coordinate, a scale that is wrong by a share and put right by
 * the length between the two ends of the sheer, as they are seen in the scan.
 *
 * @param {Scan} scan
 */
export function measuredScan({ along, up, upAbove, deviation, scaleError, seed }) {
  const hull = parabolicHull({ length, along, up, topsides: 0.4, upAbove, joined: true })
  const { mesh, across } = repairMesh(hull, { tolerance: 0, distinct: false })
  const seen = movedMesh(noisy(mesh, { deviation, seed }), scaling(1 + scaleError))
  const put = scaleError === 0 ? scaling(1) : scalingTo(length, endsOf(mesh, seen))
  if (put === undefined) throw new Error('the ends of the sheer are in one place')
  const smoothed = smoothMesh(movedMesh(seen, put), { across, goesOn: () => true })
  if (smoothed === undefined) throw new Error('smoothing did not go on')
  const lines = planeSection(smoothed.mesh, levelPlane(0))
  return {
    triangles: mesh.triangles.length / 3,
    rounds: smoothed.rounds,
    settled: smoothed.settled,
    takenOffShare: 1 - smoothed.areaAfter / smoothed.areaBefore,
    lines: lines.length,
    areaError: splitByPlane(smoothed.mesh, levelPlane(0)).below.area / trueWettedArea - 1,
    waterlineError: (lines[0]?.length ?? 0) / 2 / trueWaterline - 1,
  }
}

const topsides = 0.4
/** Both sides of the hull with its topsides, which stand upright on the design waterline. */
export const trueHullArea = trueWettedArea + 2 * topsides * trueWaterline

/**
 * The hull that comes of the same scan by marks on the water at the stem and on both sides, and its length: how far
 * its area and its length on the water are off.
 *
 * @param {Scan} scan
 */
export function hullOfScan({ along, up, upAbove, deviation, scaleError, seed }) {
  const hull = parabolicHull({ length, along, up, topsides, upAbove, joined: true })
  const repaired = repairMesh(hull, { tolerance: 0, distinct: false })
  const larger = scaling(1 + scaleError)
  const mesh = movedMesh(noisy(repaired.mesh, { deviation, seed }), larger)
  const ends = endsOf(repaired.mesh, mesh)
  const scan = prepareScan({ ...repaired, mesh }, () => true)
  if (scan === undefined) throw new Error('smoothing did not go on')
  const s = 1 + scaleError
  const result = hullFromScan(scan, {
    laid: scaling(1),
    check: scaleError === 0 ? undefined : { kind: 'between', places: ends, length },
    marks: [
      { id: 'stem', at: { x: (s * length) / 2, y: 0, z: 0 }, centred: true, height: 0 },
      { id: 'port', at: { x: -1.5 * s, y: 0.315 * s, z: 0 }, centred: false, height: 0 },
      { id: 'starboard', at: { x: -1.5 * s, y: -0.315 * s, z: 0 }, centred: false, height: 0 },
    ],
    crop: undefined,
    sides: 'both',
  })
  if (!result.ok) throw new Error(`no hull: ${JSON.stringify(result.notes)}`)
  const { zones } = hullZones(result.hull, { bottomTo: { kind: 'height', z: 0 } })
  return {
    areaError: zones.reduce((sum, { area }) => sum + area, 0) / trueHullArea - 1,
    waterlineError: result.hull.particulars.lengthWaterline / length - 1,
    factor: result.factor,
    deviation: result.deviation ?? 0,
  }
}

/**
 * Where the ends of the sheer of the true hull lie in the scan.
 *
 * @param {{ positions: Float64Array }} hull
 * @param {{ positions: Float64Array }} seen
 * @returns {[import('#core/geometry').Point3, import('#core/geometry').Point3]}
 */
function endsOf(hull, seen) {
  const at = (/** @type {number} */ x) => {
    for (let p = 0; p < hull.positions.length; p += 3) {
      const [px, , pz] = hull.positions.subarray(p, p + 3)
      if (Math.abs((px ?? 0) - x) + Math.abs((pz ?? 0) - 0.4) < 1e-9) {
        const [sx = 0, sy = 0, sz = 0] = seen.positions.subarray(p, p + 3)
        return { x: sx, y: sy, z: sz }
      }
    }
    throw new Error('the hull has no such end')
  }
  return [at(-length / 2), at(length / 2)]
}
