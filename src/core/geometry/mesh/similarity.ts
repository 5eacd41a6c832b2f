/** Moves, turns, scales and mirrors meshes. Turns are 3 by 3 matrices, row after row; the results own new arrays. */

import { distance3, type Point3 } from '../points.ts'
import type { Plane } from './plane.ts'
import type { TriangleMesh } from './triangle-mesh.ts'

type Nine = readonly [number, number, number, number, number, number, number, number, number]

/** p becomes scale × turn × p + move. */
export type Similarity = {
  /** Over 0. */
  readonly scale: number
  /** Square to itself; with determinant -1 it mirrors. */
  readonly turn: Nine
  readonly move: Point3
}

const [still, nowhere]: readonly [Nine, Point3] = [[1, 0, 0, 0, 1, 0, 0, 0, 1], { x: 0, y: 0, z: 0 }]

/** Scales about the origin: metres from millimetres, or a scan by what a tape said. */
export const scaling = (scale: number): Similarity => ({ scale, turn: still, move: nowhere })

/** Scales so that two points come to lie as far apart as was measured; undefined when they are in one place. */
export const scalingTo = (length: number, [a, b]: readonly [Point3, Point3]): Similarity | undefined => {
  const distance = distance3(a, b)
  return distance > 0 ? scaling(length / distance) : undefined
}

/** Moves without turning. */
export const moving = (move: Point3): Similarity => ({ scale: 1, turn: still, move })

/** Turns anticlockwise about an axis of any length through the origin, seen from its tip; radians (Rodrigues). */
export const turning = ({ x, y, z }: Point3, angle: number): Similarity => {
  const length = Math.hypot(x, y, z)
  const [a, b, c] = [x / length, y / length, z / length]
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)]
  const rest = 1 - cos
  const turn: Nine = [
    ...([cos + a * a * rest, a * b * rest - c * sin, a * c * rest + b * sin] as const),
    ...([a * b * rest + c * sin, cos + b * b * rest, b * c * rest - a * sin] as const),
    ...([a * c * rest - b * sin, b * c * rest + a * sin, cos + c * c * rest] as const),
  ]
  return { scale: 1, turn, move: nowhere }
}

/** The mirror image in a plane. */
export const mirroring = ({ normal: { x, y, z }, offset }: Plane): Similarity => ({
  scale: 1,
  turn: [
    ...([1 - 2 * x * x, -2 * x * y, -2 * x * z] as const),
    ...([-2 * x * y, 1 - 2 * y * y, -2 * y * z] as const),
    ...([-2 * x * z, -2 * y * z, 1 - 2 * z * z] as const),
  ],
  move: { x: 2 * offset * x, y: 2 * offset * y, z: 2 * offset * z },
})

/** `first`, then `second`, as one. */
export const inOrder = (first: Similarity, second: Similarity): Similarity => {
  const [a, b] = [second.turn, first.turn]
  const entry = (row: number, column: number): number =>
    a[3 * row]! * b[column]! + a[3 * row + 1]! * b[3 + column]! + a[3 * row + 2]! * b[6 + column]!
  const turn: Nine = [
    ...([entry(0, 0), entry(0, 1), entry(0, 2)] as const),
    ...([entry(1, 0), entry(1, 1), entry(1, 2)] as const),
    ...([entry(2, 0), entry(2, 1), entry(2, 2)] as const),
  ]
  return { scale: first.scale * second.scale, turn, move: movedPoint(second, first.move) }
}

/** What undoes a similarity. */
export const undoing = ({ scale, turn: [a, b, c, d, e, f, g, h, i], move }: Similarity): Similarity => {
  const back: Similarity = { scale: 1 / scale, turn: [a, d, g, b, e, h, c, f, i], move: nowhere }
  const { x, y, z } = movedPoint(back, move)
  return { ...back, move: { x: -x, y: -y, z: -z } }
}

/** Where a point comes to lie. */
export const movedPoint = ({ scale, turn: m, move }: Similarity, { x, y, z }: Point3): Point3 => ({
  x: scale * (m[0] * x + m[1] * y + m[2] * z) + move.x,
  y: scale * (m[3] * x + m[4] * y + m[5] * z) + move.y,
  z: scale * (m[6] * x + m[7] * y + m[8] * z) + move.z,
})

const isMirror = ([a, b, c, d, e, f, g, h, i]: Nine): boolean =>
  a * (e * i - f * h) - b * (d * i - f * g) + c * (d * h - e * g) < 0

/** Where a mesh comes to lie; a mirrored one keeps its outside outside. */
export const movedMesh = ({ positions, triangles }: TriangleMesh, similarity: Similarity): TriangleMesh => {
  const { scale, turn, move } = similarity
  const [a, b, c, d, e, f, g, h, i] = turn.map((entry) => scale * entry) as unknown as Nine
  const moved = new Float64Array(positions.length)
  for (let p = 0; p < positions.length; p += 3) {
    const x = positions[p]!
    const y = positions[p + 1]!
    const z = positions[p + 2]!
    moved[p] = a * x + b * y + c * z + move.x
    moved[p + 1] = d * x + e * y + f * z + move.y
    moved[p + 2] = g * x + h * y + i * z + move.z
  }
  return { positions: moved, triangles: isMirror(turn) ? insideOut(triangles) : triangles }
}

/** Every triangle turned round. */
const insideOut = (triangles: Uint32Array): Uint32Array => {
  const other = triangles.slice()
  for (let t = 0; t < other.length; t += 3) {
    other[t + 1] = triangles[t + 2]!
    other[t + 2] = triangles[t + 1]!
  }
  return other
}
