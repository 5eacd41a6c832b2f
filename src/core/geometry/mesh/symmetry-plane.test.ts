import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { gridMesh, noisy, together } from '../../../../test/support/hull-meshes.mjs'
import type { Point3 } from '../points.ts'
import { cropMesh } from './clip-mesh.ts'
import { nearestPoint, pointTree } from './nearest-point.ts'
import { repairMesh } from './repair-mesh.ts'
import { inOrder, movedMesh, movedPoint, moving, turning } from './similarity.ts'
import { smoothMesh } from './smooth-mesh.ts'
import { solveThree } from './solve-three.ts'
import { symmetryPlane } from './symmetry-plane.ts'
import type { TriangleMesh } from './triangle-mesh.ts'

/** One side of a hull of 7 m that is fuller aft than forward, with topsides; as many points as asked for. */
const side = (sign: 1 | -1, along: number, up: number): TriangleMesh =>
  gridMesh({ along, up }, (u, v) => {
    const full = Math.sin(Math.PI * u ** 0.6) * (0.4 + 0.6 * v)
    return [7 * u, sign * (1.2 * full * v ** 0.7), 1.4 * v - 0.5 * (1 - u * u)]
  })

/** Points of the two sides do not match: no scanner sees both alike. */
const hull = together(side(1, 151, 40), side(-1, 140, 37))
const place = inOrder(turning({ x: 0.3, y: -1, z: 0.4 }, 1.1), moving({ x: 30, y: -4, z: 2 }))

/** How far the plane found is off the true one, in the hull's own frame: at the origin, and in direction. */
const offBy = (mesh: TriangleMesh) => {
  const { plane, ...fit } = symmetryPlane(mesh)!
  const move = movedPoint(place, { x: 0, y: 0, z: 0 })
  const tip = movedPoint(place, { x: 0, y: 1, z: 0 })
  const truth = { x: tip.x - move.x, y: tip.y - move.y, z: tip.z - move.z }
  const { x, y, z } = plane.normal
  const cos = Math.abs(truth.x * x + truth.y * y + truth.z * z)
  const along = (p: Point3) => x * p.x + y * p.y + z * p.z - plane.offset
  const ends = [0, 7].map((at) => Math.abs(along(movedPoint(place, { x: at, y: 0, z: 0.5 }))))
  return { ...fit, angle: Math.acos(Math.min(cos, 1)), distance: Math.max(...ends) }
}

// A busy machine takes its time over them.
describe('the plane of symmetry', { timeout: 60_000 }, () => {
  it('of a hull that lies anyhow is found to a fraction of a millimetre', () => {
    const { angle, distance, rmsDeviation, matchedShare } = offBy(movedMesh(hull, place))
    expect(angle).toBeLessThan(1e-4)
    expect(distance).toBeLessThan(2e-4)
    expect(rmsDeviation).toBeLessThan(5e-4)
    expect(matchedShare).toBeGreaterThan(0.9)
  })

  it('of a smoothed noisy hull is found to a few millimetres, and the deviation tells of the noise', () => {
    const { mesh, across } = repairMesh(hull, { tolerance: 0, distinct: false })
    const rough = smoothMesh(noisy(mesh, { deviation: 0.005, seed: 3 }), { across, goesOn: () => true })!.mesh
    const { angle, distance, rmsDeviation } = offBy(movedMesh(rough, place))
    expect(angle).toBeLessThan(1e-3)
    expect(distance).toBeLessThan(2e-3)
    expect(rmsDeviation).toBeGreaterThan(2e-4)
    expect(rmsDeviation).toBeLessThan(5e-3)
  })

  it('is found where one side is seen only in part, which has no match', () => {
    const seen = { least: { x: 0, y: -9, z: -9 }, most: { x: 4.5, y: 0, z: 9 } }
    const partly = together(side(1, 151, 40), cropMesh(side(-1, 140, 37), seen))
    const { angle, distance, matchedShare } = offBy(movedMesh(partly, place))
    expect(angle).toBeLessThan(1e-4)
    expect(distance).toBeLessThan(2e-4)
    expect(matchedShare).toBeLessThan(0.9)
  })

  it('of nothing is none', () => {
    const empty = { positions: new Float64Array(0), triangles: new Uint32Array(0) }
    expect(symmetryPlane(empty)).toBeUndefined()
  })
})

describe('the nearest point', () => {
  it('is the one that looking at all of them finds', () => {
    const number = fc.double({ min: -3, max: 3, noNaN: true })
    const places = fc.array(fc.tuple(number, number, number), { minLength: 1, maxLength: 200, size: 'max' })
    fc.assert(
      fc.property(places, fc.tuple(number, number, number), (points, place) => {
        const tree = pointTree(Float64Array.from(points.flat()), Uint32Array.from(points.keys()))
        const distance = (p: readonly number[]) => Math.hypot(...p.map((value, k) => value - place[k]!))
        const least = Math.min(...points.map(distance))
        expect(distance(points[nearestPoint(tree, place)!]!)).toBeCloseTo(least, 12)
      }),
    )
  })

  it('is found among equal points, and in none', () => {
    const tree = pointTree(
      new Float64Array(3000).fill(2),
      Uint32Array.from({ length: 1000 }, (_, i) => i),
    )
    expect(nearestPoint(tree, [0, 0, 0])).toBeTypeOf('number')
    expect(nearestPoint(pointTree(new Float64Array(0), new Uint32Array(0)), [0, 0, 0])).toBeUndefined()
  })
})

describe('three equations', () => {
  it('are solved, or have no solution', () => {
    const solution = solveThree([
      [0, 2, 1, 7],
      [1, -1, 3, 8],
      [2, 1, 0, 4],
    ])!
    expect(solution.map((value) => Math.round(value * 1e9) / 1e9)).toEqual([1, 2, 3])
    expect(
      solveThree([
        [1, 2, 3, 1],
        [2, 4, 6, 2],
        [1, 0, 0, 0],
      ]),
    ).toBeUndefined()
  })
})
