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

/** Walks over the shared edges from triangle to triangle; edges where three or more meet part the mesh. */
export const orientationOf = ({ triangles }: TriangleMesh, across: Int32Array): Orientation => {
  const count = triangles.length / 3
  const partOf = new Uint32Array(count)
  const against = new Uint8Array(count)
  const walk: Walk = { triangles, across, partOf, against, stack: new Uint32Array(count) }
  const parts: PartCounts[] = []
  for (let seed = 0; seed < count; seed++)
    if (partOf[seed] === 0) parts.push(walkedFrom(seed, parts.length + 1, walk))
  for (let t = 0; t < count; t++) partOf[t]!--
  return { partOf, parts, against }
}

type Walk = {
  readonly triangles: Uint32Array
  readonly across: Int32Array
  /** Numbers of parts from 1; 0 where nobody was yet. */
  readonly partOf: Uint32Array
  readonly against: Uint8Array
  readonly stack: Uint32Array
}

/** Marks every triangle of one part. */
const walkedFrom = (seed: number, part: number, walk: Walk): PartCounts => {
  const { triangles, across, partOf, against, stack } = walk
  let [whole, turned, open, crowds, twisted] = [0, 0, 0, 0, 0]
  partOf[seed] = part
  stack[0] = seed
  for (let height = 1; height > 0; ) {
    const triangle = stack[--height]!
    const facing = against[triangle]!
    whole++
    turned += facing
    for (let edge = 3 * triangle; edge < 3 * triangle + 3; edge++) {
      const beyond = across[edge]!
      if (beyond < 0) {
        if (beyond === crowded) crowds++
        else open++
        continue
      }
      const neighbour = triangleOf(beyond)
      const wanted = triangles[edge] === triangles[beyond] ? 1 - facing : facing
      if (partOf[neighbour] === 0) {
        partOf[neighbour] = part
        against[neighbour] = wanted
        stack[height++] = neighbour
      } else if (against[neighbour] !== wanted) twisted++
    }
  }
  return { triangles: whole, against: turned, open, crowded: crowds, twisted: twisted / 2 }
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
