/** OBJ: lines `v x y z` and `f a b c …` with numbers of points from 1, or back from the last with a minus. */
import type { TriangleMesh } from '#core/geometry'
import { ByteScan } from './byte-scan.ts'
import { GrowingPoints, GrowingTriangles } from './growing.ts'
import { MeshFault } from './mesh-fault.ts'
import { look, type MeshWatch, rowsBetween } from './mesh-watch.ts'

const [letterV, letterF, space, tab, minus, slash, zero, nine] = [118, 102, 32, 9, 45, 47, 48, 57]
/** No number of a point is longer. */
const mostIndex = 0xffffffff

export type SplitMesh = {
  readonly mesh: TriangleMesh
  /** Faces of more than three corners, cut into triangles from their first. */
  readonly split: number
}

type Reading = {
  readonly scan: ByteScan
  readonly points: GrowingPoints
  readonly triangles: GrowingTriangles
  /** The greatest point named so far, from 0, and the line that did. */
  greatest: number
  greatestLine: number
  split: number
}

export function readObj(bytes: Uint8Array, watch: MeshWatch): SplitMesh {
  const scan = new ByteScan(bytes, { at: 0, line: 1 })
  const reading: Reading = {
    scan,
    points: new GrowingPoints(),
    triangles: new GrowingTriangles(),
    greatest: -1,
    greatestLine: 0,
    split: 0,
  }
  for (let row = 0; !scan.ended; row++) {
    if ((row & rowsBetween) === 0) look(watch, scan.at, bytes.length)
    readLine(reading)
  }
  const { points, triangles, greatest, greatestLine, split } = reading
  if (greatest >= points.count)
    throw new MeshFault('intake.meshIndex', { found: greatest + 1, points: points.count }, greatestLine)
  return { mesh: { positions: points.taken(), triangles: triangles.taken() }, split }
}

function readLine(reading: Reading): void {
  const { scan, points } = reading
  scan.skipBlanks()
  const kind = scan.bytes[scan.at]
  const after = scan.bytes[scan.at + 1]
  if ((kind === letterV || kind === letterF) && (after === space || after === tab)) {
    scan.at++
    if (kind === letterF) readFace(reading)
    else {
      scan.skipBlanks()
      const x = scan.number()
      scan.skipBlanks()
      const y = scan.number()
      scan.skipBlanks()
      points.add(x, y, scan.number())
    }
  }
  scan.skipLine()
}

function readFace(reading: Reading): void {
  const { scan, triangles } = reading
  const line = scan.line
  let first = -1
  let last = -1
  let corners = 0
  while (!scan.atLineEnd()) {
    const corner = readIndex(reading)
    if (corners === 0) first = corner
    else if (corners > 1) triangles.add(first, last, corner)
    last = corner
    corners++
  }
  if (corners < 3) throw new MeshFault('intake.meshCorners', {}, line)
  if (corners > 3) reading.split++
}

/** The point that `7`, `7/2`, `7//3` or `-1` names, from 0. */
function readIndex(reading: Reading): number {
  const { scan, points } = reading
  const { bytes } = scan
  const isBack = bytes[scan.at] === minus
  let at = isBack ? scan.at + 1 : scan.at
  const first = at
  let value = 0
  for (; at < bytes.length && bytes[at]! >= zero && bytes[at]! <= nine; at++)
    value = Math.min(value * 10 + (bytes[at]! - zero), mostIndex)
  const end = bytes[at]
  if (at === first || (end !== undefined && end > space && end !== slash))
    throw new MeshFault('intake.meshNumberNotRead', { found: scan.told() }, scan.line)
  const index = isBack ? points.count - value : value - 1
  if (index < 0 || value === 0)
    throw new MeshFault(
      'intake.meshIndex',
      { found: isBack ? -value : value, points: points.count },
      scan.line,
    )
  while (at < bytes.length && bytes[at]! > space) at++
  scan.at = at
  if (index > reading.greatest) {
    reading.greatest = index
    reading.greatestLine = scan.line
  }
  return index
}
