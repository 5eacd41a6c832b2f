/**
 * Parts of a mesh that hang together, and which of their triangles must be turned round so that all of a part face
 * one way. Edges as `neighbours.ts` numbers them.
 */

import { crowded, nextEdge, triangleOf } from './neighbours.ts'
import type { TriangleMesh } from './triangle-mesh.ts'

/** What was counted in one part. */
export type PartCounts = {
  readonly triangles: number
  /** Triangles that face against the part's first. */
  readonly against: number
  /** Edges with nothing beyond, and those of its triangles at which three or more meet. */
  readonly open: number
  readonly crowded: number
  /** Edges over which the part faces two ways whatever is turned, as a band with a half twist does. */
  readonly twisted: number
}

export type Orientation = {
  /** The part of each triangle, from 0 in the order of their first triangles. */
  readonly partOf: Uint32Array
  readonly parts: readonly PartCounts[]
  /** 1 for each triangle that faces against the first one of its part. */
  readonly against: Uint8Array
}

/**
 * Sets that grow together, each triangle pointing to one before it in its set, or to itself when it is the first; and
 * whether it faces against the one that it points to. (B. Galler and M. Fischer, 1964, with the facing beside it.)
 */
type Sets = { readonly before: Int32Array; readonly against: Uint8Array }

/** The first triangle of a set. Afterwards everything on the way points to it. */
const firstOf = ({ before, against }: Sets, triangle: number): number => {
  // Mostly nothing has to be done.
  const near = before[triangle]!
  if (before[near] === near) return near
  let first = triangle
  let facing = 0
  while (before[first] !== first) {
    facing ^= against[first]!
    first = before[first]!
  }
  for (let t = triangle; before[t] !== first && t !== first; ) {
    const [next, mark] = [before[t]!, against[t]!]
    before[t] = first
    against[t] = facing
    facing ^= mark
    t = next
  }
  return first
}

/**
 * Joins triangles that share an edge, in the order of the file, which mostly is that of the memory too; edges where
 * three or more meet part the mesh.
 */
export const orientationOf = ({ triangles }: TriangleMesh, across: Int32Array): Orientation => {
  const count = triangles.length / 3
  const sets: Sets = { before: new Int32Array(count), against: new Uint8Array(count) }
  const { before, against } = sets
  let twisted: Uint8Array | undefined
  for (let t = 0; t < count; t++) {
    before[t] = t
    for (let edge = 3 * t; edge < 3 * t + 3; edge++) {
      const beyond = across[edge]!
      if (beyond < 0 || beyond >= edge) continue
      const neighbour = triangleOf(beyond)
      const turn = triangles[edge] === triangles[beyond] ? 1 : 0
      const mine = firstOf(sets, t)
      const other = firstOf(sets, neighbour)
      const facing = against[t]! ^ against[neighbour]! ^ turn
      if (mine !== other) {
        before[Math.max(mine, other)] = Math.min(mine, other)
        against[Math.max(mine, other)] = facing
      } else if (facing !== 0) {
        twisted ??= new Uint8Array(count)
        twisted[t]!++
      }
    }
  }
  return { ...numbered(sets, across, twisted), against }
}

type Counting = { triangles: number; against: number; open: number; crowded: number; twisted: number }

/** Numbers the sets by their first triangles, and counts what is in each. */
const numbered = (sets: Sets, across: Int32Array, twisted: Uint8Array | undefined) => {
  const partOf = new Uint32Array(sets.before.length)
  const parts: Counting[] = []
  for (let t = 0; t < partOf.length; t++) {
    const first = firstOf(sets, t)
    if (first === t) partOf[t] = parts.push({ triangles: 0, against: 0, open: 0, crowded: 0, twisted: 0 }) - 1
    else partOf[t] = partOf[first]!
    const part = parts[partOf[t]!]!
    part.triangles++
    part.against += sets.against[t]!
    if (twisted !== undefined) part.twisted += twisted[t]!
    for (let edge = 3 * t; edge < 3 * t + 3; edge++) {
      if (across[edge] === crowded) part.crowded++
      else if (across[edge]! < 0) part.open++
    }
  }
  return { partOf, parts }
}

/** The mesh and its neighbours with the marked triangles turned round: their second and third corners change places. */
export const turned = (
  { positions, triangles }: TriangleMesh,
  across: Int32Array,
  turn: Uint8Array,
): { readonly mesh: TriangleMesh; readonly across: Int32Array } => {
  const corners = triangles.slice()
  const beyond = new Int32Array(across.length)
  // Edges a-b, b-c, c-a become a-c, c-b, b-a: the first and the last change places.
  const moved = (edge: number): number => {
    const k = edge % 3
    return turn[triangleOf(edge)] === 1 ? edge - k + (2 - k) : edge
  }
  for (let t = 0; t < turn.length; t++) {
    if (turn[t] === 1) {
      corners[3 * t + 1] = triangles[3 * t + 2]!
      corners[3 * t + 2] = triangles[3 * t + 1]!
    }
    for (let edge = 3 * t; edge < 3 * t + 3; edge++)
      beyond[moved(edge)] = across[edge]! < 0 ? across[edge]! : moved(across[edge]!)
  }
  return { mesh: { positions, triangles: corners }, across: beyond }
}

/** The next edge round the rim that `edge` is on: across the triangles that meet in its end. */
export const nextOnRim = (across: Int32Array, edge: number): number => {
  let next = nextEdge(edge)
  // No point has more triangles than the mesh.
  for (let turns = 0; across[next]! >= 0 && turns < across.length; turns++) next = nextEdge(across[next]!)
  return next
}
