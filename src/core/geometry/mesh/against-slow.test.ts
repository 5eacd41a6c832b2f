// What is fast held against what is obvious, on seeded triangles of every kind of mess.
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { chainsOf } from './chains.ts'
import { crowded, neighboursOf, nextEdge, open } from './neighbours.ts'
import { orientationOf } from './orientation.ts'
import type { TriangleMesh } from './triangle-mesh.ts'
import { weldEqual } from './weld.ts'
import { weldNear } from './weld-near.ts'

const seed = 20270412

/** Triangles between few points, so that edges are shared by two, three and more. */
const messes = fc
  .array(fc.tuple(fc.nat(8), fc.nat(8), fc.nat(8)), { maxLength: 25, size: 'max' })
  .map((list) => list.filter(([a, b, c]) => a !== b && b !== c && c !== a))
  .map(
    (list): TriangleMesh => ({ positions: new Float64Array(27), triangles: Uint32Array.from(list.flat()) }),
  )

const endsOf = ({ triangles }: TriangleMesh, edge: number) => [triangles[edge]!, triangles[nextEdge(edge)]!]
const sameEdge = (mesh: TriangleMesh, edge: number): number[] => {
  const ends = endsOf(mesh, edge).sort().join()
  return [...mesh.triangles.keys()].filter((other) => endsOf(mesh, other).sort().join() === ends)
}

describe('neighbours', () => {
  it('are those that looking at every pair of edges finds', () => {
    fc.assert(
      fc.property(messes, (mesh) => {
        const { across, repeated } = neighboursOf(mesh)
        for (const edge of mesh.triangles.keys()) {
          const others = sameEdge(mesh, edge).filter((other) => other !== edge)
          expect(across[edge]).toBe(others.length === 0 ? open : others.length === 1 ? others[0] : crowded)
        }
        const names = Array.from({ length: mesh.triangles.length / 3 }, (_, t) =>
          [...mesh.triangles.subarray(3 * t, 3 * t + 3)].sort().join(),
        )
        // Of several edges crowded with copies not every copy is seen at once, but one of them is.
        const copies = names.map((name, t) => names.indexOf(name) < t)
        expect(repeated !== undefined).toBe(copies.includes(true))
        for (const [t, mark] of (repeated ?? new Uint8Array(0)).entries())
          if (mark) expect(copies[t]).toBe(true)
      }),
      { seed, numRuns: 300 },
    )
  })
})

describe('the parts of a mesh', () => {
  it('are those that walking from triangle to triangle finds, facing as their first', () => {
    fc.assert(
      fc.property(messes, (mesh) => {
        const { across } = neighboursOf(mesh)
        const { partOf, parts, against } = orientationOf(mesh, across)
        const count = mesh.triangles.length / 3
        const seen: number[] = Array(count).fill(-1)
        let next = 0
        for (let t = 0; t < count; t++) {
          if (seen[t] !== -1) continue
          const walk = [t]
          seen[t] = next
          for (let here = walk.pop(); here !== undefined; here = walk.pop())
            for (const edge of [3 * here, 3 * here + 1, 3 * here + 2]) {
              const beyond = Math.floor(across[edge]! / 3)
              if (across[edge]! < 0 || seen[beyond] !== -1) continue
              seen[beyond] = next
              walk.push(beyond)
            }
          next++
        }
        expect([...partOf]).toEqual(seen)
        expect(parts).toHaveLength(next)
        for (const [i, part] of parts.entries()) {
          const edges = [...across.keys()].filter((edge) => partOf[Math.floor(edge / 3)] === i)
          expect(part.open).toBe(edges.filter((edge) => across[edge] === open).length)
          expect(part.crowded).toBe(edges.filter((edge) => across[edge] === crowded).length)
          expect(part.against).toBe([...against].filter((mark, t) => mark === 1 && partOf[t] === i).length)
          const facesTwoWays = edges.filter((edge) => {
            const beyond = across[edge]!
            if (beyond < 0) return false
            const turn = mesh.triangles[edge] === mesh.triangles[beyond] ? 1 : 0
            return (against[Math.floor(edge / 3)]! ^ against[Math.floor(beyond / 3)]!) !== turn
          })
          expect(part.twisted).toBe(facesTwoWays.length / 2)
        }
      }),
      { seed, numRuns: 300 },
    )
  })
})

