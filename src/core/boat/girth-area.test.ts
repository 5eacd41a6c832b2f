import { describe, expect, it } from 'vitest'
import { areaFromGirths, type Girth, type GirthBand, girthBands } from './girth-area.ts'
import type { Hull } from './hull.ts'
import { hullFromSizes } from './hull-from-sizes.ts'
import { hullFromStations } from './hull-from-stations.ts'
import type { HullSizes } from './hull-sizes.ts'
import { hullZones } from './hull-zones.ts'
import { marksAtHeight } from './line-at-height.ts'

const drawn = (sizes: HullSizes): Hull => {
  const result = hullFromSizes(sizes)
  if (!result.ok) throw new Error('no hull')
  return result.hull
}

const boat: HullSizes = {
  form: 'hard-chine',
  lengthOverall: 7.7,
  beam: 2.55,
  freeboardStem: 1.25,
}
/** Another boat of the same length and beam: higher sides that lean out more, a flatter bottom. */
const other: HullSizes = {
  ...boat,
  freeboardMid: 1.2,
  freeboardStern: 1.1,
  chineBeam: 1.95,
  deadrise: (12 * Math.PI) / 180,
  draft: 0.38,
}

const zoneArea = (hull: Hull, kind: 'topsides-port' | 'bottom'): number =>
  hullZones(hull, { bottomTo: { kind: 'chine' } }).zones.find((zone) => zone.kind === kind)!.area

/** Girths of the side of a hull, chine to sheer, as a tape would read them. */
function sideGirths(hull: Hull, places: readonly number[]): readonly Girth[] {
  return places.map((share) => {
    const x = share * hull.particulars.lengthOverall
    // Straight sections: the side is one piece from chine to sheer.
    const station = hull.stations.reduce((near, one) =>
      Math.abs(one.x - x) < Math.abs(near.x - x) ? one : near,
    )
    const [chine, sheer] = [station.points.at(-2)!, station.points.at(-1)!]
    return { x: station.x, girth: Math.hypot(sheer.y - chine.y, sheer.z - chine.z) }
  })
}

const five = [0.05, 0.3, 0.55, 0.75, 0.92]

describe('areas from girths', () => {
  it('are those of the drawn hull when its own girths are read', () => {
    const hull = drawn(boat)
    const { side, bottom } = girthBands(hull)
    const girths = sideGirths(hull, five)
    expect(areaFromGirths(hull, { band: side, girths })! / zoneArea(hull, 'topsides-port')).toBeCloseTo(1, 3)
    const ones = hull.stations
      .filter(({ points }) => points.length === 3)
      .map(({ x, points: [keel, chine] }) => ({
        x,
        girth: Math.hypot(chine!.y - keel!.y, chine!.z - keel!.z),
      }))
    expect(
      (2 * areaFromGirths(hull, { band: bottom, girths: ones })!) / zoneArea(hull, 'bottom'),
    ).toBeCloseTo(1, 3)
  })

  it('are within 1 % of another boat, of which only length, beam, stem and five girths a side are known', () => {
    const [likely, truth] = [drawn(boat), drawn(other)]
    const guess = zoneArea(likely, 'topsides-port')
    const real = zoneArea(truth, 'topsides-port')
    expect(Math.abs(guess / real - 1)).toBeGreaterThan(0.15)
    const taped = areaFromGirths(likely, { band: girthBands(likely).side, girths: sideGirths(truth, five) })!
    expect(Math.abs(taped / real - 1)).toBeLessThan(0.01)
  })

  it('are exact on a prism: girth times length', () => {
    // Closed form: a wall side of height h and length L has the area h L, whatever was drawn for h.
    const points = [
      { y: 0, z: -0.4 },
      { y: 1, z: 0, knuckle: 'chine' as const },
      { y: 1, z: 0.8 },
    ]
    const result = hullFromStations([0, 2, 4, 6].map((x) => ({ id: `${x}`, x, points })))
    if (!result.ok) throw new Error('no hull')
    const { side } = girthBands(result.hull)
    const girths = [1, 3, 5].map((x) => ({ x, girth: 1.1 }))
    expect(areaFromGirths(result.hull, { band: side, girths })).toBeCloseTo(1.1 * 6, 9)
  })

  it('of a round bilge part at the waterline', () => {
    const hull = drawn({ ...boat, form: 'round-bilge' })
    const { side } = girthBands(hull)
    expect(side).toMatchObject({ water: 'above' })
    const marks = marksAtHeight(hull, { z: 0, side: 'port', spacing: 1.2, from: 'sheer' })
    const girths = marks.slice(1, -1).map(({ x, girth }) => ({ x, girth: -girth }))
    const real = hullZones(hull, { bottomTo: { kind: 'height', z: 0 } }).zones.find(
      ({ kind }) => kind === 'topsides-port',
    )!.area
    expect(areaFromGirths(hull, { band: side, girths })! / real).toBeCloseTo(1, 2)
  })

  it('are none without a girth, and take the same place twice as once', () => {
    const hull = drawn(boat)
    const band: GirthBand = girthBands(hull).side
    expect(areaFromGirths(hull, { band, girths: [] })).toBeUndefined()
    const twice = [
      { x: 3, girth: 1 },
      { x: 3, girth: 1 },
    ]
    expect(areaFromGirths(hull, { band, girths: twice })).toBeGreaterThan(0)
  })
})
