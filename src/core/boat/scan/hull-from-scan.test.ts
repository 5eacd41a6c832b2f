import { describe, expect, it } from 'vitest'
import {
  clipMesh,
  clipPolyline,
  cropMesh,
  edgePointAt,
  inOrder,
  meshArea,
  mirroring,
  movedMesh,
  moving,
  type Plane,
  planeSection,
  planeThrough,
  repairMesh,
  scaling,
  type TriangleMesh,
  turning,
} from '#core/geometry'
import { gridMesh, noisy, parabolicHull, together } from '../../../../test/support/hull-meshes.mjs'
import { marksIn, meshOfHull, prepared } from '../../../../test/support/hull-scan.ts'
import { hullOfScan } from '../../../../test/support/noisy-hull.mjs'
import { hullFromSizes } from '../hull-from-sizes.ts'
import { hullZones } from '../hull-zones.ts'
import { rakeTransom } from '../transom-rake.ts'
import { hullFromScan, type ScanAnswers } from './hull-from-scan.ts'
import { layScan } from './lay-scan.ts'
import type { ScanMark } from './scan-frame.ts'

const still = scaling(1)
const length = 7.5
const topsides = 0.4

/** Marks on the parabolic hull, x from the middle as its formula has it. */
const parabolicMarks: readonly ScanMark[] = [
  { id: 'stem', at: { x: length / 2, y: 0, z: 0 }, centred: true, height: 0 },
  { id: 'port', at: { x: -1.5, y: 0.315, z: 0 }, centred: false, height: 0 },
  { id: 'starboard', at: { x: -1.5, y: -0.315, z: 0 }, centred: false, height: 0 },
]

const worked = (mesh: TriangleMesh, answers: Partial<ScanAnswers>) => {
  const result = hullFromScan(prepared(mesh), {
    laid: still,
    check: undefined,
    marks: parabolicMarks,
    crop: undefined,
    sides: 'both',
    ...answers,
  })
  if (!result.ok) throw new Error(JSON.stringify(result.notes))
  return result
}

