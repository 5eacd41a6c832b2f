import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { distance3, type Point3 } from '../points.ts'
import { meshArea, meshVolume } from './mesh-measure.ts'
import { heightOver, planeThrough } from './plane.ts'
import {
  inOrder,
  mirroring,
  movedMesh,
  movedPoint,
  moving,
  type Similarity,
  scaling,
  turning,
  undoing,
} from './similarity.ts'

const number = (size: number) => fc.double({ min: -size, max: size, noNaN: true })
const points = fc.record({ x: number(5), y: number(5), z: number(5) })
const directions = points.filter(({ x, y, z }) => Math.hypot(x, y, z) > 0.1)
const similarities = fc
  .record({
    by: points,
    about: directions,
    angle: number(4),
    scale: fc.double({ min: 0.1, max: 10, noNaN: true }),
    mirror: fc.boolean(),
  })
  .map(({ by, about, angle, scale, mirror }) => {
    const steps: Similarity[] = [turning(about, angle), scaling(scale), moving(by)]
    if (mirror) steps.push(mirroring(planeThrough(by, about)))
    return steps.reduce(inOrder)
  })

const near = (a: Point3, b: Point3) => expect(distance3(a, b)).toBeLessThan(1e-9)
const tetrahedron = {
  positions: Float64Array.from([0, 0, 0, 1, 0, 0, 0, 2, 0, 0, 0, 3]),
  triangles: Uint32Array.from([0, 2, 1, 0, 1, 3, 0, 3, 2, 1, 2, 3]),
}
const origin = { x: 0, y: 0, z: 0 }

describe('a similarity', () => {
  it('scales distances, areas and volumes, and keeps outside outside', () => {
    fc.assert(
      fc.property(similarities, points, points, (s, a, b) => {
        expect(distance3(movedPoint(s, a), movedPoint(s, b))).toBeCloseTo(s.scale * distance3(a, b), 8)
        const moved = movedMesh(tetrahedron, s)
        expect(meshArea(moved) / s.scale ** 2).toBeCloseTo(meshArea(tetrahedron), 8)
        expect(meshVolume(moved, origin) / s.scale ** 3).toBeCloseTo(1, 8)
      }),
    )
  })

  it('is undone, and follows another', () => {
    fc.assert(
      fc.property(similarities, similarities, points, (s, next, p) => {
        near(movedPoint(undoing(s), movedPoint(s, p)), p)
        near(movedPoint(inOrder(s, next), p), movedPoint(next, movedPoint(s, p)))
      }),
    )
  })

  it('turns anticlockwise seen from the tip of the axis', () => {
    near(movedPoint(turning({ x: 0, y: 0, z: 3 }, Math.PI / 2), { x: 1, y: 0, z: 7 }), { x: 0, y: 1, z: 7 })
    near(movedPoint(turning({ x: 1, y: 1, z: 1 }, (2 * Math.PI) / 3), { x: 1, y: 2, z: 3 }), {
      x: 3,
      y: 1,
      z: 2,
    })
  })

  it('mirrors to the same distance behind the plane', () => {
    fc.assert(
      fc.property(points, directions, points, (at, direction, p) => {
        const plane = planeThrough(at, direction)
        const image = movedPoint(mirroring(plane), p)
        expect(heightOver(plane, image)).toBeCloseTo(-heightOver(plane, p), 9)
        expect(heightOver(plane, at)).toBeCloseTo(0, 9)
        near(movedPoint(mirroring(plane), image), p)
      }),
    )
  })
})
