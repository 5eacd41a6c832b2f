import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Hull } from './hull.ts'
import type { HullCuts } from './hull-cuts.ts'
import { hullFromSizes } from './hull-from-sizes.ts'
import { hullFromStations } from './hull-from-stations.ts'
import { type HullMesh, hullMesh, type MeshZone } from './hull-mesh.ts'
import { hullZones } from './hull-zones.ts'
import { stripeArea } from './stripe-area.ts'
import { rakeTransom } from './transom-rake.ts'

const drawn = (form: 'hard-chine' | 'round-bilge', lengthOverall: number, beam: number): Hull => {
  const result = hullFromSizes({ form, lengthOverall, beam, freeboardStem: 1.25 })
  if (!result.ok) throw new Error(JSON.stringify(result.faults))
  return result.hull
}

/** A V-bottom to a chine at z = -0.1, then sides that lean out by 0.2 in 1; flat at both ends, 5 m long. */
const length = 5
const trough = (() => {
  const result = hullFromStations(
    [0, 1, 2.5, 4, length].map((x, i) => ({
      id: `${i}`,
      x,
      points: [
        { y: 0, z: -0.4 },
        { y: 1, z: -0.1, knuckle: 'chine' as const },
        { y: 1.2, z: 0.9 },
      ],
    })),
  )
  if (!result.ok) throw new Error(JSON.stringify(result.faults))
  return result.hull
})()
const powerboat = drawn('hard-chine', 7.7, 2.5)
const cruiser = drawn('round-bilge', 10, 3.2)
const slope = Math.hypot(1, 0.2)

const atWater: HullCuts = { bottomTo: { kind: 'height', z: 0 } }
const toChine: HullCuts = { bottomTo: { kind: 'chine' } }
const plain = { rake: 0, stripes: [], decks: [] }

const zoneOf = ({ zones }: HullMesh, id: string): MeshZone => {
  const found = zones.find((zone) => zone.id === id)
  if (!found) throw new Error(`mesh: no zone, got ${zones.map((zone) => zone.id)}, expected ${id}`)
  return found
}

type Triple = readonly [number, number, number]

const corner = ({ positions }: HullMesh, id: number): Triple => [
  positions[3 * id]!,
  positions[3 * id + 1]!,
  positions[3 * id + 2]!,
]

/** Sum over triangles of their area vectors, and of the volume over the origin. */
const sums = (mesh: HullMesh, zones: readonly MeshZone[]) => {
  const sum = { x: 0, y: 0, z: 0, area: 0, volume: 0 }
  for (const { triangles } of zones)
    for (let k = 0; k < triangles.length; k += 3) {
      const [a, b, c] = [0, 1, 2].map((n) => corner(mesh, triangles[k + n]!)) as [Triple, Triple, Triple]
      const [p, q] = [b, c].map((to) => to.map((value, n) => value - a[n]!)) as [number[], number[]]
      const [x, y, z] = [
        (p[1]! * q[2]! - p[2]! * q[1]!) / 2,
        (p[2]! * q[0]! - p[0]! * q[2]!) / 2,
        (p[0]! * q[1]! - p[1]! * q[0]!) / 2,
      ]
      sum.x += x
      sum.y += y
      sum.z += z
      sum.area += Math.hypot(x, y, z)
      sum.volume += (a[0] * x + a[1] * y + a[2] * z) / 3
    }
  return sum
}

/** How often each edge is walked, by its direction. */
const edgesOf = ({ zones }: HullMesh): Map<string, number> => {
  const edges = new Map<string, number>()
  for (const { triangles } of zones)
    for (let k = 0; k < triangles.length; k += 3)
      for (let n = 0; n < 3; n++) {
        const key = `${triangles[k + n]} ${triangles[k + ((n + 1) % 3)]}`
        edges.set(key, (edges.get(key) ?? 0) + 1)
      }
  return edges
}

