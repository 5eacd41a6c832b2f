import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { gridMesh, parabolicHull } from '../../../../test/support/hull-meshes.mjs'
import { distance3, type Point3 } from '../points.ts'
import { clipMesh, cropMesh } from './clip-mesh.ts'
import { meshArea, meshBox, meshVolume } from './mesh-measure.ts'
import { flippedPlane, heightOver, heightsOver, levelPlane, planeFoot, planeThrough } from './plane.ts'
import { planeSection } from './plane-section.ts'
import { splitByPlane } from './plane-split.ts'
import { repairMesh } from './repair-mesh.ts'
import type { TriangleMesh } from './triangle-mesh.ts'

const repaired = (mesh: TriangleMesh, tolerance: number) => repairMesh(mesh, { tolerance, distinct: false })

/** A ring of a tube, closed: radii 3 and 1 about z. */
const ring = repaired(
  gridMesh({ along: 48, up: 24 }, (u, v) => {
    const [turn, tube] = [2 * Math.PI * u, 2 * Math.PI * v]
    const radius = 3 + Math.cos(tube)
    return [radius * Math.cos(turn), radius * Math.sin(turn), Math.sin(tube)]
  }),
  1e-9,
).mesh

const number = (size: number) => fc.double({ min: -size, max: size, noNaN: true })
const planes = fc
  .record({ x: number(1), y: number(1), z: number(1), px: number(2), py: number(2), pz: number(1) })
  .filter(({ x, y, z }) => Math.hypot(x, y, z) > 0.1)
  .map(({ x, y, z, px, py, pz }) => planeThrough({ x: px, y: py, z: pz }, { x, y, z }))

/** Area inside closed lines, those to the left of them counting. */
const areaWithin = (lines: readonly { readonly points: readonly Point3[] }[], normal: Point3): number =>
  lines.reduce((sum, { points }) => {
    const doubled = points.reduce((s, b, i) => {
      const a = points[i - 1] ?? b
      const [x, y, z] = [a.y * b.z - a.z * b.y, a.z * b.x - a.x * b.z, a.x * b.y - a.y * b.x]
      return s + x * normal.x + y * normal.y + z * normal.z
    }, 0)
    return sum + doubled / 2
  }, 0)

