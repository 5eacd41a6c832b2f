/**
 * Makes points that lie in the same place one point, so that triangles which touch also share. Axes and unit of the
 * mesh. The results own new arrays.
 */

import type { TriangleMesh } from './triangle-mesh.ts'

export type Welded = {
  readonly mesh: TriangleMesh
  /** Points that another one took the place of. */
  readonly merged: number
  /** Points that no triangle used. */
  readonly unused: number
}

/** A table of point numbers, from 1, by the hash of their place; 0 is free. Its length is a power of two. */
type Places = { table: Uint32Array<ArrayBuffer>; readonly hash: (x: number, y: number, z: number) => number }

/** Hashes a place by its bits, all of which count: scans lie on grids, where sums of products fall together. */
const placeHash = (): Places['hash'] => {
  const place = new Float64Array(3)
  const bits = new Int32Array(place.buffer)
  return (x, y, z) => {
    // Adding 0 makes 0 of -0: both are the same place.
    place[0] = x + 0
    place[1] = y + 0
    place[2] = z + 0
    let h = Math.imul(bits[0]! ^ Math.imul(bits[1]!, 0x9e3779b1), 0x85ebca77)
    h = Math.imul((h ^ (h >>> 15)) + bits[2]! + Math.imul(bits[3]!, 0x27d4eb2f), 0xc2b2ae3d)
    h = Math.imul((h ^ (h >>> 13)) + bits[4]! + Math.imul(bits[5]!, 0x165667b1), 0x9e3779b1)
    return h ^ (h >>> 16)
  }
}

const powerOfTwoOver = (size: number): number => 2 ** Math.max(4, Math.ceil(Math.log2(size)))

/** The same points in a table twice as large. */
const grown = ({ table, hash }: Places, positions: Float64Array, count: number): Uint32Array<ArrayBuffer> => {
  const larger = new Uint32Array(2 * table.length)
  const mask = larger.length - 1
  for (let id = 0; id < count; id++) {
    let slot = hash(positions[3 * id]!, positions[3 * id + 1]!, positions[3 * id + 2]!) & mask
    while (larger[slot] !== 0) slot = (slot + 1) & mask
    larger[slot] = id + 1
  }
  return larger
}

/**
 * Joins points whose coordinates are equal, and leaves out those that no triangle uses. Points are numbered by their
 * first use. Takes time in proportion to the mesh.
 */
export const weldEqual = ({ positions, triangles }: TriangleMesh): Welded => {
  const points = positions.length / 3
  // A closed surface has half as many points as triangles, so a sixth of its corners; the table is half full then.
  const expected = Math.min(points, triangles.length / 6)
  const places: Places = { table: new Uint32Array(powerOfTwoOver(2 * expected + 1)), hash: placeHash() }
  const kept = new Float64Array(positions.length)
  const newIds = new Uint32Array(points)
  const corners = new Uint32Array(triangles.length)
  let [count, used] = [0, 0]
  for (let i = 0; i < triangles.length; i++) {
    const point = triangles[i]!
    if (newIds[point] === 0) {
      used++
      const id = idOf(
        places,
        kept,
        count,
        positions[3 * point]!,
        positions[3 * point + 1]!,
        positions[3 * point + 2]!,
      )
      if (id === count && ++count * 2 > places.table.length) places.table = grown(places, kept, count)
      newIds[point] = id + 1
    }
    corners[i] = newIds[point]! - 1
  }
  return {
    mesh: { positions: kept.slice(0, 3 * count), triangles: corners },
    merged: used - count,
    unused: points - used,
  }
}

/** The number of the point in a place; `count`, and written down as the next one, when it is new. */
const idOf = (
  { table, hash }: Places,
  kept: Float64Array,
  count: number,
  x: number,
  y: number,
  z: number,
): number => {
  const mask = table.length - 1
  let slot = hash(x, y, z) & mask
  for (; ; slot = (slot + 1) & mask) {
    const id = table[slot]! - 1
    if (id === -1) break
    if (kept[3 * id] === x && kept[3 * id + 1] === y && kept[3 * id + 2] === z) return id
  }
  table[slot] = count + 1
  kept[3 * count] = x
  kept[3 * count + 1] = y
  kept[3 * count + 2] = z
  return count
}
