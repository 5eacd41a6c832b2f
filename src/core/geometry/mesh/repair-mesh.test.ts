import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { gridMesh, insideOut, parabolicHull, together } from '../../../../test/support/hull-meshes.mjs'
import { meshArea, meshBox, meshVolume } from './mesh-measure.ts'
import { neighboursOf } from './neighbours.ts'
import { openLoops } from './open-loops.ts'
import { repairMesh } from './repair-mesh.ts'
import type { TriangleMesh } from './triangle-mesh.ts'

const repaired = (mesh: TriangleMesh, tolerance: number) => repairMesh(mesh, { tolerance, distinct: false })

/** A box of 2 by 3 by 4 with a corner in the origin, facing outward. */
const box: TriangleMesh = {
  positions: Float64Array.from([0, 1, 2, 3, 4, 5, 6, 7].flatMap((i) => [2 * (i & 1), 1.5 * (i & 2), i & 4])),
  triangles: Uint32Array.from([
    ...[0, 2, 3, 0, 3, 1, 4, 5, 7, 4, 7, 6, 0, 1, 5, 0, 5, 4],
    ...[2, 6, 7, 2, 7, 3, 0, 4, 6, 0, 6, 2, 1, 3, 7, 1, 7, 5],
  ]),
}

const nothingFound = {
  merged: 0,
  unused: 0,
  collapsed: 0,
  repeated: 0,
  turned: 0,
  crowdedEdges: 0,
  twistedEdges: 0,
}

/** Every triangle with its own three points, as a file of STL has it. */
const soup = ({ positions, triangles }: TriangleMesh): TriangleMesh => ({
  positions: Float64Array.from([...triangles].flatMap((p) => [...positions.subarray(3 * p, 3 * p + 3)])),
  triangles: triangles.map((_, i) => i),
})

const withTriangles = (mesh: TriangleMesh, change: (list: number[][]) => number[][]): TriangleMesh => {
  const list = Array.from({ length: mesh.triangles.length / 3 }, (_, t) => [
    ...mesh.triangles.subarray(3 * t, 3 * t + 3),
  ])
  return { positions: mesh.positions, triangles: Uint32Array.from(change(list).flat()) }
}

/** The mesh as a set of triangles, each from its least corner in its turn, by places. */
const asSet = ({ positions, triangles }: TriangleMesh): string[] => {
  const place = (p: number) => [...positions.subarray(3 * p, 3 * p + 3)].map((v) => v + 0).join(' ')
  const names: string[] = []
  for (let t = 0; t < triangles.length; t += 3) {
    const corners = [...triangles.subarray(t, t + 3)].map(place)
    const least = corners.indexOf([...corners].sort()[0]!)
    names.push([0, 1, 2].map((k) => corners[(least + k) % 3]).join(' | '))
  }
  return names.sort()
}