describe('a mesh cut by a plane', () => {
  it('has its area and volume on both sides, by splitting and by clipping alike', () => {
    fc.assert(
      fc.property(planes, (plane) => {
        const { below, above } = splitByPlane(ring, plane)
        const [up, down] = [clipMesh(ring, plane), clipMesh(ring, flippedPlane(plane))]
        expect(meshArea(up)).toBeCloseTo(above.area, 9)
        expect(meshArea(down)).toBeCloseTo(below.area, 9)
        expect(above.area + below.area).toBeCloseTo(meshArea(ring), 9)
        const foot = planeFoot(plane)
        expect(meshVolume(up, foot)).toBeCloseTo(above.volume, 9)
        expect(above.volume + below.volume).toBeCloseTo(meshVolume(ring, foot), 9)
        for (const [half, sign] of [
          [up, 1],
          [down, -1],
        ] as const)
          for (let p = 0; p < half.positions.length; p += 3) {
            const [x, y, z] = [half.positions[p]!, half.positions[p + 1]!, half.positions[p + 2]!]
            expect(sign * heightOver(plane, { x, y, z })).toBeGreaterThan(-1e-12)
          }
      }),
      { numRuns: 60 },
    )
  })

  it('is open along its section and nowhere else', () => {
    fc.assert(
      fc.property(planes, (plane) => {
        // A plane that only touches cuts nothing off, but has a line there and back.
        fc.pre(heightsOver(ring.positions, plane).every((height) => height !== 0))
        const lines = planeSection(ring, plane)
        const { mesh, across } = repaired(clipMesh(ring, plane), 0)
        let rim = 0
        for (let edge = 0; edge < across.length; edge++) {
          if (across[edge]! >= 0) continue
          const [a, b] = [mesh.triangles[edge]!, mesh.triangles[edge % 3 === 2 ? edge - 2 : edge + 1]!]
          rim += Math.hypot(...[0, 1, 2].map((k) => mesh.positions[3 * a + k]! - mesh.positions[3 * b + k]!))
        }
        expect(rim).toBeCloseTo(
          lines.reduce((sum, { length }) => sum + length, 0),
          9,
        )
      }),
      { numRuns: 60 },
    )
  })

  it('gives closed lines with the inside to their left', () => {
    const level = planeSection(ring, levelPlane(0.1))
    expect(level.map(({ closed }) => closed)).toEqual([true, true])
    expect(level[0]!.points[0]).toEqual(level[0]!.points.at(-1))
    const [outer, inner] = [3 + Math.sqrt(0.99), 3 - Math.sqrt(0.99)]
    expect(level[0]!.length / (2 * Math.PI * outer)).toBeCloseTo(1, 2)
    expect(level[1]!.length / (2 * Math.PI * inner)).toBeCloseTo(1, 2)
    const area = areaWithin(level, { x: 0, y: 0, z: 1 })
    expect(area / (Math.PI * (outer ** 2 - inner ** 2))).toBeCloseTo(1, 1)
    // The volume between two levels lies between the sections' areas times their distance.
    const between =
      splitByPlane(ring, levelPlane(0.1)).below.volume - splitByPlane(ring, levelPlane(0.099)).below.volume
    expect(between / 0.001).toBeCloseTo(area, 1)
  })

  it('gives open lines where the mesh is open, whole through points that lie in the plane', () => {
    const sheet = gridMesh({ along: 4, up: 4 }, (u, v) => [4 * u, 4 * v, u])
    const lines = planeSection(sheet, planeThrough({ x: 2, y: 0, z: 0 }, { x: 1, y: 0, z: 0 }))
    expect(lines).toHaveLength(1)
    expect(lines[0]).toMatchObject({ closed: false, length: 4 })
    expect(lines[0]!.points).toHaveLength(5)
    const slanted = planeSection(sheet, planeThrough({ x: 0, y: 0, z: 0 }, { x: 1, y: -1, z: 0 }))
    expect(slanted).toHaveLength(1)
    expect(slanted[0]!.length).toBeCloseTo(Math.hypot(4, 4, 1), 12)
    expect(distance3(slanted[0]!.points[0]!, slanted[0]!.points.at(-1)!)).toBeCloseTo(Math.hypot(4, 4, 1), 12)
  })

  it('uses the points that lie in the plane as they are', () => {
    const sheet = gridMesh({ along: 4, up: 4 }, (u, v) => [4 * u, 4 * v, u])
    for (const side of [1, -1]) {
      const half = clipMesh(sheet, planeThrough({ x: 2, y: 0, z: 0 }, { x: side, y: 0, z: 0 }))
      expect(half.positions).toHaveLength(3 * 15)
      expect(half.triangles).toHaveLength(3 * 16)
    }
    // From 0.3 to 0.1 by the whole difference is not 0.1 to the last bit.
    const tent = {
      positions: Float64Array.from([0.3, 0.3, -1, 0.3, -0.3, -1, -0.3, 0.3, 1, -0.3, -0.3, 1, 0.1, 0.1, 0]),
      triangles: Uint32Array.from([0, 2, 4, 2, 3, 4, 3, 1, 4, 1, 0, 4]),
    }
    const [line] = planeSection(tent, levelPlane(0))
    expect(line!.points).toHaveLength(3)
    expect(line!.points[1]).toEqual({ x: 0.1, y: 0.1, z: 0 })
  })

  it('that does not reach it is whole, or nothing', () => {
    expect(clipMesh(ring, levelPlane(-9))).toBe(ring)
    expect(clipMesh(ring, levelPlane(9)).triangles).toHaveLength(0)
    expect(planeSection(ring, levelPlane(9))).toEqual([])
    expect(splitByPlane(ring, levelPlane(9)).above).toEqual({ area: 0, volume: 0 })
  })
})

describe('a mesh cropped to a box', () => {
  it('lies in it and has the area of its pieces', () => {
    const hull = parabolicHull({ length: 4, along: 40, up: 16, joined: true })
    const half = { least: { x: -9, y: 0, z: -9 }, most: { x: 9, y: 9, z: 9 } }
    expect(meshArea(cropMesh(hull, half))).toBeCloseTo(meshArea(hull) / 2, 9)
    const small = { least: { x: -1.03, y: 0.02, z: -0.2 }, most: { x: 0.77, y: 0.15, z: -0.05 } }
    const { least, most } = meshBox(cropMesh(hull, small))!
    expect(least.x).toBeCloseTo(-1.03, 12)
    expect(most.x).toBeCloseTo(0.77, 12)
    expect(least.y).toBeGreaterThanOrEqual(0.02 - 1e-12)
    expect(most.y).toBeLessThanOrEqual(0.15 + 1e-12)
  })
})
