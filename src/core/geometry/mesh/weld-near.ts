/**
 * Joins points that lie close together, as the two sides of a seam do. Axes and unit of the mesh. The results own new
 * arrays.
 */

import type { TriangleMesh } from './triangle-mesh.ts'

/** Cells are this many tolerances wide: few points look into a second one, and none holds many. */
const cellWidth = 4

export type NearWeld = {
  readonly tolerance: number
  /** Numbers of the points that may be joined, each once. */
  readonly among: Uint32Array
}

/** Points by the cell that they lie in: `heads` by the cell's hash, then on through `next`; numbers from 1. */
type Cells = {
  readonly width: number
  readonly heads: Uint32Array
  readonly next: Uint32Array
}

/**
 * Joins each of the points `among` to the nearest of those before it within `tolerance`, and moves it there; chains of
 * near points do not run together. Others stay as they are; points left over stay in the list, used by no triangle.
 */
export const weldNear = (
  { positions, triangles }: TriangleMesh,
  { tolerance, among }: NearWeld,
): { readonly mesh: TriangleMesh; readonly merged: number } => {
  const cells: Cells = {
    width: cellWidth * tolerance,
    heads: new Uint32Array(2 ** Math.ceil(Math.log2(among.length + 2))),
    next: new Uint32Array(among.length + 1),
  }
  const takes = new Map<number, number>()
  for (let i = 0; i < among.length; i++) {
    const near = nearestBefore(positions, cells, { tolerance, among }, i)
    if (near !== undefined) {
      takes.set(among[i]!, near)
      continue
    }
    const slot = slotsAround(positions, cells, among[i]!, 0)[0]!
    cells.next[i + 1] = cells.heads[slot]!
    cells.heads[slot] = i + 1
  }
  if (takes.size === 0) return { mesh: { positions, triangles }, merged: 0 }
  return { mesh: { positions, triangles: triangles.map((p) => takes.get(p) ?? p) }, merged: takes.size }
}

/** The nearest of the points that stand in the cells within the tolerance of one; the earlier of two as near. */
const nearestBefore = (
  positions: Float64Array,
  cells: Cells,
  { tolerance, among }: NearWeld,
  i: number,
): number | undefined => {
  const at = 3 * among[i]!
  let nearest: number | undefined
  let least = tolerance * tolerance
  for (const slot of slotsAround(positions, cells, among[i]!, tolerance))
    for (let k = cells.heads[slot]!; k !== 0; k = cells.next[k]!) {
      const other = among[k - 1]!
      const dx = positions[3 * other]! - positions[at]!
      const dy = positions[3 * other + 1]! - positions[at + 1]!
      const dz = positions[3 * other + 2]! - positions[at + 2]!
      const squared = dx * dx + dy * dy + dz * dz
      if (squared > least || (squared === least && nearest !== undefined && nearest < other)) continue
      least = squared
      nearest = other
    }
  return nearest
}

/** Where the lists of the cells begin that a box of `reach` around a point touches. */
const slotsAround = (
  positions: Float64Array,
  { width, heads }: Cells,
  point: number,
  reach: number,
): readonly number[] => {
  const ranges = [0, 1, 2].map((k) => {
    const value = positions[3 * point + k]!
    const low = Math.floor((value - reach) / width)
    const high = Math.floor((value + reach) / width)
    return low === high ? [low] : [low, high]
  })
  const [xs, ys, zs] = ranges as [number[], number[], number[]]
  const slots = xs.flatMap((x) => ys.flatMap((y) => zs.map((z) => slotOf(x, y, z) & (heads.length - 1))))
  return slots.length === 1 ? slots : [...new Set(slots)]
}

const slotOf = (x: number, y: number, z: number): number => {
  const h = Math.imul(x, 0x9e3779b1) ^ Math.imul(y, 0x85ebca77) ^ Math.imul(z, 0xc2b2ae3d)
  return h ^ (h >>> 15)
}
