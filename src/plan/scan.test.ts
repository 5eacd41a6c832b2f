import { describe, expect, it } from 'vitest'
import { parabolicHull } from '../../test/support/hull-meshes.mjs'
import { laidScan, openScan, pickOnScan, scanHull } from './scan.ts'

const mesh = parabolicHull({ length: 7.5, along: 60, up: 10, topsides: 0.6, upAbove: 8, joined: true })
const { scan, seen } = openScan({ mesh, distinct: false, unit: undefined }, () => true)!
const laying = { unitM: 1, up: 'z', endForEnd: false, quarters: 0, sides: 'both' } as const
const { laid, shown } = laidScan(scan, laying)!

describe('a scan that is looked at', () => {
  it('is told with its unit as a guess and its sides as mirror images', () => {
    expect(seen).toMatchObject({ unit: 'm', twin: true, unitNotes: [{ code: 'boat.scanUnitGuessed' }] })
  })

  it('lies along x from its aftmost point, keel at nought, and is drawn inside its box', () => {
    const { least, most } = shown.box
    expect([least.x, least.z].map((value) => Math.abs(value) < 1e-9)).toEqual([true, true])
    expect(most.x).toBeCloseTo(7.5, 1)
    for (const [x, z] of shown.outlines.side) {
      expect(x).toBeGreaterThanOrEqual(0)
      expect(x).toBeLessThanOrEqual(most.x)
      expect(z).toBeLessThanOrEqual(most.z)
    }
  })

  it('is picked on the side that is meant, or in the middle of both', () => {
    const touched = (side: 'port' | 'starboard' | 'middle') =>
      pickOnScan(scan, laid, { view: 'side', at: [3.75, 0.7], side })
    // The parabolic hull is 0.1 of its length wide, so 0.375 m to either side above the water.
    expect(touched('port').y).toBeCloseTo(0.375, 2)
    expect(touched('starboard').y).toBeCloseTo(-0.375, 2)
    expect(touched('middle').y).toBeCloseTo(0, 3)
    expect(touched('port')).toMatchObject({ x: 3.75, z: 0.7 })
  })

  it('becomes a hull in plain values that a page can be handed', () => {
    const marks = [
      { id: 'a', at: { x: 7.5, y: 0, z: 0.469 }, centred: true, height: 0 },
      { id: 'b', at: { x: 1.5, y: 0.24, z: 0.469 }, centred: false, height: 0 },
      { id: 'c', at: { x: 1.5, y: -0.24, z: 0.469 }, centred: false, height: 0 },
    ]
    const hull = scanHull(scan, { laid, check: undefined, marks, crop: undefined, sides: 'both' })
    if (!hull.ok) throw new Error(JSON.stringify(hull.notes))
    expect(hull.stations).toHaveLength(21)
    expect(structuredClone(hull)).toEqual(hull)
  })
})
