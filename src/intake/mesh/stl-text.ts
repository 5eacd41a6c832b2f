/** STL in letters: facets of three corners each, no two of them said to share a point. */
import type { TriangleMesh } from '#core/geometry'
import { ByteScan, bytesOf } from './byte-scan.ts'
import { GrowingPoints } from './growing.ts'
import { MeshFault } from './mesh-fault.ts'
import { look, type MeshWatch, rowsBetween } from './mesh-watch.ts'
import { eachByItself } from './triangles-of.ts'

const vertex = bytesOf('vertex')
/** Lines that frame the corners: what they say besides is in the corners too, or a name. */
const frames: readonly Uint8Array[] = ['endloop', 'facet', 'outer', 'endfacet', 'endsolid', 'solid'].map(
  bytesOf,
)
const endLoop = frames[0]!
const endSolid = frames[4]!

export function readStlText(bytes: Uint8Array, watch: MeshWatch): TriangleMesh {
  const scan = new ByteScan(bytes, { at: 0, line: 1 })
  const points = new GrowingPoints()
  let isClosed = false
  let row = 0
  let inLoops = 0
  for (scan.skipSpace(); !scan.ended; scan.skipSpace()) {
    if ((row++ & rowsBetween) === 0) look(watch, scan.at, bytes.length)
    if (scan.takes(vertex)) addCorner(scan, points)
    else {
      const frame = frames.find((word) => scan.takes(word))
      if (frame === undefined) throw oddWord(scan)
      if (frame === endLoop) inLoops = endedLoop(scan, points, inLoops)
      else scan.skipLine()
      isClosed = frame === endSolid
    }
  }
  if (!isClosed || points.count !== inLoops)
    throw new MeshFault('intake.meshCutShort', { sizeBytes: bytes.length }, scan.line)
  const positions = points.taken()
  return { positions, triangles: eachByItself(positions.length / 3) }
}

/** A word that no file of STL has, or the beginning of one at the end of a file that was cut off. */
function oddWord(scan: ByteScan): MeshFault {
  const found = scan.told()
  const sizeBytes = scan.bytes.length
  if (scan.at + found.length >= sizeBytes)
    return new MeshFault('intake.meshCutShort', { sizeBytes }, scan.line)
  return new MeshFault('intake.meshWord', { found }, scan.line)
}

function addCorner(scan: ByteScan, points: GrowingPoints): void {
  scan.skipBlanks()
  const x = scan.number()
  scan.skipBlanks()
  const y = scan.number()
  scan.skipBlanks()
  points.add(x, y, scan.number())
}

/** The corners there are now: three more than at the end of the loop before. */
function endedLoop(scan: ByteScan, points: GrowingPoints, before: number): number {
  if (points.count !== before + 3) throw new MeshFault('intake.meshCorners', {}, scan.line)
  return points.count
}
