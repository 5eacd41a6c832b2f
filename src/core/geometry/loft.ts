/**
 * A surface lofted through sections in planes of constant x; axes x along, y across, z up, metres.
 * It is a stack of strips that share edges; each strip is a grid of bicubic patches over u (0..1 along, one knot a
 * section) and v (0..1 of the girth between the strip's edges). The arrays belong to the loft and are never changed
 * after it is made.
 */

import { cubicSpline, keepRising, type Spline, splineAt } from './cubic-spline.ts'
import { type SectionCurve, sectionPointAt } from './section-curve.ts'

/** One value a node across the strip: position, and its derivative by v. */
export type StripLine = {
  readonly y: readonly number[]
  readonly z: readonly number[]
  readonly yV: readonly number[]
  readonly zV: readonly number[]
}

/** The same with the derivatives by u, and by u and v. */
export type StripRow = StripLine & {
  readonly yU: readonly number[]
  readonly zU: readonly number[]
  readonly yUV: readonly number[]
  readonly zUV: readonly number[]
}

export type LoftStrip = {
  /** Number of equal steps of v. */
  readonly cells: number
  /** One a section. */
  readonly rows: readonly StripRow[]
}

export type Loft = {
  /** Parameter u of each section, from 0 to 1. */
  readonly knots: readonly number[]
  /** x over u, never falling. */
  readonly along: Spline
  readonly strips: readonly LoftStrip[]
}

export type LoftSection = {
  readonly x: number
  /** As many in every section; the end of one is the start of the next. */
  readonly curves: readonly SectionCurve[]
}

const [fewestCurved, mostCells] = [10, 24]

/** A straight strip needs one cell; a curved one a cell a measured step, two where few were measured. */
const cellsFor = (curves: readonly SectionCurve[]): number => {
  const steps = Math.max(...curves.map((curve) => curve.y.knots.length)) - 1
  return steps === 1 ? 1 : Math.min(2 * steps, Math.max(steps, fewestCurved), mostCells)
}

const sampled = (curve: SectionCurve, cells: number): StripLine => {
  const points = Array.from({ length: cells + 1 }, (_, j) => sectionPointAt(curve, j / cells))
  return {
    y: points.map((p) => p.y),
    z: points.map((p) => p.z),
    yV: points.map((p) => p.yV),
    zV: points.map((p) => p.zV),
  }
}

/** Parameter of each section: the running mean length of the chords from one section to the next. */
const knotsAlong = (x: readonly number[], strips: readonly (readonly StripLine[])[]): readonly number[] => {
  const chord = (i: number): number => {
    const chords = strips.flatMap((rows) => {
      const [before, after] = [rows[i - 1]!, rows[i]!]
      return after.y.map((y, j) => {
        const [dx, dy, dz] = [x[i]! - x[i - 1]!, y - before.y[j]!, after.z[j]! - before.z[j]!]
        return Math.sqrt(dx * dx + dy * dy + dz * dz)
      })
    })
    return chords.reduce((sum, c) => sum + c, 0) / chords.length
  }
  const sums = [0]
  for (let i = 1; i < x.length; i++) sums.push(sums[i - 1]! + chord(i))
  const whole = sums.at(-1)!
  return sums.map((sum, i) => (i === sums.length - 1 ? 1 : sum / whole))
}

/** Slopes along u of one quantity at every node, section by section. */
const slopesAlong = (
  knots: readonly number[],
  rows: readonly StripLine[],
  quantity: keyof StripLine,
): readonly (readonly number[])[] => {
  const nodes = rows[0]![quantity].length
  const lines = Array.from(
    { length: nodes },
    (_, j) => cubicSpline({ knots, values: rows.map((row) => row[quantity][j]!) }).slopes,
  )
  return rows.map((_, i) => lines.map((line) => line[i]!))
}

const stripThrough = (knots: readonly number[], rows: readonly StripLine[]): LoftStrip => {
  const [yU, zU] = [slopesAlong(knots, rows, 'y'), slopesAlong(knots, rows, 'z')]
  const [yUV, zUV] = [slopesAlong(knots, rows, 'yV'), slopesAlong(knots, rows, 'zV')]
  return {
    cells: rows[0]!.y.length - 1,
    rows: rows.map((row, i) => ({ ...row, yU: yU[i]!, zU: zU[i]!, yUV: yUV[i]!, zUV: zUV[i]! })),
  }
}

/**
 * Smooth surface through at least two sections in rising x: points at the same share of the girth are joined along
 * the length by cubic splines over the mean chord, so it may close to a point or an edge at either end.
 */
export const loftThrough = (sections: readonly LoftSection[]): Loft => {
  const x = sections.map((section) => section.x)
  const strips = sections[0]!.curves.map((_, s) => {
    const curves = sections.map((section) => section.curves[s]!)
    const cells = cellsFor(curves)
    return curves.map((curve) => sampled(curve, cells))
  })
  const knots = knotsAlong(x, strips)
  return {
    knots,
    along: keepRising(cubicSpline({ knots, values: x })),
    strips: strips.map((rows) => stripThrough(knots, rows)),
  }
}

/** u where the loft is at `x`; the nearer end outside it. `along` never falls, so halving always finds it. */
export const loftParameterAt = ({ along }: Loft, x: number): number => {
  let low = 0
  let high = 1
  if (!(x > along.values[0]!)) return 0
  if (x >= along.values.at(-1)!) return 1
  for (let halving = 0; halving < 52; halving++) {
    const middle = (low + high) / 2
    if (splineAt(along, middle).value < x) low = middle
    else high = middle
  }
  return (low + high) / 2
}
