/**
 * Fits a plane so that the mirror image of a surface lies on the surface: each step pairs mirrored points with the
 * nearest points and takes their distances from the planes of those as linear in a small turn and shift of the mirror
 * (as Y. Chen and G. Medioni, Object modelling by registration of multiple range images, 1992, do with a motion).
 */

import type { Point3 } from '../points.ts'
import { nearestPoint, type PointTree, pointTree } from './nearest-point.ts'
import { type Plane, planeThrough } from './plane.ts'
import { type PointNormals, pointNormals } from './point-normals.ts'
import { solveThree } from './solve-three.ts'
import type { TriangleMesh } from './triangle-mesh.ts'

export type MirrorSurface = PointNormals & {
  readonly positions: Float64Array
  readonly tree: PointTree
  /** Points used, every so many of them. */
  readonly among: Uint32Array
  /** The side of a square that each of them stands for. */
  readonly grain: number
}

/** More points do not make a scan more symmetric. */
const mostPoints = 150_000

/** Makes a mesh ready to be fitted. */
export const mirrorSurface = (mesh: TriangleMesh): MirrorSurface => {
  const { normals, areas } = pointNormals(mesh)
  const used = areas.reduce((count, area) => count + (area > 0 ? 1 : 0), 0)
  const among = everyOf(areas, Math.max(1, Math.ceil(used / mostPoints)))
  const area = areas.reduce((sum, each) => sum + each, 0)
  const tree = pointTree(mesh.positions, among)
  return {
    positions: mesh.positions,
    normals,
    areas,
    tree,
    among,
    grain: Math.sqrt(area / Math.max(among.length, 1)),
  }
}

/** Every so-manyth of the points that a triangle uses. */
const everyOf = (areas: Float64Array, stride: number): Uint32Array => {
  const points: number[] = []
  let count = 0
  for (let p = 0; p < areas.length; p++) if (areas[p]! > 0 && count++ % stride === 0) points.push(p)
  return Uint32Array.from(points)
}

export type MirrorFit = {
  readonly plane: Plane
  readonly rms: number
  readonly matchedShare: number
}

export type FitEffort = { readonly steps: number; readonly samples: number }

/** A mirrored point with the point that it lies nearest to. */
type Pair = {
  /** Before it was mirrored, and its height over the mirror. */
  readonly point: Point3
  readonly height: number
  /** How the surface faces at the nearest point, and how far the mirrored one is off its plane. */
  readonly normal: Point3
  readonly off: number
  readonly distance: number
  readonly area: number
}

/** Fits in at most so many steps, none of which is taken when `steps` is 0. */
export const mirrorFit = (surface: MirrorSurface, start: Plane, { steps, samples }: FitEffort): MirrorFit => {
  const stride = Math.max(1, Math.floor(surface.among.length / samples))
  const chosen = surface.among.filter((_, i) => i % stride === 0)
  let plane = start
  let pairs = matched(pairsOf(surface, plane, chosen), surface.grain)
  for (let step = 0; step < steps; step++) {
    const next = improved(plane, pairs.kept)
    if (next === undefined) break
    const moved = movedBy(plane, next)
    plane = next
    pairs = matched(pairsOf(surface, plane, chosen), surface.grain)
    if (moved < 1e-7 * surface.grain) break
  }
  const area = (list: readonly Pair[]): number => list.reduce((sum, pair) => sum + pair.area, 0)
  const squares = pairs.kept.reduce((sum, pair) => sum + pair.area * pair.off * pair.off, 0)
  const rms = Math.sqrt(squares / Math.max(area(pairs.kept), Number.MIN_VALUE))
  return { plane, rms, matchedShare: area(pairs.kept) / Math.max(area(pairs.all), Number.MIN_VALUE) }
}