describe('the mesh of a flat-sided hull', () => {
  it('has the areas of its rectangles and trapezia', () => {
    const mesh = hullMesh(trough, { ...plain, cuts: toChine })
    expect(zoneOf(mesh, 'topsides-port').areaM2).toBeCloseTo(length * slope, 9)
    expect(zoneOf(mesh, 'topsides-starboard').areaM2).toBeCloseTo(length * slope, 9)
    expect(zoneOf(mesh, 'bottom').areaM2).toBeCloseTo(2 * length * Math.hypot(1, 0.3), 9)
    expect(zoneOf(mesh, 'transom').areaM2).toBeCloseTo(0.3 + 2.2, 9)
    expect(zoneOf(mesh, 'bow').areaM2).toBeCloseTo(0.3 + 2.2, 9)
    expect(zoneOf(mesh, 'deck').areaM2).toBeCloseTo(2.4 * length, 9)
  })

  it('looks outward everywhere: port to port, transom aft, deck up, and holds the prism', () => {
    const mesh = hullMesh(trough, { ...plain, cuts: toChine })
    expect(sums(mesh, [zoneOf(mesh, 'topsides-port')]).y).toBeCloseTo(length, 5)
    expect(sums(mesh, [zoneOf(mesh, 'topsides-starboard')]).y).toBeCloseTo(-length, 5)
    expect(sums(mesh, [zoneOf(mesh, 'transom')]).x).toBeCloseTo(-2.5, 5)
    expect(sums(mesh, [zoneOf(mesh, 'deck')]).z).toBeCloseTo(2.4 * length, 5)
    expect(sums(mesh, mesh.zones).volume).toBeCloseTo(2.5 * length, 5)
  })

  it('has a stripe between its heights, cut out of the sides', () => {
    const stripes = [{ id: 'one', zLow: 0.1, zHigh: 0.2 }]
    const mesh = hullMesh(trough, { cuts: toChine, decks: [], rake: 0, stripes })
    expect(zoneOf(mesh, 'one').areaM2).toBeCloseTo(2 * length * 0.1 * slope, 9)
    expect(zoneOf(mesh, 'topsides-port').areaM2).toBeCloseTo(length * 0.9 * slope, 9)
  })

  it('loses the wedge of a leaning transom, which grows by 1/cos of the lean', () => {
    for (const rake of [0.25, -0.2]) {
      const mesh = hullMesh(trough, { cuts: toChine, decks: [], rake, stripes: [] })
      const raked = rakeTransom(trough, hullZones(trough, toChine).zones, { rake })
      for (const id of ['topsides-port', 'bottom', 'transom'])
        expect(zoneOf(mesh, id).areaM2, `${id} at ${rake}`).toBeCloseTo(
          raked.find((zone) => zone.id === id)!.area,
          9,
        )
    }
  })

  it('gives each zone its border', () => {
    const mesh = hullMesh(trough, { ...plain, cuts: toChine })
    let sum = 0
    const { border } = zoneOf(mesh, 'topsides-port')
    for (let k = 0; k < border.length; k += 2) {
      const [a, b] = [corner(mesh, border[k]!), corner(mesh, border[k + 1]!)]
      sum += Math.hypot(b[0] - a[0], b[1] - a[1], b[2] - a[2])
    }
    expect(sum).toBeCloseTo(2 * length + 2 * slope, 5)
  })

  it('has its lines where they are', () => {
    const mesh = hullMesh(trough, { ...plain, cuts: toChine })
    const lengthOf = (pairs: Uint32Array): number => {
      let sum = 0
      for (let k = 0; k < pairs.length; k += 2) {
        const [a, b] = [corner(mesh, pairs[k]!), corner(mesh, pairs[k + 1]!)]
        sum += Math.hypot(b[0] - a[0], b[1] - a[1], b[2] - a[2])
      }
      return sum
    }
    const line = (kind: string) => lengthOf(mesh.lines.find((one) => one.kind === kind)!.pairs)
    expect(line('sheer')).toBeCloseTo(2 * length, 5)
    expect(line('chine')).toBeCloseTo(2 * length, 5)
    expect(line('keel')).toBeCloseTo(length, 5)
    expect(line('waterline')).toBeCloseTo(2 * length, 5)
    expect(line('end')).toBeCloseTo(4 * (slope + Math.hypot(1, 0.3)), 5)
    expect(lengthOf(zoneOf(mesh, 'topsides-port').stations)).toBeCloseTo(3 * slope, 5)
  })
})

