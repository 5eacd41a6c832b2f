import { describe, expect, it } from 'vitest'
import { gridMesh, noisy, parabolicHull } from '../../../../test/support/hull-meshes.mjs'
import { measuredScan } from '../../../../test/support/noisy-hull.mjs'
import { meshArea } from './mesh-measure.ts'
import { repairMesh } from './repair-mesh.ts'
import { smoothMesh } from './smooth-mesh.ts'
import type { TriangleMesh } from './triangle-mesh.ts'

/** A busy machine takes its time over them. */
const unhurried = 60_000

const smoothed = (given: TriangleMesh) => {
  const { mesh, across } = repairMesh(given, { tolerance: 0, distinct: false })
  return smoothMesh(mesh, { across, goesOn: () => true })!
}

describe('a smoothed mesh', () => {
  // The bench runs these at 400,000 triangles. Wetted area and waterline of the hull by two quadratures.
  it(
    'of a hull seen with 3 mm of noise has its area to 1 % and its waterline to 0.2 %',
    () => {
      for (const seed of [1, 2]) {
        const scan = { along: 560, up: 64, upAbove: 42, deviation: 0.003, scaleError: 0, seed }
        const { areaError, waterlineError, lines, settled, takenOffShare } = measuredScan(scan)
        expect(settled).toBe(true)
        expect(lines).toBe(1)
        expect(Math.abs(areaError)).toBeLessThan(0.01)
        expect(Math.abs(waterlineError)).toBeLessThan(0.002)
        expect(takenOffShare).toBeGreaterThan(0.1)
      }
    },
    unhurried,
  )

  it(
    'of a hull seen with 10 mm of noise, 1 % too large and put right by one length, has its area to 2 %',
    () => {
      for (const scaleError of [0.01, -0.01]) {
        const scan = { along: 560, up: 64, upAbove: 42, deviation: 0.01, scaleError, seed: 3 }
        const { areaError, settled } = measuredScan(scan)
        expect(settled).toBe(true)
        expect(Math.abs(areaError)).toBeLessThan(0.02)
      }
    },
    unhurried,
  )

  it('keeps a flat sheet with its rim', () => {
    const sheet = gridMesh({ along: 30, up: 20 }, (u, v) => [3 * u, 2 * v, 0])
    const { mesh, areaBefore, areaAfter, rounds } = smoothed(sheet)
    expect(areaBefore).toBeCloseTo(6, 12)
    expect(areaAfter / 6).toBeCloseTo(1, 2)
    expect(rounds).toBe(1)
    for (let p = 2; p < mesh.positions.length; p += 3) expect(mesh.positions[p]).toBe(0)
  })

  it('takes hardly anything off a surface without noise or sharp edges', () => {
    const ball = gridMesh({ along: 120, up: 60 }, (u, v) => {
      const [turn, height] = [2 * Math.PI * u, Math.PI * (0.02 + 0.96 * v)]
      return [Math.sin(height) * Math.cos(turn), Math.sin(height) * Math.sin(turn), -Math.cos(height)]
    })
    const { areaBefore, areaAfter } = smoothed(repairMesh(ball, { tolerance: 1e-9, distinct: false }).mesh)
    expect(areaAfter / areaBefore).toBeCloseTo(1, 3)
  })

  it('says what was taken off, and of noise that is as coarse as the boat that it did not settle', () => {
    const hull = parabolicHull({ length: 7.5, along: 60, up: 12, joined: true })
    const rough = noisy(repairMesh(hull, { tolerance: 0, distinct: false }).mesh, { deviation: 0.4, seed: 5 })
    const { settled, lastChangeShare, areaBefore, areaAfter } = smoothed(rough)
    expect(areaBefore).toBeCloseTo(meshArea(rough), 9)
    expect(areaAfter).toBeLessThan(areaBefore)
    expect(settled).toBe(false)
    expect(lastChangeShare).toBeGreaterThan(0.004)
  })

  it('is left when it is not to go on', () => {
    const sheet = gridMesh({ along: 3, up: 3 }, (u, v) => [u, v, u * v])
    const { mesh, across } = repairMesh(sheet, { tolerance: 0, distinct: false })
    expect(smoothMesh(mesh, { across, goesOn: () => false })).toBeUndefined()
  })
})
