import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  addBands,
  contours,
  distance3,
  edgeAlong,
  integrateBands,
  integrateRow,
  type Level,
  type Loft,
  loftLineAt,
  loftParameterAt,
  loftThrough,
  type Point3,
  polylineLength,
  rowGirthTo,
  rowPointAt,
  rowTopmost,
  sectionCurve,
} from './index.ts'

const at =
  (height: number): Level =>
  (_x, _y, z) =>
    z - height

/** A boat-like surface of two strips, with a corner along it, that closes to a point at its fore end. */
const cornered: Loft = loftThrough(
  [0, 1, 2.2, 3.1, 4.3, 5].map((x, i) => {
    const half = [1, 1.1, 1.1, 0.9, 0.4, 0][i]!
    const rise = [0, 0, 0.02, 0.15, 0.6, 1.4][i]!
    const keel = { y: 0, z: -0.4 + rise }
    const corner = { y: 0.85 * half, z: -0.1 + 0.786 * rise }
    const middle = { y: 0.95 * half, z: 0.5 + 0.357 * rise }
    const sheer = { y: half, z: 1 }
    return i === 5
      ? { x, curves: [sectionCurve([sheer]), sectionCurve([sheer])] }
      : { x, curves: [sectionCurve([keel, corner]), sectionCurve([corner, middle, sheer])] }
  }),
)

/** The same area by brute force: small triangles between points of the surface, kept by the height of their middle. */
const trianglesBetween = (loft: Loft, low: number, high: number): number => {
  const [long, wide] = [240, 60]
  const triangle = (a: Point3, b: Point3, c: Point3): number => {
    const z = (a.z + b.z + c.z) / 3
    const s = [distance3(a, b), distance3(b, c), distance3(c, a)]
    const p = (s[0]! + s[1]! + s[2]!) / 2
    const area = Math.sqrt(Math.max(p * (p - s[0]!) * (p - s[1]!) * (p - s[2]!), 0))
    return z > low && z < high ? area : 0
  }
  const rows = Array.from({ length: long + 1 }, (_, i) => loftLineAt(loft, i / long))
  const points = rows.map((row) =>
    loft.strips.map((_, strip) =>
      Array.from({ length: wide + 1 }, (_, j) => rowPointAt(row, { strip, v: j / wide })),
    ),
  )
  let sum = 0
  for (let i = 0; i < long; i++)
    for (let strip = 0; strip < loft.strips.length; strip++)
      for (let j = 0; j < wide; j++) {
        const [a, b] = [points[i]![strip]!, points[i + 1]![strip]!]
        sum += triangle(a[j]!, a[j + 1]!, b[j]!) + triangle(a[j + 1]!, b[j]!, b[j + 1]!)
      }
  return sum
}

const bandArea = (loft: Loft, levels: readonly Level[], band: number): number =>
  addBands(integrateBands(loft, levels).map((bands) => bands[band]!)).area

describe('a lofted surface', () => {
  it('agrees with a fine mesh of triangles, whole and between heights', () => {
    const whole = bandArea(cornered, [], 0)
    expect(whole / trianglesBetween(cornered, -9, 9)).toBeCloseTo(1, 3)
    const band = bandArea(cornered, [at(-0.2), at(0.4)], 1)
    expect(band / trianglesBetween(cornered, -0.2, 0.4)).toBeCloseTo(1, 2)
  })

  it('loses nothing however it is cut', () => {
    const whole = addBands(integrateBands(cornered, []).flat())
    const height = fc.double({ min: -0.6, max: 1.2, noNaN: true })
    fc.assert(
      fc.property(fc.array(height, { maxLength: 3 }), (heights) => {
        const cut = addBands(integrateBands(cornered, heights.sort((a, b) => a - b).map(at)).flat())
        expect(cut.area).toBeCloseTo(whole.area, 3)
        expect(cut.volume).toBeCloseTo(whole.volume, 3)
        expect(cut.leanArea).toBeCloseTo(whole.leanArea, 2)
      }),
      { numRuns: 40 },
    )
  })

  it('encloses the volume of a half cylinder and leans as a cylinder does', () => {
    const arc = Array.from({ length: 13 }, (_, i) => (i * Math.PI) / 24)
    const curve = sectionCurve(arc.map((a) => ({ y: Math.sin(a), z: -Math.cos(a) })))
    const cylinder = loftThrough([0, 1, 2, 3].map((x) => ({ x, curves: [curve] })))
    const whole = integrateBands(cylinder, [])[0]![0]!
    expect(whole.volume).toBeCloseTo((3 * Math.PI) / 4, 4)
    expect(whole.leanArea / whole.area).toBeCloseTo(Math.PI / 4, 4)
    expect(whole.vector.y).toBeCloseTo(3, 5)
    expect(whole.vector.z).toBeCloseTo(-3, 5)
    expect(whole.vector.x).toBeCloseTo(0, 9)
  })

  it('meets its sections and lets itself be found by x', () => {
    const u = loftParameterAt(cornered, 2.2)
    expect(u).toBeCloseTo(cornered.knots[2]!, 9)
    const row = loftLineAt(cornered, u)
    expect(row.x).toBeCloseTo(2.2, 9)
    expect(rowPointAt(row, { strip: 1, v: 1 })).toMatchObject({ y: expect.closeTo(1.1, 6) })
    expect(loftParameterAt(cornered, -1)).toBe(0)
    expect(loftParameterAt(cornered, 99)).toBe(1)
  })

  it('has its strips joined along the corner', () => {
    for (const u of [0, 0.13, 0.5, 0.77, 1]) {
      const row = loftLineAt(cornered, u)
      const [below, above] = [rowPointAt(row, { strip: 0, v: 1 }), rowPointAt(row, { strip: 1, v: 0 })]
      expect(distance3(below, above)).toBeLessThan(1e-12)
    }
  })
})

