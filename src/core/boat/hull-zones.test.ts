import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { polylineLength } from '#core/geometry'
import { areaBetween } from './band-area.ts'
import type { Hull } from './hull.ts'
import type { HullCuts } from './hull-cuts.ts'
import { hullFromSizes } from './hull-from-sizes.ts'
import { hullFromStations } from './hull-from-stations.ts'
import { type HullZone, hullZones } from './hull-zones.ts'
import type { Station } from './station.ts'

const made = (stations: readonly Station[]): Hull => {
  const result = hullFromStations(stations)
  if (!result.ok) throw new Error(JSON.stringify(result.faults))
  return result.hull
}

const drawn = (
  form: 'hard-chine' | 'round-bilge',
  lengthOverall: number,
  beam: number,
  freeboardStem: number,
): Hull => {
  const result = hullFromSizes({ form, lengthOverall, beam, freeboardStem })
  if (!result.ok) throw new Error(JSON.stringify(result.faults))
  return result.hull
}

const length = 5
const flare = Math.atan2(0.2, 1)

/** Flat at both ends: a V-bottom to a chine at z = -0.1, then sides that lean out by `flare` up to z = 0.9. */
const trough = made(
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
const powerboat = drawn('hard-chine', 7.7, 2.5, 1.25)
const cruiser = drawn('round-bilge', 10, 3.2, 1.3)

const atWaterline: HullCuts = { bottomTo: { kind: 'height', z: 0 } }
const withBand: HullCuts = {
  bottomTo: { kind: 'height', z: 0.04 },
  bootTop: { zLow: 0.1, zHigh: 0.2, acrossTransom: false },
}

const zone = (hull: Hull, cuts: HullCuts, id: string): HullZone => {
  const found = hullZones(hull, cuts).zones.find((one) => one.id === id)
  if (!found)
    throw new Error(`zone: missing, got ${hullZones(hull, cuts).zones.map((z) => z.id)}, expected ${id}`)
  return found
}

const edgeOf = ({ edges }: HullZone, kind: string): number =>
  edges.find((edge) => edge.kind === kind)?.length ?? 0

const slope = Math.hypot(1, 0.2)

describe('zones of a flat-sided hull', () => {
  it('have the areas of their rectangles and trapezia', () => {
    expect(zone(trough, atWaterline, 'topsides-port').area).toBeCloseTo(length * 0.9 * slope, 9)
    const beamAtCut = 2 * 1.02
    const underCut = 2 * (Math.hypot(1, 0.3) + 0.1 * slope) * length
    const endUnderCut = 0.3 + ((2 + beamAtCut) / 2) * 0.1
    expect(zone(trough, atWaterline, 'bottom').area).toBeCloseTo(underCut + 2 * endUnderCut, 9)
    expect(zone(trough, atWaterline, 'transom').area).toBeCloseTo(((beamAtCut + 2.4) / 2) * 0.9, 9)
  })

  it('have the edges that are masked', () => {
    const side = zone(trough, atWaterline, 'topsides-starboard')
    expect(side.lowerLength).toBeCloseTo(length, 9)
    expect(side.upperLength).toBeCloseTo(length, 9)
    expect(edgeOf(side, 'aft')).toBeCloseTo(0.9 * slope, 8)
    expect(edgeOf(side, 'fore')).toBeCloseTo(0.9 * slope, 8)
    expect(side.perimeter).toBeCloseTo(2 * length + 1.8 * slope, 8)
    const bottom = zone(trough, atWaterline, 'bottom')
    expect(bottom.edges.map((edge) => edge.kind)).toEqual(['upper'])
    expect(bottom.perimeter).toBeCloseTo(2 * length + 2 * 2.04, 9)
    const transom = zone(trough, atWaterline, 'transom')
    expect(transom.perimeter).toBeCloseTo(2.04 + 2.4 + 1.8 * slope, 8)
  })

  it('have their edges on their own side', () => {
    for (const side of ['port', 'starboard'] as const) {
      const sign = side === 'port' ? 1 : -1
      const points = zone(trough, withBand, `topsides-${side}`).edges.flatMap((edge) => edge.lines.flat())
      for (const point of points) expect(Math.sign(point.y)).toBe(sign)
    }
  })

  it('face the way they look: relative bearing from the bow, tilt from the sky', () => {
    const facing = (id: string) => {
      const { normalAzimuth, tilt, meanFlare } = zone(trough, atWaterline, id)
      return [normalAzimuth, tilt, meanFlare].map((angle) => Number(angle.toFixed(9)))
    }
    const right = Number((Math.PI / 2).toFixed(9))
    const down = Number((Math.PI / 2 + flare).toFixed(9))
    const lean = Number(flare.toFixed(9))
    expect(facing('topsides-starboard')).toEqual([right, down, lean])
    expect(facing('topsides-port')).toEqual([Number((1.5 * Math.PI).toFixed(9)), down, lean])
    expect(facing('transom')).toEqual([Number(Math.PI.toFixed(9)), right, 0])
    expect(facing('bow')).toEqual([0, right, 0])
    expect(zone(trough, atWaterline, 'bottom').tilt).toBeCloseTo(Math.PI, 9)
  })

  it('of several faces give each of them', () => {
    const { faces } = zone(trough, atWaterline, 'bottom')
    expect(faces.map((face) => face.of)).toEqual(['port', 'starboard', 'aft', 'fore'])
    expect(faces[0]!.area).toBeCloseTo(faces[1]!.area, 12)
    expect(faces[0]!.normalAzimuth + faces[1]!.normalAzimuth).toBeCloseTo(2 * Math.PI, 12)
  })
})

describe('a boot-top', () => {
  it('is a band of both sides, with the gap under it left to the topsides', () => {
    const band = zone(trough, withBand, 'boot-top')
    expect(band.area).toBeCloseTo(2 * length * 0.1 * slope, 9)
    expect([band.lowerLength, band.upperLength]).toEqual([expect.closeTo(10, 9), expect.closeTo(10, 9)])
    expect(edgeOf(band, 'aft')).toBeCloseTo(2 * 0.1 * slope, 8)
    const side = zone(trough, withBand, 'topsides-port')
    expect(side.area).toBeCloseTo(length * (0.06 + 0.7) * slope, 9)
    expect(side.lowerLength).toBeCloseTo(2 * length, 9)
  })

  it('that touches the bottom leaves no gap and no edge of one', () => {
    const touching = { ...withBand, bootTop: { ...withBand.bootTop!, zLow: 0.04 } }
    const side = zone(trough, touching, 'topsides-port')
    expect(side.area).toBeCloseTo(length * 0.7 * slope, 9)
    expect(side.lowerLength).toBeCloseTo(length, 9)
    expect(
      zone(trough, { ...touching, bootTop: { ...touching.bootTop, zLow: 0 } }, 'boot-top').area,
    ).toBeCloseTo(zone(trough, touching, 'boot-top').area, 12)
  })

  it('goes across the transom only when asked to', () => {
    const across = { ...withBand, bootTop: { ...withBand.bootTop!, acrossTransom: true } }
    const more = zone(trough, across, 'boot-top').area - zone(trough, withBand, 'boot-top').area
    expect(more).toBeCloseTo(2 * 2 * (1 + 0.2 * 0.25) * 0.1, 9)
    const less = zone(trough, withBand, 'transom').area - zone(trough, across, 'transom').area
    expect(less).toBeCloseTo(more / 2, 9)
    expect(edgeOf(zone(trough, across, 'boot-top'), 'aft')).toBe(0)
  })

  it('may be sheered', () => {
    const sheered: HullCuts = {
      ...withBand,
      bootTop: { zLow: 0.1, zHigh: (x) => 0.2 + 0.02 * x, acrossTransom: false },
    }
    expect(zone(trough, sheered, 'boot-top').area).toBeCloseTo(2 * length * 0.15 * slope, 9)
    expect(zone(trough, sheered, 'boot-top').upperLength).toBeCloseTo(2 * Math.hypot(length, 0.1 * slope), 5)
  })
})

describe('a bottom up to the chine', () => {
  const toChine: HullCuts = { bottomTo: { kind: 'chine' } }

  it('is everything under the chine, and the flat ends are left whole', () => {
    const bottom = zone(trough, toChine, 'bottom')
    expect(bottom.area).toBeCloseTo(2 * length * Math.hypot(1, 0.3), 9)
    expect(bottom.upperLength).toBeCloseTo(2 * length, 9)
    expect(edgeOf(bottom, 'aft')).toBeCloseTo(2 * Math.hypot(1, 0.3), 9)
    expect(zone(trough, toChine, 'transom').area).toBeCloseTo(0.3 + 2.2, 9)
    const side = zone(trough, toChine, 'topsides-port')
    expect([side.area, side.lowerLength]).toEqual([
      expect.closeTo(length * slope, 9),
      expect.closeTo(length, 9),
    ])
  })

  it('takes the boot-top out of the sides above it', () => {
    const banded = { ...withBand, ...toChine }
    expect(zone(trough, banded, 'bottom').area).toBeCloseTo(2 * length * Math.hypot(1, 0.3), 9)
    expect(zone(trough, banded, 'topsides-port').area).toBeCloseTo(length * 0.9 * slope, 9)
    expect(zone(trough, banded, 'boot-top').area).toBeCloseTo(2 * length * 0.1 * slope, 9)
  })

  it('has a boot-top whose edges meet where the chine comes up through it', () => {
    const band = zone(powerboat, { ...withBand, ...toChine }, 'boot-top')
    const lower = band.edges.find((edge) => edge.kind === 'lower')!.lines.filter((line) => line[0]!.y >= 0)
    expect(lower).toHaveLength(2)
    const [level, chine] = lower
    const [end, start] = [level!.at(-1)!, chine![0]!]
    expect(Math.hypot(end.x - start.x, end.y - start.y, end.z - start.z)).toBeLessThan(0.002)
  })

  it('goes to the waterline on a hull without a chine, with a note', () => {
    const { zones, notes } = hullZones(cruiser, toChine)
    expect(notes).toEqual([{ code: 'boat.chineMissing', severity: 'missing', data: { heightM: 0 } }])
    const bottom = zones.find((one) => one.id === 'bottom')!
    expect(bottom.area).toBeCloseTo(zone(cruiser, atWaterline, 'bottom').area, 12)
  })
})

describe('zones of drawn boats', () => {
  it('cover the whole hull once, wherever it is cut', () => {
    const height = fc.double({ min: -0.3, max: 0.7, noNaN: true })
    const edge = fc.oneof(
      height.map((z) => ({ kind: 'height' as const, z })),
      fc.constant({ kind: 'chine' as const }),
    )
    const cuts = fc.record({
      bottomTo: edge,
      bootTop: fc.record({ zLow: height, zHigh: height, acrossTransom: fc.boolean() }),
    })
    fc.assert(
      fc.property(fc.constantFrom(powerboat, cruiser), cuts, (hull, asked) => {
        const whole = areaBetween(hull, { zLow: Number.NEGATIVE_INFINITY, zHigh: Number.POSITIVE_INFINITY })
        const sum = hullZones(hull, asked).zones.reduce((total, one) => total + one.area, 0)
        expect(sum / whole.total).toBeCloseTo(1, 4)
      }),
      { numRuns: 50 },
    )
  })

  it('have perimeters that are the sum of their edges, and edges as long as their lines', () => {
    for (const one of hullZones(cruiser, withBand).zones) {
      expect(one.perimeter).toBeCloseTo(
        one.edges.reduce((sum, edge) => sum + edge.length, 0),
        12,
      )
      for (const edge of one.edges) {
        expect(edge.length).toBeCloseTo(
          edge.lines.reduce((sum, line) => sum + polylineLength(line), 0),
          12,
        )
      }
    }
  })

  it('are those of an open powerboat of 7.7 m: 9 m² a side with half the transom, 13 m² of bottom', () => {
    const side = zone(powerboat, atWaterline, 'topsides-port').area
    const transom = zone(powerboat, atWaterline, 'transom').area
    expect(side + transom / 2).toBeGreaterThan(8.5)
    expect(side + transom / 2).toBeLessThan(10)
    expect(zone(powerboat, atWaterline, 'bottom').area).toBeGreaterThan(12.5)
    expect(zone(powerboat, atWaterline, 'bottom').area).toBeLessThan(15)
  })

  it('have a stem where the two sides meet, and a counter where it hangs over the water', () => {
    const stem = zone(powerboat, atWaterline, 'topsides-port').edges.find((edge) => edge.kind === 'centre')!
    for (const point of stem.lines.flat()) expect(point.y).toBeCloseTo(0, 9)
    expect(stem.lines).toHaveLength(1)
    const both = zone(cruiser, atWaterline, 'topsides-port').edges.find((edge) => edge.kind === 'centre')!
    expect(both.lines).toHaveLength(2)
    expect(hullZones(cruiser, atWaterline).zones.find((one) => one.id === 'bottom')!.faces).toHaveLength(2)
  })
})

describe('a hull measured at a few places only', () => {
  it('has nearly the areas of the same hull measured at many', () => {
    const every = (n: number) => (_: unknown, i: number) => i % n === 0
    const few = made(
      cruiser.stations
        .filter(every(2))
        .map((station) => ({ ...station, points: station.points.filter(every(2)) })),
    )
    for (const { id, area, perimeter } of hullZones(cruiser, withBand).zones) {
      const rough = zone(few, withBand, id)
      expect(rough.area / area, id).toBeGreaterThan(0.99)
      expect(rough.area / area, id).toBeLessThan(1.01)
      expect(rough.perimeter / perimeter, id).toBeCloseTo(1, 2)
    }
  })
})

describe('cuts that cannot be worked', () => {
  const notesOf = (cuts: HullCuts) =>
    hullZones(trough, cuts).notes.map(({ code, data }) => ({ ...data, code }))

  it('are named, and the nearest thing that can be is done', () => {
    const lost = { bottomTo: { kind: 'height', z: Number.NaN } } as const
    expect(notesOf(lost)).toEqual([{ code: 'boat.cutNotNumber', cut: 'bottom' }])
    expect(zone(trough, lost, 'bottom').area).toBeCloseTo(zone(trough, atWaterline, 'bottom').area, 12)
    const halfBand = {
      ...atWaterline,
      bootTop: { zLow: 0.1, zHigh: Number.POSITIVE_INFINITY, acrossTransom: false },
    }
    expect(notesOf(halfBand)).toEqual([{ code: 'boat.cutNotNumber', cut: 'boot-top-high' }])
    expect(hullZones(trough, halfBand).zones.map((one) => one.id)).not.toContain('boot-top')
  })

  it('say when the boot-top has no height left', () => {
    const upside = { ...atWaterline, bootTop: { zLow: 0.2, zHigh: 0.1, acrossTransom: false } }
    expect(notesOf(upside)).toEqual([{ code: 'boat.bootTopClosed', lowM: 0.2, highM: 0.1 }])
    const sunk = {
      bottomTo: { kind: 'height', z: 0.3 },
      bootTop: { zLow: 0.1, zHigh: 0.2, acrossTransom: false },
    } as const
    expect(notesOf(sunk)).toEqual([{ code: 'boat.bootTopClosed', lowM: 0.3, highM: 0.2 }])
  })

  it('say where a cut is over the sheer', () => {
    expect(notesOf({ bottomTo: { kind: 'height', z: (x) => 0.5 + 0.2 * x } })).toEqual([
      {
        code: 'boat.cutAboveSheer',
        cut: 'bottom',
        station: '2',
        xM: 2.5,
        heightM: 1,
        sheerHeightM: expect.closeTo(0.9, 9),
      },
    ])
    expect(hullZones(trough, { bottomTo: { kind: 'height', z: 2 } }).zones.map((one) => one.id)).toEqual([
      'bottom',
    ])
  })
})