describe('a hull from a scan', { timeout: 60_000 }, () => {
  // The bench runs these at 400,000 triangles. Area by two quadratures, see noisy-hull; trade.md, section 11, row 22.
  const middling = { along: 320, up: 36, upAbove: 24 }

  it('of the parabolic hull with 3 mm of noise has its area to 1 % and its waterline to 0.2 %', () => {
    const { areaError, waterlineError, deviation } = hullOfScan({
      ...middling,
      deviation: 0.003,
      scaleError: 0,
      seed: 1,
    })
    expect(Math.abs(areaError)).toBeLessThan(0.01)
    expect(Math.abs(waterlineError)).toBeLessThan(0.002)
    expect(deviation).toBeLessThan(0.003)
  })

  it('with 10 mm of noise, 1 % wrong in scale and put right by one length, has its area to 2 %', () => {
    for (const scaleError of [0.01, -0.01]) {
      const { areaError, factor } = hullOfScan({ ...middling, deviation: 0.01, scaleError, seed: 2 })
      expect(factor * (1 + scaleError)).toBeCloseTo(1, 2)
      expect(Math.abs(areaError)).toBeLessThan(0.02)
    }
  })

  describe('with a hard chine', () => {
    const sized = hullFromSizes({
      form: 'hard-chine',
      lengthOverall: 7.7,
      beam: 2.5,
      freeboardStem: 1.25,
      draft: 0.42,
    })
    if (!sized.ok) throw new Error('no hull')
    const mesh = meshOfHull(sized.hull, { along: 300, up: 40 })
    const marks: readonly ScanMark[] = [
      { id: 'stem', at: { x: sized.hull.particulars.lengthWaterline, y: 0, z: 0 }, centred: true, height: 0 },
      { id: 'port', at: { x: 0.5, y: 1, z: 0 }, centred: false, height: 0 },
      { id: 'starboard', at: { x: 0.5, y: -1, z: 0 }, centred: false, height: 0 },
      { id: 'keel', at: { x: 1, y: 0, z: -0.4 }, centred: true },
      { id: 'bow', at: { x: 7.7, y: 0, z: 1.25 }, centred: true },
    ]
    const zonesOf = (hull: typeof sized.hull) =>
      hullZones(hull, { bottomTo: { kind: 'chine' } }).zones.map(({ id, area }) => [id, area] as const)
    const expectSame = (hull: typeof sized.hull) => {
      for (const [id, area] of zonesOf(sized.hull)) {
        const got = zonesOf(hull).find(([other]) => other === id)?.[1] ?? 0
        expect(Math.abs(got / area - 1)).toBeLessThan(0.01)
      }
      expect(hull.edges).toEqual(['chine', 'sheer'])
      expect(
        Math.abs(hull.particulars.lengthWaterline / sized.hull.particulars.lengthWaterline - 1),
      ).toBeLessThan(0.005)
      expect(Math.abs(hull.particulars.draft - 0.42)).toBeLessThan(0.005)
    }

    it('comes back with its chine marked and its zones to 1 %', () => {
      const { hull, stations } = worked(mesh, { marks })
      expect(
        stations
          .slice(1, -1)
          .every(({ points }) => points.filter(({ knuckle }) => knuckle === 'chine').length === 1),
      ).toBe(true)
      expectSame(hull)
    })

    it('turned, mirrored and in millimetres comes back the same', () => {
      const place = inOrder(
        inOrder(
          mirroring(planeThrough({ x: 1, y: 2, z: 3 }, { x: 1, y: -2, z: 0.5 })),
          turning({ x: 1, y: 2, z: -1 }, 2),
        ),
        inOrder(scaling(1000), moving({ x: 4000, y: -90, z: 800 })),
      )
      const moved = movedMesh(mesh, place)
      const scan = prepared(moved)
      const laid = layScan(scan, {
        unitM: 0.001,
        up: 'z',
        endForEnd: false,
        quarters: 0,
        sides: 'both',
      })!
      const result = hullFromScan(scan, {
        laid,
        check: undefined,
        marks: marksIn(marks, place, laid),
        crop: undefined,
        sides: 'both',
      })
      if (!result.ok) throw new Error(JSON.stringify(result.notes))
      expectSame(result.hull)
    })

    it('seen on one side only, lying anyhow, comes back the same', () => {
      for (const side of ['port', 'starboard'] as const) {
        const box = side === 'port' ? { low: -1e-9, high: 9 } : { low: -9, high: 1e-9 }
        const half = cropMesh(mesh, {
          least: { x: -9, y: box.low, z: -9 },
          most: { x: 9, y: box.high, z: 9 },
        })
        const place = inOrder(turning({ x: 0, y: 0, z: 1 }, 2), moving({ x: 4, y: -9, z: 8 }))
        const scan = prepared(movedMesh(half, place))
        const laid = layScan(scan, { unitM: 1, up: 'z', endForEnd: false, quarters: 0, sides: side })!
        const seen = marks.filter(({ id }) => id !== (side === 'port' ? 'starboard' : 'port'))
        const result = hullFromScan(scan, {
          laid,
          check: undefined,
          marks: marksIn(seen, place, laid),
          crop: undefined,
          sides: side,
        })
        if (!result.ok) throw new Error(JSON.stringify(result.notes))
        expect(result.notes.map(({ code }) => code)).toContain('boat.scanMirrored')
        expectSame(result.hull)
      }
    })

    it('with 3 mm of noise, a floor under it and a hole in its side keeps its chine and its zones to 1 %', () => {
      const floor = gridMesh({ along: 40, up: 20 }, (u, v) => [12 * u - 2, 5 * v - 2.5, -0.9])
      const open = holed(mesh, (x, y, z) => y > 0 && Math.hypot(x - 3.4, z - 0.5) < 0.25)
      const rough = noisy(repairMesh(open, { tolerance: 1e-6, distinct: false }).mesh, {
        deviation: 0.003,
        seed: 4,
      })
      const crop = { least: { x: -1, y: -2, z: -0.7 }, most: { x: 9, y: 2, z: 2 } }
      const { hull } = worked(together(rough, floor), { marks, crop })
      for (const [id, area] of zonesOf(sized.hull)) {
        const got = zonesOf(hull).find(([other]) => other === id)?.[1] ?? 0
        expect(Math.abs(got / area - 1)).toBeLessThan(0.01)
      }
      expect(hull.edges).toEqual(['chine', 'sheer'])
    })

    it('closed by a deck has the deck cut off at the sheer', () => {
      const deck = gridMesh({ along: 300, up: 30 }, (u, v) => {
        const edge = edgePointAt(sized.hull.surface, 2, u)
        return [edge.x, edge.y * (2 * v - 1), edge.z + 0.05 * edge.y * (1 - (2 * v - 1) ** 2)]
      })
      const { hull, notes } = worked(together(mesh, deck), { marks })
      expect(notes.map(({ code }) => code)).toContain('boat.scanDeckCut')
      expectSame(hull)
    })

    it('that both sides have a hole in is bridged there, and it is told', () => {
      const { hull, notes } = worked(
        holed(mesh, (x, y, z) => Math.abs(y) > 0.3 && Math.hypot(x - 3.4, z - 0.5) < 0.16),
        {
          marks,
        },
      )
      expect(notes.find(({ code }) => code === 'boat.scanHolesBridged')?.data.widestM).toBeGreaterThan(0.1)
      expectSame(hull)
    })

    it('cut off by a leaning transom tells its rake, and keeps sides and bottom to 1 %', () => {
      // The closed form of the rake is the plane that cut it; the area is that of the mesh in front of it.
      const rake = (14 * Math.PI) / 180
      const sheer = sized.hull.particulars.freeboardStern
      const shell = holed(mesh, (x) => x < 1e-9)
      const plane = planeThrough({ x: 0, y: 0, z: sheer }, { x: Math.cos(rake), y: 0, z: Math.sin(rake) })
      const cut = clipMesh(shell, plane)
      const { hull, rake: found } = worked(together(cut, capOf(shell, plane)), { marks })
      expect(found).toBeCloseTo(rake, 2)
      const zones = rakeTransom(hull, hullZones(hull, { bottomTo: { kind: 'chine' } }).zones, { rake: found })
      const area = zones.reduce((sum, zone) => (zone.kind === 'transom' ? sum : sum + zone.area), 0)
      expect(Math.abs(area / meshArea(cut) - 1)).toBeLessThan(0.01)
    })
  })

  it('is refused with the reason when a length is off by more than 10 %, marks lack or nothing is left', () => {
    const scan = prepared(parabolicHull({ length, along: 40, up: 6, upAbove: 4, topsides, joined: true }))
    const answers = {
      laid: still,
      check: undefined,
      marks: parabolicMarks,
      crop: undefined,
      sides: 'both',
    } as const
    const codesOf = (given: Partial<ScanAnswers>) => {
      const result = hullFromScan(scan, { ...answers, ...given })
      return [result.ok, ...result.notes.map(({ code }) => code)]
    }
    expect(codesOf({ check: { kind: 'overall', length: 7 } })).toContain(true)
    expect(codesOf({ check: { kind: 'overall', length: 7 } })).toContain('boat.scanScaleFarOff')
    expect(codesOf({ check: { kind: 'overall', length: 24.6 } })).toEqual([false, 'boat.scanScaleRefused'])
    expect(codesOf({ marks: parabolicMarks.slice(0, 2) })).toEqual([
      false,
      'boat.scanScaleUnchecked',
      'boat.scanMarksTooFew',
    ])
    const nowhere = { least: { x: 90, y: 0, z: 0 }, most: { x: 91, y: 1, z: 1 } }
    expect(codesOf({ crop: nowhere })).toEqual([false, 'boat.scanNothingLeft'])
  })
})

/** Without the triangles that begin in a place. */
function holed(mesh: TriangleMesh, gone: (x: number, y: number, z: number) => boolean): TriangleMesh {
  const { positions, triangles } = mesh
  const isGone = (corner: number): boolean => {
    const p = 3 * triangles[corner]!
    return gone(positions[p]!, positions[p + 1]!, positions[p + 2]!)
  }
  return {
    positions,
    triangles: triangles.filter((_, k) => ![0, 1, 2].every((i) => isGone(k - (k % 3) + i))),
  }
}

/** A flat face as fine as a scan over where a plane cuts a shell. */
function capOf(shell: TriangleMesh, plane: Plane): TriangleMesh {
  const lines = planeSection(shell, plane).flatMap(({ points }) => clipPolyline(points, ({ y }) => y))
  const longest = lines.toSorted((a, b) => b.length - a.length)[0]!
  const half = longest[0]!.z < longest.at(-1)!.z ? longest : longest.toReversed()
  return gridMesh({ along: 60, up: half.length - 1 }, (u, v) => {
    const { x, y, z } = half[Math.round(v * (half.length - 1))]!
    return [x, y * (2 * u - 1), z]
  })
}
