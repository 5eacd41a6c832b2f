/** Gathers triangles and lines between shared points. Boat frame, metres. */

import type { Point3 } from '#core/geometry'

/** Points nearer than a micrometre are one: keel and stem belong to both sides, a pole to many triangles. */
const perM = 1e6

export type MeshBuilder = {
  /** The number of a point; the same for the same place. */
  readonly point: (at: Point3) => number
  /** A flat, convex piece, anticlockwise from outside; what covers nothing is left out. */
  readonly face: (zone: string, corners: readonly number[]) => void
  readonly line: (name: string, from: number, to: number) => void
  readonly positions: () => Float32Array
  readonly triangles: (zone: string) => Uint32Array
  readonly area: (zone: string) => number
  readonly pairs: (name: string) => Uint32Array
  /** Edges that only one triangle of the zone has, two points each. */
  readonly border: (zone: string) => Uint32Array
}

const triangleArea = (a: Point3, b: Point3, c: Point3): number => {
  const [px, py, pz] = [b.x - a.x, b.y - a.y, b.z - a.z]
  const [qx, qy, qz] = [c.x - a.x, c.y - a.y, c.z - a.z]
  return Math.hypot(py * qz - pz * qy, pz * qx - px * qz, px * qy - py * qx) / 2
}

/** Less than this is no triangle, m². */
const leastArea = 1e-12

const borderOf = (triangles: readonly number[]): Uint32Array => {
  const edges = new Map<string, readonly [number, number] | undefined>()
  triangles.forEach((from, k) => {
    const to = triangles[k % 3 === 2 ? k - 2 : k + 1]!
    const key = from < to ? `${from} ${to}` : `${to} ${from}`
    edges.set(key, edges.has(key) ? undefined : [from, to])
  })
  return Uint32Array.from([...edges.values()].flatMap((edge) => edge ?? []))
}

/** An empty builder; its arrays are its own. */
export const meshBuilder = (): MeshBuilder => {
  const points: Point3[] = []
  const known = new Map<string, number>()
  const faces = new Map<string, number[]>()
  const areas = new Map<string, number>()
  const lines = new Map<string, number[]>()
  const drawn = new Set<string>()
  const into = (map: Map<string, number[]>, name: string): number[] => {
    const list = map.get(name) ?? []
    map.set(name, list)
    return list
  }
  return {
    point: (at) => {
      const key = `${Math.round(at.x * perM)} ${Math.round(at.y * perM)} ${Math.round(at.z * perM)}`
      const found = known.get(key)
      if (found !== undefined) return found
      known.set(key, points.length)
      return points.push({ x: at.x, y: at.y, z: at.z }) - 1
    },
    face: (zone, corners) => {
      const [a] = corners
      for (let k = 2; k < corners.length; k++) {
        const [b, c] = [corners[k - 1]!, corners[k]!]
        const area = triangleArea(points[a!]!, points[b]!, points[c]!)
        if (area < leastArea) continue
        into(faces, zone).push(a!, b, c)
        areas.set(zone, (areas.get(zone) ?? 0) + area)
      }
    },
    line: (name, from, to) => {
      const key = `${name} ${Math.min(from, to)} ${Math.max(from, to)}`
      if (from === to || drawn.has(key)) return
      drawn.add(key)
      into(lines, name).push(from, to)
    },
    positions: () => Float32Array.from(points.flatMap(({ x, y, z }) => [x, y, z])),
    triangles: (zone) => Uint32Array.from(faces.get(zone) ?? []),
    area: (zone) => areas.get(zone) ?? 0,
    pairs: (name) => Uint32Array.from(lines.get(name) ?? []),
    border: (zone) => borderOf(faces.get(zone) ?? []),
  }
}