describe('a repaired mesh', () => {
  it('of a sound closed one is the same, in one part that encloses its volume', () => {
    const { mesh, parts, found } = repaired(box, 0)
    expect(found).toEqual(nothingFound)
    expect(asSet(mesh)).toEqual(asSet(box))
    expect(parts).toEqual([{ triangles: 12, area: 52, volume: 24, openEdges: 0 }])
    expect(meshVolume(mesh, { x: 7, y: -3, z: 11 })).toBeCloseTo(24, 12)
    expect(meshBox(mesh)).toEqual({ least: { x: 0, y: 0, z: 0 }, most: { x: 2, y: 3, z: 4 } })
  })

  it('shares the points of triangles that have their own, 0 and -0 being the same', () => {
    const apart = soup(box)
    const negative = { ...apart, positions: apart.positions.map((v, i) => (v === 0 && i % 2 === 1 ? -0 : v)) }
    const { mesh, found } = repaired(negative, 0)
    expect(found).toEqual({ ...nothingFound, merged: 36 - 8 })
    expect(mesh.positions).toHaveLength(24)
    expect(asSet(mesh)).toEqual(asSet(box))
  })

  it('loses points of no use, collapsed triangles and second copies, however they are turned', () => {
    const faulty = withTriangles(box, (list) => [
      [1, 1, 2],
      ...list,
      [3, 0, 2],
      [2, 0, 3],
      [5, 5, 5],
      [4, 7, 6],
    ])
    const more = { ...faulty, positions: Float64Array.from([...box.positions, 9, 9, 9]) }
    const { mesh, found, parts } = repaired(more, 0)
    expect(found).toEqual({ ...nothingFound, unused: 1, collapsed: 2, repeated: 3 })
    expect(asSet(mesh)).toEqual(asSet(box))
    expect(parts[0]!.volume).toBe(24)
  })

  it('faces outward when closed, whichever of its triangles were turned', () => {
    fc.assert(
      fc.property(fc.array(fc.boolean(), { minLength: 12, maxLength: 12 }), (turns) => {
        const mixed = withTriangles(box, (list) =>
          list.map(([a, b, c], t) => (turns[t] ? [a!, c!, b!] : [a!, b!, c!])),
        )
        const { mesh, across, found, parts } = repaired(mixed, 0)
        expect(asSet(mesh)).toEqual(asSet(box))
        expect(found.turned).toBe(turns.filter(Boolean).length)
        expect(parts[0]!.volume).toBe(24)
        expect(across).toEqual(neighboursOf(mesh).across)
      }),
    )
  })

  it('faces as most of it did when open', () => {
    const sheet = gridMesh({ along: 4, up: 3 }, (u, v) => [u, v, u * v])
    const mixed = withTriangles(sheet, (list) =>
      list.map(([a, b, c], t) => (t % 3 === 0 ? [a!, c!, b!] : [a!, b!, c!])),
    )
    const { mesh, across, found } = repaired(mixed, 0)
    expect(asSet(mesh)).toEqual(asSet(sheet))
    expect(found.turned).toBe(8)
    expect(across).toEqual(neighboursOf(mesh).across)
  })

  it('faces one way in whatever order its triangles come and whichever were turned', () => {
    const sheet = gridMesh({ along: 7, up: 6 }, (u, v) => [u, v, u * v])
    const count = sheet.triangles.length / 3
    const orders = fc.shuffledSubarray([...Array(count).keys()], { minLength: count, maxLength: count })
    const turns = fc.array(fc.boolean(), { minLength: count, maxLength: count })
    fc.assert(
      fc.property(orders, turns, (order, turn) => {
        const mixed = withTriangles(sheet, (list) =>
          order.map((t) => (turn[t] ? list[t]!.toReversed() : list[t]!)),
        )
        const { mesh, across, found, parts } = repaired(mixed, 0)
        expect([asSet(sheet), asSet(insideOut(sheet))]).toContainEqual(asSet(mesh))
        expect(across).toEqual(neighboursOf(mesh).across)
        expect(found).toMatchObject({ twistedEdges: 0, crowdedEdges: 0 })
        expect(found.turned).toBeLessThanOrEqual(count / 2)
        expect(parts).toHaveLength(1)
      }),
    )
  })

  it('keeps parts apart, each with its own sizes', () => {
    const far = { ...box, positions: box.positions.map((v, i) => (i % 3 === 0 ? v + 10 : 2 * v)) }
    const { parts, partOf } = repaired(
      together(
        box,
        insideOut(far),
        gridMesh({ along: 1, up: 1 }, (u, v) => [u, v, 50]),
      ),
      0,
    )
    expect(parts).toEqual([
      { triangles: 12, area: 52, volume: 24, openEdges: 0 },
      { triangles: 12, area: 2 * (2 * 6 + 2 * 8 + 6 * 8), volume: 96, openEdges: 0 },
      { triangles: 2, area: 1, volume: undefined, openEdges: 4 },
    ])
    expect([...new Set(partOf)]).toEqual([0, 1, 2])
  })

  it('keeps edges where three meet, and says of a twisted band that it faces two ways', () => {
    const fin = { positions: box.positions, triangles: Uint32Array.from([...box.triangles, 0, 7, 1]) }
    const { found, parts } = repaired(fin, 0)
    expect(found.crowdedEdges).toBe(6)
    expect(parts.map((part) => part.volume)).toEqual([undefined, undefined])
    const twist = (u: number, v: number) => {
      const [turn, half] = [2 * Math.PI * u, Math.PI * u]
      const radius = 3 + (v - 0.5) * Math.cos(half)
      return [radius * Math.cos(turn), radius * Math.sin(turn), (v - 0.5) * Math.sin(half)]
    }
    const band = repaired(gridMesh({ along: 20, up: 2 }, twist), 1e-9)
    expect(band.found).toMatchObject({ merged: 3, twistedEdges: expect.any(Number) })
    expect(band.found.twistedEdges).toBeGreaterThan(0)
    expect(openLoops(band.mesh, band.across).length).toBeGreaterThan(0)
  })

  it('closes seams within the tolerance, and only there', () => {
    const hull = parabolicHull({ length: 1, along: 20, up: 8, joined: true })
    const wider = {
      ...hull,
      positions: hull.positions.map((v, i) => (i % 3 === 1 && i > 3 * 21 * 9 ? v + 4e-6 : v)),
    }
    expect(repaired(wider, 1e-6).parts).toHaveLength(2)
    const { parts, found, mesh } = repaired(wider, 5e-6)
    expect(parts).toHaveLength(1)
    expect(found).toMatchObject({ merged: 37, collapsed: 0 })
    expect(meshArea(mesh)).toBeCloseTo(meshArea(hull), 5)
  })

  it('of nothing is nothing', () => {
    const empty = { positions: new Float64Array(0), triangles: new Uint32Array(0) }
    expect(repaired(empty, 1)).toMatchObject({ parts: [], found: nothingFound })
    expect(meshBox(empty)).toBeUndefined()
  })

  it('takes no longer for many triangles in one point than for as many apart', () => {
    const count = 60_000
    const fan = {
      positions: Float64Array.from({ length: 3 * (count + 1) }, (_, i) => Math.sin(i)),
      triangles: Uint32Array.from({ length: 3 * count }, (_, i) =>
        i % 3 === 0 ? 0 : 1 + ((((i / 3) * 7919 + (i % 3)) >>> 0) % count),
      ),
    }
    const apart = { positions: fan.positions, triangles: fan.triangles.map((p, i) => (p + i) % count) }
    const timeOf = (mesh: TriangleMesh): number => {
      const start = performance.now()
      repaired(mesh, 1e-3)
      return performance.now() - start
    }
    const times = [1, 2, 3].map(() => timeOf(fan) / timeOf(apart))
    // In proportion to the square it would be thousands.
    expect(Math.min(...times)).toBeLessThan(20)
  })
})

describe('the rims of a mesh', () => {
  it('are its holes with their perimeters, the longest first', () => {
    const sheet = gridMesh({ along: 6, up: 5 }, (u, v) => [6 * u, 5 * v, 0])
    const holed = withTriangles(sheet, (list) => list.filter((_, t) => ![14, 15, 16, 17, 44].includes(t)))
    const { mesh, across } = repaired(holed, 0)
    const loops = openLoops(mesh, across)
    expect(loops.map((loop) => loop.points.length)).toEqual([22, 6, 3])
    expect(loops.map((loop) => loop.perimeter)).toEqual([22, 6, expect.closeTo(2 + Math.SQRT2, 12)])
  })

  it('stay apart where two holes touch in a point', () => {
    const sheet = gridMesh({ along: 4, up: 4 }, (u, v) => [4 * u, 4 * v, 0])
    const holed = withTriangles(sheet, (list) => list.filter((_, t) => ![10, 11, 20, 21].includes(t)))
    const { mesh, across } = repaired(holed, 0)
    expect(openLoops(mesh, across).map((loop) => loop.perimeter)).toEqual([16, 4, 4])
  })
})
