/**
 * Sections of a loft at any u, as rows of nodes across its strips, and points between the nodes. Axes as the loft's,
 * metres. A row owns its arrays.
 */

import { type HermiteWeights, hermiteWeights, intervalAt, type Spline, splineAt } from './cubic-spline.ts'
import type { Loft, LoftStrip, StripLine, StripRow } from './loft.ts'
import type { Point3 } from './points.ts'

/** The section at one u. */
export type LoftLine = { readonly u: number; readonly x: number; readonly strips: readonly StripLine[] }

/** The section at one u with its rates along u. */
export type LoftRow = {
  readonly u: number
  readonly x: number
  readonly xU: number
  readonly strips: readonly StripRow[]
}

type Column = readonly number[]
/** Values and slopes at both ends of an interval, node by node. */
type Ends = readonly [value0: Column, slope0: Column, value1: Column, slope1: Column]

const valuesBetween = ([v0, m0, v1, m1]: Ends, w: HermiteWeights): number[] => {
  const values: number[] = []
  for (let j = 0; j < v0.length; j++) {
    values.push(w.value0 * v0[j]! + w.slope0 * m0[j]! + w.value1 * v1[j]! + w.slope1 * m1[j]!)
  }
  return values
}

const ratesBetween = ([v0, m0, v1, m1]: Ends, w: HermiteWeights): number[] => {
  const rates: number[] = []
  for (let j = 0; j < v0.length; j++) {
    rates.push(w.dValue0 * v0[j]! + w.dSlope0 * m0[j]! + w.dValue1 * v1[j]! + w.dSlope1 * m1[j]!)
  }
  return rates
}

type Interval = { readonly i: number; readonly w: HermiteWeights }

const intervalOf = ({ knots }: Loft, u: number): Interval => {
  const i = intervalAt(knots, u)
  const step = knots[i + 1]! - knots[i]!
  return { i, w: hermiteWeights((u - knots[i]!) / step, step) }
}

const stripLineAt = ({ rows }: LoftStrip, { i, w }: Interval): StripLine => {
  const [a, b] = [rows[i]!, rows[i + 1]!]
  return {
    y: valuesBetween([a.y, a.yU, b.y, b.yU], w),
    z: valuesBetween([a.z, a.zU, b.z, b.zU], w),
    yV: valuesBetween([a.yV, a.yUV, b.yV, b.yUV], w),
    zV: valuesBetween([a.zV, a.zUV, b.zV, b.zUV], w),
  }
}

const stripRowAt = (strip: LoftStrip, interval: Interval): StripRow => {
  const { i, w } = interval
  const [a, b] = [strip.rows[i]!, strip.rows[i + 1]!]
  const { y, z, yV, zV } = stripLineAt(strip, interval)
  return {
    y,
    z,
    yV,
    zV,
    yU: ratesBetween([a.y, a.yU, b.y, b.yU], w),
    zU: ratesBetween([a.z, a.zU, b.z, b.zU], w),
    yUV: ratesBetween([a.yV, a.yUV, b.yV, b.yUV], w),
    zUV: ratesBetween([a.zV, a.zUV, b.zV, b.zUV], w),
  }
}

/** The section of a loft at `u`, 0 to 1 along it; beyond the ends the last cubic runs on. */
export const loftLineAt = (loft: Loft, u: number): LoftLine => {
  const interval = intervalOf(loft, u)
  const strips = loft.strips.map((strip) => stripLineAt(strip, interval))
  return { u, x: splineAt(loft.along, u).value, strips }
}

/** The section at `u` as `loftLineAt` gives it, with its rates along `u`, which areas and normals need. */
export const loftRowAt = (loft: Loft, u: number): LoftRow => {
  const interval = intervalOf(loft, u)
  const along = splineAt(loft.along, u)
  const strips = loft.strips.map((strip) => stripRowAt(strip, interval))
  return { u, x: along.value, xU: along.slope, strips }
}

/** A long line of a loft: the edge under strip `edge`, counted on to the last strip's upper edge. */
export const edgePointAt = (loft: Loft, edge: number, u: number): Point3 => {
  const { i, w } = intervalOf(loft, u)
  const strip = loft.strips[Math.max(edge - 1, 0)]!
  const j = edge === 0 ? 0 : strip.cells
  const [a, b] = [strip.rows[i]!, strip.rows[i + 1]!]
  return {
    x: splineAt(loft.along, u).value,
    y: w.value0 * a.y[j]! + w.slope0 * a.yU[j]! + w.value1 * b.y[j]! + w.slope1 * b.yU[j]!,
    z: w.value0 * a.z[j]! + w.slope0 * a.zU[j]! + w.value1 * b.z[j]! + w.slope1 * b.zU[j]!,
  }
}

/** A node of a strip followed along the whole loft. */
export type LoftNode = { readonly strip: number; readonly node: number; readonly axis: 'y' | 'z' }

/** One coordinate of a node over u: the very curve that the surface holds. */
export const nodeSpline = ({ knots, strips }: Loft, { strip, node, axis }: LoftNode): Spline => {
  const { rows } = strips[strip]!
  const rate = axis === 'y' ? 'yU' : 'zU'
  return { knots, values: rows.map((row) => row[axis][node]!), slopes: rows.map((row) => row[rate][node]!) }
}

/** Point of a row inside one cell, and its derivatives by v. */
export type CellPoint = {
  readonly y: number
  readonly z: number
  readonly yV: number
  readonly zV: number
}

/** The point of cell `j` that the Hermite weights stand for. */
export const cellPointBy = ({ y, z, yV, zV }: StripLine, j: number, w: HermiteWeights): CellPoint => {
  const k = j + 1
  return {
    y: w.value0 * y[j]! + w.slope0 * yV[j]! + w.value1 * y[k]! + w.slope1 * yV[k]!,
    z: w.value0 * z[j]! + w.slope0 * zV[j]! + w.value1 * z[k]! + w.slope1 * zV[k]!,
    yV: w.dValue0 * y[j]! + w.dSlope0 * yV[j]! + w.dValue1 * y[k]! + w.dSlope1 * yV[k]!,
    zV: w.dValue0 * z[j]! + w.dSlope0 * zV[j]! + w.dValue1 * z[k]! + w.dSlope1 * zV[k]!,
  }
}

/** The point at the fraction `s` of cell `j`. */
export const cellPointAt = (line: StripLine, j: number, s: number): CellPoint =>
  cellPointBy(line, j, hermiteWeights(s, 1 / (line.y.length - 1)))

/** A place across a row: a strip and the share of its girth. */
export type LoftPlace = { readonly strip: number; readonly v: number }

/** The point of a row at a place across it; a `v` outside 0 to 1 runs on along the nearest cell. */
export const rowPointAt = ({ x, strips }: LoftLine, { strip, v }: LoftPlace): Point3 => {
  const line = strips[strip]!
  const cells = line.y.length - 1
  const j = Math.min(Math.max(Math.floor(v * cells), 0), cells - 1)
  const { y, z } = cellPointAt(line, j, v * cells - j)
  return { x, y, z }
}
