import { describe, expect, it } from 'vitest'
import { hullFromSizes } from './hull-from-sizes.ts'
import { hullFromStations } from './hull-from-stations.ts'
import { hullZones } from './hull-zones.ts'
import { hullOutline } from './outline.ts'
import { rakeOutline, rakeTransom } from './transom-rake.ts'

const degree = Math.PI / 180

/** Wall sides 0.9 m high over a V bottom of 20°, the same all along its 6 m. */
const [beam, height, deadrise, length] = [2, 0.9, 20 * degree, 6]
const rise = (beam / 2) * Math.tan(deadrise)
const points = [
  { y: 0, z: -rise },
  { y: beam / 2, z: 0, knuckle: 'chine' as const },
  { y: beam / 2, z: height },
]
const made = hullFromStations([0, 2, 4, length].map((x) => ({ id: `${x}`, x, points })))
if (!made.ok) throw new Error('no hull')
const { hull } = made
const { zones } = hullZones(hull, { bottomTo: { kind: 'chine' } })
const areas = (rake: number) =>
  Object.fromEntries(rakeTransom(hull, zones, { rake }).map(({ id, area }) => [id, area]))

describe('a transom that leans', () => {
  // Closed forms: a plane through the top edge at x = 0 takes a triangle off each side and a strip of even depth
  // growing to the keel off the bottom; the transom is its plumb section over the cosine.
  it('top aft: takes ½ h² tan off each side, and its own area grows by the cosine', () => {
    for (const rake of [5, 14, 30].map((angle) => angle * degree)) {
      const found = areas(rake)
      const tan = Math.tan(rake)
      expect(found['topsides-port']).toBeCloseTo(height * length - 0.5 * height ** 2 * tan, 9)
      const girth = beam / 2 / Math.cos(deadrise)
      expect(found.bottom).toBeCloseTo(2 * girth * (length - tan * (height + rise / 2)), 9)
      expect(found.transom).toBeCloseTo((beam * height + (beam * rise) / 2) / Math.cos(rake), 9)
    }
  })

  it('foot aft: the wedge is at the top', () => {
    const rake = -20 * degree
    const tan = Math.tan(-rake)
    expect(areas(rake)['topsides-starboard']).toBeCloseTo(
      height * length - tan * height * (rise + height / 2),
      9,
    )
    expect(areas(rake).bottom).toBeCloseTo(
      2 * (beam / 2 / Math.cos(deadrise)) * (length - (tan * rise) / 2),
      9,
    )
  })

  it('plumb: changes nothing', () => {
    expect(rakeTransom(hull, zones, { rake: 0 })).toBe(zones)
    const outline = hullOutline(hull, [0])
    expect(rakeOutline(hull, outline, { rake: 0 })).toBe(outline)
  })

  it('is drawn leaning: the keel begins forward of the sheer', () => {
    const rake = 14 * degree
    const { sheerPlan, halfBreadthPlan } = rakeOutline(hull, hullOutline(hull, [0.4]), { rake })
    expect(sheerPlan.sheer[0]).toEqual([0, expect.closeTo(height, 9)])
    expect(sheerPlan.keel[0]![0]).toBeCloseTo((height + rise) * Math.tan(rake), 9)
    expect(sheerPlan.knuckles[0]!.line[0]![0]).toBeCloseTo(height * Math.tan(rake), 9)
    expect(halfBreadthPlan.keel[0]![0]).toBeCloseTo(sheerPlan.keel[0]![0], 12)
    expect(sheerPlan.waterlines[0]!.lines[0]![0]![0]).toBeCloseTo(0.5 * Math.tan(rake), 9)
  })
})

describe('a stem that rakes', () => {
  const sizes = { form: 'hard-chine', lengthOverall: 7.7, beam: 2.5, freeboardStem: 1.2 } as const
  it('gives the length on the water where nobody measured it', () => {
    const result = hullFromSizes({ ...sizes, stemRake: 40 * degree })
    if (!result.ok) throw new Error('no hull')
    expect(result.hull.particulars.lengthWaterline).toBeCloseTo(7.7 - 1.2 * Math.tan(40 * degree), 2)
    expect(result.notes.map(({ code }) => code)).toContain('boat.lengthWaterlineWorked')
  })
  it('is told where it contradicts the length on the water', () => {
    const result = hullFromSizes({ ...sizes, lengthWaterline: 7.3, stemRake: 50 * degree })
    expect(result.ok && result.notes.map(({ code }) => code)).toContain('boat.stemRakeDisagrees')
  })
})
