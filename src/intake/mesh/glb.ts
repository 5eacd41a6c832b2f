/** GLB, the one-file form of glTF 2.0: every triangle of the scene, placed as its nodes say; metres, y up. */
import type { TriangleMesh } from '#core/geometry'
import { type Numbers, numbersOf } from './glb-accessor.ts'
import { type GlbFile, readGlbFile, refuseCompressed } from './glb-file.ts'
import { asPart, has, listIn, partAt, partFault, wholeIn } from './glb-json.ts'
import { isMirror, type Matrix, placedMeshes } from './glb-nodes.ts'
import { MeshFault } from './mesh-fault.ts'
import { mostPoints, mostTriangles } from './mesh-limits.ts'
import { look, type MeshWatch, rowsBetween } from './mesh-watch.ts'

/** Corners of one shape in its place. `mode` 4 parts them by threes, 5 runs in a strip, 6 in a fan. */
type Piece = {
  readonly points: Numbers
  readonly order: Numbers | undefined
  readonly mode: number
  readonly matrix: Matrix
}

const [separate, strip, fan] = [4, 5, 6]

export function readGlb(bytes: Uint8Array, watch: MeshWatch): TriangleMesh {
  const file = readGlbFile(bytes)
  const pieces: Piece[] = []
  const room = { points: 0, triangles: 0, pieces: 0 }
  for (const { mesh, matrix } of placedMeshes(file.root)) {
    const part = partAt(file.root, 'meshes', mesh)
    for (const [i, value] of listIn(part, 'primitives').entries()) {
      room.pieces++
      checkRoom(room)
      const piece = pieceOf(file, asPart(value, `${part.place}/primitives/${i}`), matrix)
      if (piece === undefined) continue
      pieces.push(piece)
      room.points += piece.points.count
      room.triangles += trianglesIn(piece)
    }
  }
  checkRoom(room)
  return assembled(pieces, room, watch)
}

type Room = { readonly points: number; readonly triangles: number; readonly pieces: number }

/** Many empty pieces would take long without taking room. */
const mostPieces = 100_000

function checkRoom({ points, triangles, pieces }: Room): void {
  if (pieces > mostPieces) throw new MeshFault('intake.meshTooManyPieces', { most: mostPieces })
  if (points > mostPoints) throw new MeshFault('intake.meshTooManyPoints', { most: mostPoints })
  if (triangles > mostTriangles) throw new MeshFault('intake.meshTooManyTriangles', { most: mostTriangles })
}

/** Undefined for loose points and lines. */
function pieceOf(file: GlbFile, primitive: ReturnType<typeof asPart>, matrix: Matrix): Piece | undefined {
  const mode = wholeIn(primitive, 'mode', separate)
  if (mode > fan) throw partFault(`${primitive.place}/mode`)
  if (mode < separate) return undefined
  refuseCompressed(primitive)
  const attributes = asPart(primitive.value.attributes, `${primitive.place}/attributes`)
  return {
    points: numbersOf(file, wholeIn(attributes, 'POSITION'), 'VEC3'),
    order: has(primitive, 'indices') ? numbersOf(file, wholeIn(primitive, 'indices'), 'SCALAR') : undefined,
    mode,
    matrix,
  }
}

function trianglesIn({ points, order, mode }: Piece): number {
  const corners = (order ?? points).count
  return mode === separate ? Math.floor(corners / 3) : Math.max(corners - 2, 0)
}

function assembled(pieces: readonly Piece[], room: Room, watch: MeshWatch): TriangleMesh {
  const positions = new Float64Array(3 * room.points)
  const triangles = new Uint32Array(3 * room.triangles)
  const whole = room.points + room.triangles
  let [point, triangle] = [0, 0]
  for (const piece of pieces) {
    const tell = (rows: number) => look(watch, point + triangle + rows, whole)
    placePoints(piece, positions.subarray(3 * point), tell)
    fillTriangles(piece, { triangles: triangles.subarray(3 * triangle), first: point }, tell)
    point += piece.points.count
    triangle += trianglesIn(piece)
  }
  return { positions, triangles }
}

function placePoints({ points, matrix: m }: Piece, into: Float64Array, tell: (rows: number) => void): void {
  for (let i = 0; i < points.count; i++) {
    if ((i & rowsBetween) === 0) tell(i)
    const [x, y, z] = [points.at(i, 0), points.at(i, 1), points.at(i, 2)]
    into[3 * i] = m[0]! * x + m[4]! * y + m[8]! * z + m[12]!
    into[3 * i + 1] = m[1]! * x + m[5]! * y + m[9]! * z + m[13]!
    into[3 * i + 2] = m[2]! * x + m[6]! * y + m[10]! * z + m[14]!
  }
}

type Filling = { readonly triangles: Uint32Array; readonly first: number }

function fillTriangles(piece: Piece, { triangles, first }: Filling, tell: (rows: number) => void): void {
  const { points, order, mode, matrix } = piece
  const corner = (i: number): number => {
    const index = order === undefined ? i : order.at(i, 0)
    if (index >= points.count) throw new MeshFault('intake.meshIndex', { found: index, points: points.count })
    return first + index
  }
  const mirror = isMirror(matrix)
  for (let t = 0; t < trianglesIn(piece); t++) {
    if ((t & rowsBetween) === 0) tell(points.count + t)
    const a = corner(mode === separate ? 3 * t : mode === fan ? 0 : t)
    const b = corner(mode === separate ? 3 * t + 1 : t + 1)
    const c = corner(mode === separate ? 3 * t + 2 : t + 2)
    const isTurned = mirror !== (mode === strip && t % 2 === 1)
    triangles[3 * t] = a
    triangles[3 * t + 1] = isTurned ? c : b
    triangles[3 * t + 2] = isTurned ? b : c
  }
}