const places = fc.array(fc.tuple(fc.nat(6), fc.nat(6), fc.nat(6)), {
  minLength: 3,
  maxLength: 60,
  size: 'max',
})

describe('joined points', () => {
  it('are one where their places are equal, numbered by their first use', () => {
    fc.assert(
      fc.property(places, fc.array(fc.nat(200), { maxLength: 90, size: 'max' }), (points, uses) => {
        const positions = Float64Array.from(points.flat(), (v) => v / 7)
        const whole = uses.slice(0, uses.length - (uses.length % 3)).map((use) => use % points.length)
        const { mesh, merged, unused } = weldEqual({ positions, triangles: Uint32Array.from(whole) })
        const names = whole.map((use) => points[use]!.join())
        const distinct = [...new Set(names)]
        expect([...mesh.triangles]).toEqual(names.map((name) => distinct.indexOf(name)))
        const got = distinct.map((_, i) => [...mesh.positions.subarray(3 * i, 3 * i + 3)])
        expect(got).toEqual(distinct.map((name) => name.split(',').map((v) => Number(v) / 7)))
        expect(merged).toBe(new Set(whole).size - distinct.length)
        expect(unused).toBe(points.length - new Set(whole).size)
      }),
      { seed, numRuns: 300 },
    )
  })

  it('within a tolerance go to the nearest of those before that stayed', () => {
    // On a grid, so that several may be as near.
    const near = fc.array(fc.tuple(fc.nat(9), fc.nat(9), fc.nat(9)), {
      minLength: 3,
      maxLength: 90,
      size: 'max',
    })
    fc.assert(
      fc.property(near, fc.constantFrom(1, 1.5, 2, 3), (points, tolerance) => {
        const distance = (a: number, b: number) => Math.hypot(...points[a]!.map((v, k) => v - points[b]![k]!))
        const stayed: number[] = []
        const goal = points.map((_, i) => {
          const close = stayed.filter((other) => distance(i, other) <= tolerance)
          const least = Math.min(...close.map((other) => distance(i, other)))
          const to = close.find((other) => distance(i, other) === least)
          if (to === undefined) stayed.push(i)
          return to ?? i
        })
        const triangles = Uint32Array.from(points.keys()).slice(0, points.length - (points.length % 3))
        const among = Uint32Array.from(points.keys())
        const { mesh, merged } = weldNear(
          { positions: Float64Array.from(points.flat()), triangles },
          { tolerance, among },
        )
        expect([...mesh.triangles]).toEqual(goal.slice(0, triangles.length))
        expect(merged).toBe(points.length - stayed.length)
      }),
      { seed, numRuns: 300 },
    )
  })
})

describe('lines through pieces', () => {
  it('hold every piece once, each in its direction, and are closed where they come back', () => {
    const pieces = fc.array(fc.tuple(fc.nat(9), fc.nat(9)), { maxLength: 30, size: 'max' })
    fc.assert(
      fc.property(pieces, (list) => {
        const chains = chainsOf(list.flat(), 10)
        const used = chains.flatMap(({ ends }) => ends.slice(1).map((end, i) => `${ends[i]}-${end}`))
        expect(used.sort()).toEqual(list.map(([from, to]) => `${from}-${to}`).sort())
        for (const { ends, closed } of chains) expect(closed).toBe(ends[0] === ends.at(-1))
      }),
      { seed, numRuns: 300 },
    )
  })

  it('are whole where two pieces meet at every end', () => {
    const ring = [3, 1, 4, 2, 0].flatMap((from) => [from, (from + 1) % 5])
    expect(chainsOf([...ring, 7, 8, 6, 7], 9)).toEqual([
      { ends: [6, 7, 8], closed: false },
      { ends: [3, 4, 0, 1, 2, 3], closed: true },
    ])
  })
})
