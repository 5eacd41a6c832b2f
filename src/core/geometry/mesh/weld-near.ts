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
  // The point that each becomes, from 1; 0 where it stays.
  const becomes = new Uint32Array(positions.length / 3)
  let merged = 0
  for (let i = 0; i < among.length; i++) {
    const near = nearestBefore(positions, cells, { tolerance, among }, i)
    if (near !== undefined) {
      becomes[among[i]!] = near + 1
      merged++
      continue
    }
    const slot = cellOf(positions, cells, among[i]!)
    cells.next[i + 1] = cells.heads[slot]!
    cells.heads[slot] = i + 1
  }
  const mesh = {
    positions,
    triangles: merged === 0 ? triangles : triangles.map((p) => (becomes[p] === 0 ? p : becomes[p]! - 1)),
  }
  return { mesh, merged }
}

/** The nearest of the points that stand in the cells within the tolerance of one; the earlier of two as near. */
const nearestBefore = (
  positions: Float64Array,
  cells: Cells,
  { tolerance, among }: NearWeld,
  i: number,
): number | undefined => {
  const at = 3 * among[i]!
  const best = { nearest: -1, squared: tolerance * tolerance }
  const low = (k: number): number => Math.floor((positions[at + k]! - tolerance) / cells.width)
  const high = (k: number): number => Math.floor((positions[at + k]! + tolerance) / cells.width)
  const [x1, y1, z1] = [high(0), high(1), high(2)]
  for (let x = low(0); x <= x1; x++)
    for (let y = low(1); y <= y1; y++)
      for (let z = low(2); z <= z1; z++)
        for (let k = cells.heads[slotOf(cells, x, y, z)]!; k !== 0; k = cells.next[k]!)
          compare(positions, at, among[k - 1]!, best)
  return best.nearest === -1 ? undefined : best.nearest
}

type Best = { nearest: number; squared: number }

const compare = (positions: Float64Array, at: number, other: number, best: Best): void => {
  const dx = positions[3 * other]! - positions[at]!
  const dy = positions[3 * other + 1]! - positions[at + 1]!
  const dz = positions[3 * other + 2]! - positions[at + 2]!
  const squared = dx * dx + dy * dy + dz * dz
  if (squared > best.squared) return
  if (squared === best.squared && best.nearest !== -1 && best.nearest < other) return
  best.squared = squared
  best.nearest = other
}

/** Where the list of a cell begins. */
const slotOf = ({ heads }: Cells, x: number, y: number, z: number): number => {
  const h = Math.imul(Math.imul(x, 0x9e3779b1) + y, 0x85ebca77)
  const mixed = Math.imul((h ^ (h >>> 15)) + z, 0xc2b2ae3d)
  return (mixed ^ (mixed >>> 16)) & (heads.length - 1)
}

const cellOf = (positions: Float64Array, cells: Cells, point: number): number => {
  const along = (k: number): number => Math.floor(positions[3 * point + k]! / cells.width)
  return slotOf(cells, along(0), along(1), along(2))
}