describe('a loft with a bluff end', () => {
  const bluff = loftThrough(
    [0, 0.02, 3, 3.9, 4].map((x, i) => {
      const half = [1, 1.4, 1.5, 0.9, 0][i]!
      const section = [
        { y: 0, z: -half },
        { y: half, z: 0 },
      ]
      return { x, curves: [sectionCurve(section)] }
    }),
  )

  it('never runs backwards in x nor past its end sections', () => {
    const places = Array.from({ length: 401 }, (_, i) => loftLineAt(bluff, i / 400).x)
    expect(Math.min(...places)).toBe(0)
    expect(Math.max(...places)).toBeCloseTo(4, 12)
    for (let i = 1; i < places.length; i++) expect(places[i]! - places[i - 1]!).toBeGreaterThan(-1e-12)
  })
})

describe('a contour', () => {
  it('takes the topmost place of a section that folds back over it', () => {
    const folded = sectionCurve([0, 0.3, 0.1, 0.5].map((z, i) => ({ y: i, z })))
    const loft = loftThrough([0, 1, 2].map((x) => ({ x, curves: [folded] })))
    const y = rowTopmost(loftLineAt(loft, 0.5), at(0.2))!.y
    expect(y).toBeGreaterThan(2)
    for (const point of contours(loft, [at(0.2)])[0]!.flat()) expect(point.y).toBeCloseTo(y, 9)
  })

  it('stays on its level from end to stem, and crosses the corner without a gap', () => {
    const pieces = contours(cornered, [at(0.1)])[0]!
    expect(pieces).toHaveLength(1)
    const piece = pieces[0]!
    for (const point of piece) expect(point.z).toBeCloseTo(0.1, 9)
    expect(piece[0]!.x).toBe(0)
    expect(piece.at(-1)!.y).toBeCloseTo(0, 6)
    expect(new Set(piece.map((point) => point.strip))).toEqual(new Set([0, 1]))
    const strides = piece.slice(1).map((point, i) => distance3(piece[i]!, point))
    expect(Math.max(...strides)).toBeLessThan(0.4)
  })

  it('runs along an edge that lies on the level', () => {
    const [line] = contours(cornered, [at(1)])[0]!
    expect(polylineLength(line!)).toBeCloseTo(polylineLength(edgeAlong(cornered, 2, 4)), 4)
  })

  it('is in pieces where the surface dips under the level, and none above or below it', () => {
    const dipped = loftThrough(
      [0, 1, 2, 3, 4].map((x) => ({
        x,
        curves: [
          sectionCurve([
            { y: 0, z: 0 },
            { y: 1, z: 1 + 0.25 * (x - 2) ** 2 },
          ]),
        ],
      })),
    )
    expect(contours(dipped, [at(1.5)])[0]).toHaveLength(2)
    expect(contours(dipped, [at(9)])[0]).toHaveLength(0)
    expect(contours(dipped, [at(-1)])[0]).toHaveLength(0)
  })
})

describe('a row of a lofted surface', () => {
  const row = loftLineAt(cornered, 0)

  it('has the girth of its straight strip and more over the curved one', () => {
    const bottom = Math.hypot(0.85, 0.3)
    expect(rowGirthTo(row, { strip: 0, v: 1 })).toBeCloseTo(bottom, 9)
    expect(rowGirthTo(row, { strip: 0, v: 0.5 })).toBeCloseTo(bottom / 2, 9)
    const whole = integrateRow(row, []).flat()
    expect(rowGirthTo(row, { strip: 1, v: 1 })).toBeCloseTo(
      whole.reduce((sum, band) => sum + band.girth, 0),
      9,
    )
  })

  it('covers the triangle under its corner', () => {
    const [bottom] = integrateRow(row, [])
    expect(bottom![0]!.flatArea).toBeCloseTo((0.85 * 0.3) / 2, 9)
    const cut = integrateRow(row, [at(-0.25)])[0]!
    expect(cut[0]!.flatArea).toBeCloseTo((0.425 * 0.15) / 2, 9)
    expect(cut[0]!.flatArea + cut[1]!.flatArea).toBeCloseTo((0.85 * 0.3) / 2, 9)
  })

  it('finds the topmost place at a level, and none over its top', () => {
    expect(rowTopmost(row, at(-0.25))).toMatchObject({ strip: 0, y: expect.closeTo(0.425, 9) })
    expect(rowTopmost(row, at(2))).toBeUndefined()
    expect(rowTopmost(row, at(-0.4))).toMatchObject({ strip: 0, v: 0 })
  })
})