describe('a face on the deck', () => {
  it('covers its outline without its hole, and lies on the deck', () => {
    const decks = [
      {
        id: 'sole',
        outlines: [
          [
            [1, -0.5],
            [3, -0.5],
            [3, 0.5],
            [1, 0.5],
          ],
          [
            [1.5, -0.2],
            [2, 0.1],
            [1.5, 0.1],
          ],
        ] as const,
      },
    ]
    const mesh = hullMesh(trough, { ...plain, cuts: toChine, decks })
    const sole = zoneOf(mesh, 'sole')
    expect(sole.areaM2).toBeCloseTo(2 - 0.075, 9)
    expect(sums(mesh, [sole]).z).toBeCloseTo(2 - 0.075, 6)
    for (const id of sole.triangles) expect(corner(mesh, id)[2]).toBeCloseTo(0.902, 6)
    expect(sole.border.length).toBeGreaterThanOrEqual(14)
  })
})

it('two halves of a face on the deck have no rim between them', () => {
  const half = (sign: 1 | -1) =>
    [
      [1, 0],
      [3, 0],
      [3, sign * 0.5],
      [1, sign * 0.5],
    ] as const
  const decks = [{ id: 'top', outlines: [half(1), half(-1)] }]
  const mesh = hullMesh(trough, { ...plain, cuts: toChine, decks })
  const { border, areaM2 } = zoneOf(mesh, 'top')
  expect(areaM2).toBeCloseTo(2, 9)
  for (let k = 0; k < border.length; k += 2) {
    const off = Math.abs(corner(mesh, border[k]!)[1]) + Math.abs(corner(mesh, border[k + 1]!)[1])
    expect(off).toBeGreaterThan(0.4)
  }
})

describe('the mesh of a drawn hull', () => {
  const height = fc.double({ min: -0.3, max: 0.7, noNaN: true })
  const cuts = fc.record({
    bottomTo: fc.oneof(
      height.map((z) => ({ kind: 'height' as const, z })),
      fc.constant({ kind: 'chine' as const }),
    ),
    bootTop: fc.record({ zLow: height, zHigh: height, acrossTransom: fc.boolean() }),
  })

  /** Flat triangles lie inside a round surface: a thousandth, or a square centimetre of a zone that is next to nothing. */
  it('has the area of each zone within a thousandth, wherever it is cut', () => {
    fc.assert(
      fc.property(fc.constantFrom(powerboat, cruiser), cuts, (hull, asked) => {
        const mesh = hullMesh(hull, { ...plain, cuts: asked })
        for (const zone of hullZones(hull, asked).zones) {
          const off = Math.abs((mesh.zones.find(({ id }) => id === zone.id)?.areaM2 ?? 0) - zone.area)
          expect(off, zone.id).toBeLessThan(Math.max(1e-3 * zone.area, 1e-4))
        }
      }),
      { numRuns: 30 },
    )
  })

  it('is closed: every edge of a triangle is walked once each way, over all zones', () => {
    for (const hull of [powerboat, cruiser])
      for (const rake of [0, 0.2]) {
        const stripes = [{ id: 's', zLow: 0.05, zHigh: (x: number) => 0.1 + 0.01 * x }]
        const edges = edgesOf(hullMesh(hull, { cuts: atWater, decks: [], rake, stripes }))
        const open = [...edges].filter(([key, count]) => {
          const [a, b] = key.split(' ')
          return count !== 1 || edges.get(`${b} ${a}`) !== 1
        })
        expect(open).toEqual([])
      }
  })

  it('holds the water it displaces', () => {
    const mesh = hullMesh(powerboat, { ...plain, cuts: atWater })
    const { volume } = sums(mesh, mesh.zones)
    const deck = hullMesh(powerboat, { ...plain, cuts: { bottomTo: { kind: 'height', z: 5 } } })
    expect(sums(deck, deck.zones).volume).toBeCloseTo(volume, 6)
    const wet = mesh.zones.filter(({ id }) => id === 'bottom')
    // Of what lies below the water the volume over the origin is that of the bottom alone: the cut is at z = 0.
    expect(sums(mesh, wet).volume).toBeCloseTo(powerboat.particulars.displacedVolume, 2)
  })

  it('has the stripe that is measured for its tape', () => {
    const limits = { zLow: 0.06, zHigh: (x: number) => 0.12 + 0.004 * x }
    for (const hull of [powerboat, cruiser]) {
      const mesh = hullMesh(hull, { cuts: toChine, decks: [], rake: 0, stripes: [{ id: 's', ...limits }] })
      expect(zoneOf(mesh, 's').areaM2 / stripeArea(hull, limits).area).toBeCloseTo(1, 3)
    }
  })
})
