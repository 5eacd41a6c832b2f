import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Facing } from './facing.ts'
import { camberFacings, type FacingShare, meshFacings, type Triangles } from './facings.ts'
import { hullFromSizes } from './hull-from-sizes.ts'
import { hullMesh, type MeshZone } from './hull-mesh.ts'

const degree = Math.PI / 180

const normalOf = ({ normalAzimuth, tilt }: Facing) => [
  Math.sin(tilt) * Math.cos(normalAzimuth),
  -Math.sin(tilt) * Math.sin(normalAzimuth),
  Math.cos(tilt),
]
/** Mean over the parts of what the sun puts on them, as a share of it full on. */
const lit = (parts: readonly FacingShare[], sun: readonly number[]) =>
  parts.reduce(
    (sum, part) =>
      sum +
      part.share *
        Math.max(
          0,
          normalOf(part).reduce((dot, value, n) => dot + value * sun[n]!, 0),
        ),
    0,
  )
/** The same straight from the triangles. */
const litSlowly = ({ positions, triangles }: Triangles, sun: readonly number[]) => {
  let whole = 0
  let sunlit = 0
  for (let k = 0; k < triangles.length; k += 3) {
    const [a, b, c] = [0, 1, 2].map((n) =>
      Array.from(positions.slice(3 * triangles[k + n]!, 3 * triangles[k + n]! + 3)),
    ) as [number[], number[], number[]]
    const [p, q] = [b, c].map((to) => to.map((value, n) => value - a[n]!)) as [number[], number[]]
    const vector = [
      (p[1]! * q[2]! - p[2]! * q[1]!) / 2,
      (p[2]! * q[0]! - p[0]! * q[2]!) / 2,
      (p[0]! * q[1]! - p[1]! * q[0]!) / 2,
    ]
    whole += Math.hypot(...vector)
    sunlit += Math.max(
      0,
      vector.reduce((dot, value, n) => dot + value * sun[n]!, 0),
    )
  }
  return sunlit / whole
}

const cruiser = (() => {
  const result = hullFromSizes({ form: 'round-bilge', lengthOverall: 10, beam: 3.2, freeboardStem: 1.25 })
  if (!result.ok) throw new Error(JSON.stringify(result.faults))
  return hullMesh(result.hull, {
    rake: 0.3,
    stripes: [],
    decks: [],
    cuts: { bottomTo: { kind: 'height', z: 0 } },
  })
})()
const zone = (id: string): MeshZone => cruiser.zones.find((one) => one.id === id)!
const partsOf = (id: string) => meshFacings({ ...cruiser, triangles: zone(id).triangles })

describe('ways a surface looks', () => {
  it('add up to the whole of each zone', () => {
    for (const { id } of cruiser.zones)
      expect(partsOf(id).reduce((sum, part) => sum + part.share, 0)).toBeCloseTo(1, 9)
  })

  it('are up for the deck, and one for a flat transom, which leans', () => {
    // The deck of the mesh follows the sheer, which is a little hollow.
    for (const part of partsOf('deck')) expect(part.tilt).toBeLessThan(8 * degree)
    const transom = partsOf('transom')
    expect(transom[0]!.share).toBeCloseTo(1, 6)
    expect(transom[0]!.normalAzimuth).toBeCloseTo(Math.PI, 6)
    expect(Math.abs(transom[0]!.tilt - Math.PI / 2)).toBeCloseTo(0.3, 2)
  })

  it('mirror each other on the two sides, port to port', () => {
    const [port, starboard] = [partsOf('topsides-port'), partsOf('topsides-starboard')]
    for (const part of port) {
      expect(part.normalAzimuth).toBeGreaterThan(Math.PI)
      const twin = starboard.find(
        (one) =>
          Math.abs(one.normalAzimuth + part.normalAzimuth - 2 * Math.PI) < 0.02 &&
          Math.abs(one.share - part.share) < 0.01,
      )
      expect(twin).toBeDefined()
    }
  })

  it('face the ground with the bottom', () => {
    for (const part of partsOf('bottom')) expect(part.tilt).toBeGreaterThan(75 * degree)
  })

  it('are lit by any sun as all the triangles together', () => {
    const sun = fc.record({
      normalAzimuth: fc.double({ min: 0, max: 2 * Math.PI, noNaN: true }),
      tilt: fc.double({ min: 0, max: Math.PI / 2, noNaN: true }),
    })
    for (const id of ['topsides-port', 'bottom', 'transom', 'deck'])
      fc.assert(
        fc.property(sun, (at) => {
          const to = normalOf(at)
          const triangles = { ...cruiser, triangles: zone(id).triangles }
          // What putting parts together costs where light grazes.
          expect(Math.abs(lit(meshFacings(triangles), to) - litSlowly(triangles, to))).toBeLessThan(0.03)
        }),
        { numRuns: 60 },
      )
  })

  it('are none without a surface', () => {
    expect(meshFacings({ positions: new Float32Array(), triangles: new Uint32Array() })).toEqual([])
  })
})

describe('halves of a cambered deck', () => {
  it('lean out to both sides by the mean slope of the arc', () => {
    const [starboard, port] = camberFacings(0.03)
    expect(starboard!.tilt).toBeCloseTo(Math.atan(0.06), 12)
    expect(port!.tilt).toBe(starboard!.tilt)
    expect([starboard!.normalAzimuth, port!.normalAzimuth]).toEqual([Math.PI / 2, (3 * Math.PI) / 2])
  })

  it('together see the zenith like the deck laid flat, and make one level part without camber', () => {
    expect(lit(camberFacings(0.05), [0, 0, 1])).toBeCloseTo(Math.cos(Math.atan(0.1)), 12)
    expect(camberFacings(0)).toEqual([{ normalAzimuth: 0, tilt: 0, share: 1 }])
  })
})
