/** STL in bytes: a header of 80, a count, then 50 a triangle: normal, three corners, two spare; little-endian. */
import type { TriangleMesh } from '#core/geometry'
import { MeshFault } from './mesh-fault.ts'
import { mostTriangles } from './mesh-limits.ts'
import { look, type MeshWatch, rowsBetween } from './mesh-watch.ts'
import { eachByItself } from './triangles-of.ts'

/** Where the triangles begin, and how long each is. */
export const [stlHead, stlRow] = [84, 50]

/** How many triangles the file says it holds. */
export function stlCount(bytes: Uint8Array): number {
  return bytes.length < stlHead ? 0 : viewOf(bytes).getUint32(80, true)
}

export function readStlBinary(bytes: Uint8Array, watch: MeshWatch): TriangleMesh {
  const count = stlCount(bytes)
  const neededBytes = stlHead + stlRow * count
  if (count > mostTriangles) throw new MeshFault('intake.meshTooManyTriangles', { most: mostTriangles })
  if (neededBytes > bytes.length)
    throw new MeshFault('intake.meshCutShort', { sizeBytes: bytes.length, neededBytes })
  const view = viewOf(bytes)
  const positions = new Float64Array(9 * count)
  for (let first = 0; first < count; first += rowsBetween + 1) {
    look(watch, first, count)
    copyCorners(view, positions, { first, end: Math.min(first + rowsBetween + 1, count) })
  }
  return { positions, triangles: eachByItself(3 * count) }
}

function copyCorners(
  view: DataView,
  positions: Float64Array,
  { first, end }: { readonly first: number; readonly end: number },
): void {
  for (let row = first; row < end; row++) {
    const from = stlHead + stlRow * row + 12
    for (let k = 0; k < 9; k++) positions[9 * row + k] = view.getFloat32(from + 4 * k, true)
  }
}

function viewOf(bytes: Uint8Array): DataView {
  return new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength)
}
