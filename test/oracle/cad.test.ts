// Lofts and meshes against a CAD kernel: areas and plane sections of the same hull, measured by another hand.
import { beforeAll, describe, expect, it } from 'vitest'
import {
  integrateBands,
  integrateRow,
  type Loft,
  levelPlane,
  loftLineAt,
  loftParameterAt,
  loftThrough,
  meshArea,
  type Plane,
  planeSection,
  planeThrough,
  repairMesh,
  rowPointAt,
  sectionCurve,
  type TriangleMesh,
} from '#core/geometry'
import { hasKernel, type Kernel, kernelName, openKernel } from '../support/cad-kernel.ts'
import { gridMesh, together } from '../support/hull-meshes.mjs'

/** What the two may differ by, of the figure: their quadratures are different. */
const agreed = 1e-6

/** A hull of 7 m with a chine: a V bottom, and topsides of five points that hollow out forward. Invented. */
const sections = [0, 0.9, 2, 3.2, 4.4, 5.4, 6.2, 7].map((x) => {
  const t = x / 7
  const half = 1.2 * (1 - 0.9 * t ** 3)
  const chine = { y: half, z: -0.1 + 0.35 * t * t }
  const bottom = [{ y: 0.02, z: -0.45 + 0.55 * t ** 4 }, chine]
  const topsides = [0, 0.25, 0.5, 0.75, 1].map((s) => ({
    y: half + 0.25 * s * (1 - t) + 0.3 * t * s * s,
    z: chine.z + s * (0.9 - chine.z + 0.3 * t),
  }))
  return { x, curves: [sectionCurve(bottom), sectionCurve(topsides)] }
})
const loft = loftThrough(sections)

const sum = (values: readonly number[]): number => values.reduce((all, value) => all + value, 0)

/** The loft as a mesh: each strip in so many steps an interval along and a cell across. */
function meshOf(hull: Loft, steps: number): TriangleMesh {
  const intervals = hull.knots.length - 1
  const along = intervals * steps
  const lines = Array.from({ length: along + 1 }, (_, column) => {
    const i = Math.min(Math.floor(column / steps), intervals - 1)
    const [from, to] = [hull.knots[i]!, hull.knots[i + 1]!]
    return loftLineAt(hull, from + (column / steps - i) * (to - from))
  })
  const meshes = hull.strips.map(({ cells }, strip) =>
    gridMesh({ along, up: Math.max(cells, 4) * steps }, (share, v) => {
      const { x, y, z } = rowPointAt(lines[Math.round(share * along)]!, { strip, v })
      return [x, y, z]
    }),
  )
  return repairMesh(together(...meshes), { tolerance: 1e-9, distinct: false }).mesh
}

/** Chords of so fine a mesh are short of their section by less than the two may differ. */
const [coarse, fine] = [8, 88]

const within = (got: number, expected: number): void => {
  expect(expected).toBeGreaterThan(0.1)
  expect(Math.abs(got / expected - 1), `got ${got}, expected ${expected}`).toBeLessThan(agreed)
}

describe.skipIf(!hasKernel)(`a loft, held against ${kernelName} (left out where it is not installed)`, () => {
  let kernel: Kernel
  let faces: ReturnType<Kernel['facesOf']>
  let fineMesh: TriangleMesh
  beforeAll(async () => {
    kernel = await openKernel()
    faces = kernel.facesOf(loft)
    fineMesh = meshOf(loft, fine)
  })

  it('has the area of its faces, strip by strip', () => {
    integrateBands(loft, []).forEach(([band], strip) => {
      within(band!.area, kernel.areaOf([faces[strip]!]))
    })
  })

  it.each([0.4, 2, 3.7, 6.6])('has the girth of its section %s m from aft', (x) => {
    const line = loftLineAt(loft, loftParameterAt(loft, x))
    const girth = sum(integrateRow(line, []).map(([band]) => band!.girth))
    within(girth, kernel.sectionOf(faces, { point: [x, 0, 0], normal: [1, 0, 0] }))
  })

  it('is measured as a mesh with the area of its faces', () => {
    const [half, whole] = [coarse, 2 * coarse].map((steps) => meshArea(meshOf(loft, steps)))
    // Their error falls with the square of the step.
    within((4 * whole! - half!) / 3, kernel.areaOf(faces))
  })

  it.each<[string, Plane]>([
    ['level', levelPlane(0.02)],
    ['sloping', planeThrough({ x: 3, y: 0.6, z: 0.3 }, { x: 0.2, y: 0.35, z: 1 })],
    ['upright and lengthwise', planeThrough({ x: 0, y: 0.5, z: 0 }, { x: 0, y: 1, z: 0 })],
  ])('is cut as a mesh by a %s plane in lines of the length of the section', (_, plane) => {
    const { x, y, z } = plane.normal
    const cut = {
      point: [x * plane.offset, y * plane.offset, z * plane.offset],
      normal: [x, y, z],
    } as const
    const length = sum(planeSection(fineMesh, plane).map((line) => line.length))
    within(length, kernel.sectionOf(faces, cut))
  })
})
