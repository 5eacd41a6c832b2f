// Meshes of surfaces that have a formula: the parabolic hull and others, with and without the noise of a scan.

import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64'
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus'

/** @typedef {{ positions: Float64Array, triangles: Uint32Array }} Mesh */

/**
 * A surface over the unit square as a grid of quads, each split in two; it faces where u × v does.
 *
 * @param {{ along: number, up: number, falling?: (i: number) => boolean }} steps `falling` tells of a column that its
 * diagonals run down along u; they rise otherwise.
 * @param {(u: number, v: number) => readonly number[]} point
 * @returns {Mesh}
 */
export function gridMesh({ along, up, falling = () => false }, point) {
  const positions = new Float64Array(3 * (along + 1) * (up + 1))
  const triangles = new Uint32Array(6 * along * up)
  for (let j = 0; j <= up; j += 1)
    for (let i = 0; i <= along; i += 1) positions.set(point(i / along, j / up), 3 * (j * (along + 1) + i))
  for (let j = 0; j < up; j += 1)
    for (let i = 0; i < along; i += 1) {
      const a = j * (along + 1) + i
      const d = a + along + 1
      const split = falling(i) ? [a, a + 1, d, a + 1, d + 1, d] : [a, a + 1, d + 1, a, d + 1, d]
      triangles.set(split, 6 * (j * along + i))
    }
  return { positions, triangles }
}

/**
 * Several meshes as one; their points stay apart.
 *
 * @param {readonly Mesh[]} meshes
 * @returns {Mesh}
 */
export function together(...meshes) {
  const positions = new Float64Array(meshes.reduce((sum, mesh) => sum + mesh.positions.length, 0))
  const triangles = new Uint32Array(meshes.reduce((sum, mesh) => sum + mesh.triangles.length, 0))
  let [point, corner] = [0, 0]
  for (const mesh of meshes) {
    positions.set(mesh.positions, 3 * point)
    for (const index of mesh.triangles) triangles[corner++] = index + point
    point += mesh.positions.length / 3
  }
  return { positions, triangles }
}

/**
 * Both sides of the parabolic hull y = B/2 (1 - (2x/L)²)(1 - (z/T)²), B = 0.1 L, T = 0.0625 L (Wigley, 1942), x from
 * the middle, z up from the waterline; `topsides` stand upright above it in `upAbove` steps. With `joined` no triangle
 * lies in the centre plane, so that both sides together are one sound mesh.
 *
 * @param {{ length: number, along: number, up: number, topsides?: number, upAbove?: number, joined?: boolean }} hull
 * @returns {Mesh}
 */
export function parabolicHull({ length, along, up, topsides = 0, upAbove = 0, joined = false }) {
  const [beam, depth] = [0.1 * length, 0.0625 * length]
  const whole = up + upAbove
  const side = (/** @type {1 | -1} */ sign) =>
    gridMesh({ along, up: whole, falling: (i) => joined && 2 * i >= along }, (u, v) => {
      const row = v * whole
      const [x, z] = [
        (length / 2) * (2 * u - 1),
        row <= up ? depth * (row / up - 1) : (topsides * (row - up)) / upAbove,
      ]
      const under = Math.min(z, 0) / depth
      const y = (beam / 2) * (1 - (2 * u - 1) ** 2) * (1 - under * under)
      return [x, sign * y, z]
    })
  return together(side(-1), insideOut(side(1)))
}

/**
 * The same surface facing the other way.
 *
 * @param {Mesh} mesh
 * @returns {Mesh}
 */
export function insideOut({ positions, triangles }) {
  const other = triangles.slice()
  for (let t = 0; t < triangles.length; t += 3)
    other.set([triangles[t + 2] ?? 0, triangles[t + 1] ?? 0], t + 1)
  return { positions, triangles: other }
}

/**
 * The mesh with normal noise of a standard deviation on every coordinate (Box and Muller, 1958), by a seed.
 *
 * @param {Mesh} mesh
 * @param {{ deviation: number, seed: number }} noise
 * @returns {Mesh}
 */
export function noisy({ positions, triangles }, { deviation, seed }) {
  const random = xoroshiro128plus(seed)
  const moved = positions.map((value) => {
    const radius = Math.sqrt(-2 * Math.log(1 - uniformFloat64(random)))
    return value + deviation * radius * Math.cos(2 * Math.PI * uniformFloat64(random))
  })
  return { positions: moved, triangles }
}

/**
 * A mesh as a file of binary STL.
 *
 * @param {{ positions: ArrayLike<number>, triangles: ArrayLike<number> }} mesh
 * @param {string} [head] may begin with "solid", as some programs write it
 * @returns {Uint8Array}
 */
export function stlBinary({ positions, triangles }, head = 'made for a test') {
  const count = triangles.length / 3
  const bytes = new Uint8Array(84 + 50 * count)
  const view = new DataView(bytes.buffer)
  bytes.set(new TextEncoder().encode(head))
  view.setUint32(80, count, true)
  for (let i = 0; i < triangles.length; i += 1) {
    const at = 96 + 50 * Math.floor(i / 3) + 12 * (i % 3)
    for (let k = 0; k < 3; k += 1)
      view.setFloat32(at + 4 * k, positions[3 * (triangles[i] ?? 0) + k] ?? 0, true)
  }
  return bytes
}
