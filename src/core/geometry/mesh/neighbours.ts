/**
 * Which triangles share an edge. An edge of a triangle is numbered 3 × triangle + its corner, and runs from that
 * corner to the next; `across` has the number of the same edge in the triangle beyond.
 */

import { pointCount, type TriangleMesh } from './triangle-mesh.ts'

/** Values of `across`: nothing lies beyond; three triangles or more meet. */
export const [open, crowded] = [-1, -2]

export type Neighbours = {
  readonly across: Int32Array
  /** Triangles that have the same three corners as an earlier one, 1 each; undefined when there are none. */
  readonly repeated: Uint8Array | undefined
}

/** The triangle that an edge belongs to. */
export const triangleOf = (edge: number): number => (edge / 3) | 0

/** The edge after `edge` in its triangle. */
export const nextEdge = (edge: number): number => (edge % 3 === 2 ? edge - 2 : edge + 1)

/** 1 for each point on an edge that two triangles do not share: on a rim, or where three meet. */
export const rimMarks = ({ positions, triangles }: TriangleMesh, across: Int32Array): Uint8Array => {
  const marks = new Uint8Array(positions.length / 3)
  for (let edge = 0; edge < across.length; edge++) {
    if (across[edge]! >= 0) continue
    marks[triangles[edge]!] = 1
    marks[triangles[nextEdge(edge)]!] = 1
  }
  return marks
}

/** Edges sorted by the lower number of their ends: those of point `p` are `edges` from `starts[p]` to `starts[p + 1]`. */
const edgesByPoint = (mesh: TriangleMesh): { readonly starts: Uint32Array; readonly edges: Uint32Array } => {
  const { triangles } = mesh
  const starts = new Uint32Array(pointCount(mesh) + 2)
  for (let t = 0; t < triangles.length; t += 3) {
    const a = triangles[t]!
    const b = triangles[t + 1]!
    const c = triangles[t + 2]!
    starts[Math.min(a, b) + 2]!++
    starts[Math.min(b, c) + 2]!++
    starts[Math.min(c, a) + 2]!++
  }
  for (let p = 2; p < starts.length; p++) starts[p]! += starts[p - 1]!
  const edges = new Uint32Array(triangles.length)
  for (let t = 0; t < triangles.length; t += 3) {
    const a = triangles[t]!
    const b = triangles[t + 1]!
    const c = triangles[t + 2]!
    edges[starts[Math.min(a, b) + 1]!++] = t
    edges[starts[Math.min(b, c) + 1]!++] = t + 1
    edges[starts[Math.min(c, a) + 1]!++] = t + 2
  }
  return { starts, edges }
}

/**
 * Finds what lies across each edge, in time in proportion to the mesh however many triangles meet in a point. No
 * triangle may use a point twice.
 */
export const neighboursOf = (mesh: TriangleMesh): Neighbours => {
  const { triangles } = mesh
  const { starts, edges } = edgesByPoint(mesh)
  const across = new Int32Array(triangles.length).fill(open)
  let repeated: Uint8Array | undefined
  // Of each point: which point last saw an edge to it, and the first edge between the two.
  const seenFrom = new Uint32Array(starts.length - 2)
  const firstEdge = new Uint32Array(starts.length - 2)
  for (let p = 0; p < starts.length - 2; p++) {
    for (let k = starts[p]!; k < starts[p + 1]!; k++) {
      const edge = edges[k]!
      const next = nextEdge(edge)
      const other = triangles[edge] === p ? triangles[next]! : triangles[edge]!
      if (seenFrom[other] !== p + 1) {
        seenFrom[other] = p + 1
        firstEdge[other] = edge
        continue
      }
      const first = firstEdge[other]!
      if (isRepeat(triangles, across, first, edge)) {
        repeated ??= new Uint8Array(triangles.length / 3)
        repeated[triangleOf(edge)] = 1
      }
      join(across, first, edge)
    }
  }
  return { across, repeated }
}

/** Whether the third corner beside an edge is that of an earlier triangle on the same edge. */
const isRepeat = (triangles: Uint32Array, across: Int32Array, first: number, edge: number): boolean => {
  const third = triangles[nextEdge(nextEdge(edge))]
  if (triangles[nextEdge(nextEdge(first))] === third) return true
  const second = across[first]!
  return second >= 0 && triangles[nextEdge(nextEdge(second))] === third
}

const join = (across: Int32Array, first: number, edge: number): void => {
  const second = across[first]!
  if (second === open) {
    across[first] = edge
    across[edge] = first
    return
  }
  if (second >= 0) across[second] = crowded
  across[first] = crowded
  across[edge] = crowded
}