const pairsOf = (
  surface: MirrorSurface,
  { normal: m, offset }: Plane,
  chosen: Uint32Array,
): readonly Pair[] => {
  const { positions, normals, areas, tree } = surface
  const pairs: Pair[] = []
  for (const p of chosen) {
    const point = { x: positions[3 * p]!, y: positions[3 * p + 1]!, z: positions[3 * p + 2]! }
    const height = m.x * point.x + m.y * point.y + m.z * point.z - offset
    const image = [
      point.x - 2 * height * m.x,
      point.y - 2 * height * m.y,
      point.z - 2 * height * m.z,
    ] as const
    const q = nearestPoint(tree, image)!
    const [x, y, z] = [0, 1, 2].map((k) => image[k]! - positions[3 * q + k]!) as [number, number, number]
    const normal = { x: normals[3 * q]!, y: normals[3 * q + 1]!, z: normals[3 * q + 2]! }
    const facing = [normals[3 * p]!, normals[3 * p + 1]!, normals[3 * p + 2]!] as const
    const lean = 2 * (m.x * facing[0] + m.y * facing[1] + m.z * facing[2])
    const agrees =
      normal.x * (facing[0] - lean * m.x) +
      normal.y * (facing[1] - lean * m.y) +
      normal.z * (facing[2] - lean * m.z)
    // Opposite sides of a thin part lie near, but face apart.
    const distance = Math.abs(agrees) > 0.5 ? Math.hypot(x, y, z) : Infinity
    const off = normal.x * x + normal.y * y + normal.z * z
    pairs.push({ point, height, normal, off, distance, area: areas[p]! })
  }
  return pairs
}

/**
 * Pairs that lie no more than a few times as far apart as the middle one, and then no more off each other's plane: what
 * one side lacks has no match, and where a boat is narrow the nearest point may be on the wrong side.
 */
const matched = (all: readonly Pair[], grain: number) => {
  const mostApart = Math.max(3 * middleOf(all.map(({ distance }) => distance)), 2 * grain)
  const near = all.filter(({ distance }) => distance <= mostApart && Number.isFinite(distance))
  const mostOff = Math.max(4 * middleOf(near.map(({ off }) => Math.abs(off))), 0.02 * grain)
  return { all, kept: near.filter(({ off }) => Math.abs(off) <= mostOff) }
}

const middleOf = (values: readonly number[]): number =>
  values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)] ?? 0

/** The plane that makes the sum of squares least, to first order; undefined when the pairs do not tell. */
const improved = (plane: Plane, pairs: readonly Pair[]): Plane | undefined => {
  const { normal: m, offset } = plane
  const [u, v] = squareTo(m)
  const centre = { x: m.x * offset, y: m.y * offset, z: m.z * offset }
  const rows = [0, 1, 2].map(() => [0, 0, 0, 0])
  for (const { point, height, normal, off, area } of pairs) {
    const from = { x: point.x - centre.x, y: point.y - centre.y, z: point.z - centre.z }
    const across = dot(normal, m)
    const rates = [
      -2 * (dot(u, from) * across + height * dot(normal, u)),
      -2 * (dot(v, from) * across + height * dot(normal, v)),
      2 * across,
    ]
    for (let i = 0; i < 3; i++) {
      for (let k = 0; k < 3; k++) rows[i]![k]! += area * rates[i]! * rates[k]!
      rows[i]![3]! -= area * rates[i]! * off
    }
  }
  const solution = solveThree(rows)
  if (solution === undefined) return undefined
  const [a, b, shift] = solution as [number, number, number]
  const direction = { x: m.x + a * u.x + b * v.x, y: m.y + a * u.y + b * v.y, z: m.z + a * u.z + b * v.z }
  return planeThrough(
    { x: centre.x + shift * m.x, y: centre.y + shift * m.y, z: centre.z + shift * m.z },
    direction,
  )
}

const dot = (a: Point3, b: Point3): number => a.x * b.x + a.y * b.y + a.z * b.z

/** Two directions of length 1 square to one and to each other. */
const squareTo = (m: Point3): readonly [Point3, Point3] => {
  const helper = Math.abs(m.x) < 0.6 ? { x: 1, y: 0, z: 0 } : { x: 0, y: 1, z: 0 }
  const cross = (a: Point3, b: Point3): Point3 => ({
    x: a.y * b.z - a.z * b.y,
    y: a.z * b.x - a.x * b.z,
    z: a.x * b.y - a.y * b.x,
  })
  const first = cross(m, helper)
  const length = Math.hypot(first.x, first.y, first.z)
  const u = { x: first.x / length, y: first.y / length, z: first.z / length }
  return [u, cross(m, u)]
}

const movedBy = (a: Plane, b: Plane): number =>
  Math.hypot(a.normal.x - b.normal.x, a.normal.y - b.normal.y, a.normal.z - b.normal.z, a.offset - b.offset)
