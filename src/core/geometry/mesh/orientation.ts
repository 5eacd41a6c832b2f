/**
 * Parts of a mesh that hang together, and which of their triangles must be turned round so that all of a part face
 * one way. Edges as `neighbours.ts` numbers them.
 */

import { nextEdge } from './neighbours.ts'
import type { TriangleMesh } from './triangle-mesh.ts'

export type Orientation = {
  /** The part of each triangle, from 0 in the order of their first triangles. */
  readonly partOf: Uint32Array
  readonly parts: number
  /** 1 for each triangle that faces against the first one of its part. */
  readonly against: Uint8Array
  /** Edges over which a part faces two ways whatever is turned, as a band with a half twist does. */
  readonly twistedEdges: number
}

/** Walks over the shared edges from triangle to triangle; edges where three or more meet part the mesh. */
export const orientationOf = ({ triangles }: TriangleMesh, across: Int32Array): Orientation => {
  const count = triangles.length / 3
  const partOf = new Uint32Array(count)
  const against = new Uint8Array(count)
  const stack = new Uint32Array(count)
  let [parts, twisted] = [0, 0]
  for (let seed = 0; seed < count; seed++) {
    if (partOf[seed] !== 0) continue
    partOf[seed] = ++parts
    stack[0] = seed
    for (let height = 1; height > 0; ) {
      const triangle = stack[--height]!
      for (let k = 0; k < 3; k++) {
        const edge = 3 * triangle + k
        const beyond = across[edge]!
        if (beyond < 0) continue
        const neighbour = Math.floor(beyond / 3)
        const turn = triangles[edge] === triangles[beyond] ? 1 : 0
        if (partOf[neighbour] !== 0) {
          if ((against[triangle]! ^ against[neighbour]!) !== turn) twisted++
          continue
        }
        partOf[neighbour] = parts
        against[neighbour] = against[triangle]! ^ turn
        stack[height++] = neighbour
      }
    }
  }
  for (let t = 0; t < count; t++) partOf[t]!--
  return { partOf, parts, against, twistedEdges: twisted / 2 }
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
    return turn[Math.floor(edge / 3)] === 1 ? edge - k + (2 - k) : edge
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
