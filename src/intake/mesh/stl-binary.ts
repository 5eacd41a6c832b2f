/** STL in bytes: a header of 80, a count, then 50 a triangle: normal, three corners, two spare; little-endian. */
import type { TriangleMesh } from '#core/geometry'
import { oddPlace } from './check-mesh.ts'
import { CornerTable } from './corner-table.ts'
import { MeshFault } from './mesh-fault.ts'
import { farthest, mostTriangles } from './mesh-limits.ts'
import { look, type MeshWatch, rowsBetween } from './mesh-watch.ts'

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
  const corners = new CornerTable(3 * count)
  const triangles = new Uint32Array(3 * count)
  const view = viewOf(bytes)
  for (let first = 0; first < count; first += rowsBetween + 1) {
    look(watch, first, count)
    joinCorners(view, { corners, triangles }, { first, end: Math.min(first + rowsBetween + 1, count) })
  }
  const places = new Float32Array(corners.words.buffer, 0, 3 * corners.count)
  return { positions: new Float64Array(places), triangles }
}

type Joining = { readonly corners: CornerTable; readonly triangles: Uint32Array }
type Rows = { readonly first: number; readonly end: number }

function joinCorners(view: DataView, { corners, triangles }: Joining, { first, end }: Rows): void {
  let at = stlHead + stlRow * first + 12
  for (let row = first; row < end; row++) {
    for (let corner = 3 * row; corner < 3 * row + 3; corner++) {
      const x = view.getInt32(at, true)
      const y = view.getInt32(at + 4, true)
      const z = view.getInt32(at + 8, true)
      if (isOdd(x) || isOdd(y) || isOdd(z)) throw oddCorner(view, at)
      triangles[corner] = corners.numberOf(zeroed(x), zeroed(y), zeroed(z))
      at += 12
    }
    at += stlRow - 36
  }
}

/** Bits of the farthest place; those of larger sizes, and of what is no number, are larger. */
const mostWord = new Int32Array(Float32Array.of(farthest).buffer)[0]!

/** Looked for at once: in garbage every corner is a new one, which takes long. */
function isOdd(word: number): boolean {
  return (word & 0x7fffffff) > mostWord
}

function oddCorner(view: DataView, at: number): MeshFault {
  const figures = [0, 4, 8].map((k) => view.getFloat32(at + k, true))
  return oddPlace(figures.find((figure) => !(Math.abs(figure) <= farthest))!)
}

/** The bits of -0 as those of 0: both are the same place. */
function zeroed(word: number): number {
  return word === -0x80000000 ? 0 : word
}

function viewOf(bytes: Uint8Array): DataView {
  return new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength)
}
