/**
 * Integrals over the bands that levels cut out of a loft: area, mean direction, lean and volume, strip by strip.
 * Axes as the loft's, metres; the outward normal of the modelled side points to positive y.
 */

import { type HermiteWeights, hermiteWeights } from './cubic-spline.ts'
import { gauss3, gauss4 } from './gauss-legendre.ts'
import type { Loft, StripLine, StripRow } from './loft.ts'
import {
  allEdgeCrossings,
  cellCrossing,
  changesSide,
  inOrder,
  type Level,
  nodeHeights,
} from './loft-level.ts'
import { cellPointAt, cellPointBy, type LoftLine, type LoftRow, loftRowAt } from './loft-row.ts'
import type { Point3 } from './points.ts'

export type BandIntegral = {
  /** ∫ dA, m². */
  readonly area: number
  /** ∫ n dA with n the outward unit normal, m². */
  readonly vector: Point3
  /** ∫ lean dA, m² rad; lean is the angle of the surface to the vertical, positive when it faces downward. */
  readonly leanArea: number
  /** ∫ y n_y dA, m³: the volume between the band and the plane y = 0. */
  readonly volume: number
}

type Sums = { area: number; x: number; y: number; z: number; leanArea: number; volume: number }

const emptySums = (): Sums => ({ area: 0, x: 0, y: 0, z: 0, leanArea: 0, volume: 0 })

const asIntegral = ({ area, x, y, z, leanArea, volume }: Sums): BandIntegral => ({
  area,
  vector: { x, y, z },
  leanArea,
  volume,
})

/** Sum of the integrals of several bands; all zero for none. */
export const addBands = (bands: readonly BandIntegral[]): BandIntegral =>
  asIntegral(
    bands.reduce<Sums>(
      (sum, band) => ({
        area: sum.area + band.area,
        x: sum.x + band.vector.x,
        y: sum.y + band.vector.y,
        z: sum.z + band.vector.z,
        leanArea: sum.leanArea + band.leanArea,
        volume: sum.volume + band.volume,
      }),
      emptySums(),
    ),
  )

/** A stretch of one cell of a row that lies in one band: the band counts the levels below it. */
type Stretch = { readonly j: number; readonly from: number; readonly to: number; readonly band: number }

const bandAt = (x: number, line: StripLine, levels: readonly Level[], j: number, s: number): number => {
  const { y, z } = cellPointAt(line, j, s)
  return levels.reduce((band, level) => (level(x, y, z) > 0 ? band + 1 : band), 0)
}

/** Cuts one strip of a row at its cells and at every crossing of a level. */
const stretchesOf = (x: number, line: StripLine, levels: readonly Level[]): readonly Stretch[] => {
  const heights = levels.map((level) => nodeHeights(x, line, level))
  const stretches: Stretch[] = []
  for (let j = 0; j < line.y.length - 1; j++) {
    const cuts = [0]
    let above = 0
    heights.forEach((height, n) => {
      const [atFrom, atTo] = [height[j]!, height[j + 1]!]
      if (changesSide(atFrom, atTo)) cuts.push(cellCrossing(x, line, levels[n]!, { j, atFrom, atTo }))
      else if (atFrom + atTo > 0) above++
    })
    if (cuts.length === 1) stretches.push({ j, from: 0, to: 1, band: above })
    else stretches.push(...cutCell(x, line, levels, { j, cuts }))
  }
  return stretches
}

const cutCell = (
  x: number,
  line: StripLine,
  levels: readonly Level[],
  { j, cuts }: { readonly j: number; readonly cuts: readonly number[] },
): readonly Stretch[] => {
  const places = [...cuts, 1].sort((a, b) => a - b)
  return places.slice(1).flatMap((to, k) => {
    const from = places[k]!
    return to - from > 1e-12 ? [{ j, from, to, band: bandAt(x, line, levels, j, (from + to) / 2) }] : []
  })
}

/** Hermite weights at the Gauss points of a whole cell, for they are wanted for nearly every cell. */
const wholeCellWeights = (cells: number): readonly HermiteWeights[] =>
  gauss3.nodes.map((node) => hermiteWeights(node, 1 / cells))

type Place = { readonly xU: number; readonly weight: number; readonly j: number; readonly w: HermiteWeights }

/** Adds one Gauss point: outward normal times area is S_v × S_u. */
const addPoint = (sums: Sums, row: StripRow, { xU, weight, j, w }: Place): void => {
  const { yU, zU, yUV, zUV } = row
  const k = j + 1
  const { y, yV, zV } = cellPointBy(row, j, w)
  const pU = w.value0 * yU[j]! + w.slope0 * yUV[j]! + w.value1 * yU[k]! + w.slope1 * yUV[k]!
  const qU = w.value0 * zU[j]! + w.slope0 * zUV[j]! + w.value1 * zU[k]! + w.slope1 * zUV[k]!
  const nx = qU * yV - pU * zV
  const ny = xU * zV
  const nz = -xU * yV
  const size = Math.sqrt(nx * nx + ny * ny + nz * nz)
  if (size === 0) return
  sums.area += weight * size
  sums.x += weight * nx
  sums.y += weight * ny
  sums.z += weight * nz
  sums.leanArea += weight * size * Math.asin(Math.max(-1, Math.min(1, -nz / size)))
  sums.volume += weight * ny * y
}

/** Adds the row of one Gauss place along u to the sums of one strip, band by band. */
const addRow = (
  sums: readonly Sums[],
  { row, strip, weight }: { readonly row: LoftRow; readonly strip: number; readonly weight: number },
  levels: readonly Level[],
  whole: readonly HermiteWeights[],
): void => {
  const nodes = row.strips[strip]!
  const cells = nodes.y.length - 1
  for (const { j, from, to, band } of stretchesOf(row.x, nodes, levels)) {
    const width = to - from
    for (let k = 0; k < gauss3.nodes.length; k++) {
      const w = width === 1 ? whole[k]! : hermiteWeights(from + width * gauss3.nodes[k]!, 1 / cells)
      const share = (weight * width * gauss3.weights[k]!) / cells
      addPoint(sums[band]!, nodes, { xU: row.xU, weight: share, j, w })
    }
  }
}

/**
 * Integrals of every strip over every band: with n levels band 0 lies below all of them and band n above all.
 * Answer by [strip][band]. The intervals between sections are split where an edge crosses a level, so that each
 * piece is smooth; four Gauss points along and three across each cell.
 */
export const integrateBands = (
  loft: Loft,
  levels: readonly Level[],
): readonly (readonly BandIntegral[])[] => {
  const sums = loft.strips.map(() => Array.from({ length: levels.length + 1 }, emptySums))
  const whole = loft.strips.map(({ cells }) => wholeCellWeights(cells))
  const places = inOrder([...loft.knots, ...allEdgeCrossings(loft, levels)])
  for (let i = 1; i < places.length; i++) {
    const [from, step] = [places[i - 1]!, places[i]! - places[i - 1]!]
    for (let k = 0; k < gauss4.nodes.length; k++) {
      const row = loftRowAt(loft, from + step * gauss4.nodes[k]!)
      const weight = step * gauss4.weights[k]!
      sums.forEach((bands, strip) => {
        addRow(bands, { row, strip, weight }, levels, whole[strip]!)
      })
    }
  }
  return sums.map((bands) => bands.map(asIntegral))
}

export type RowBand = {
  /** ∫ y dz, m²: the flat area between the row and the plane y = 0. */
  readonly flatArea: number
  /** Length along the row, m. */
  readonly girth: number
}

/** Flat area and girth of one row in each band, strip by strip: [strip][band]. */
export const integrateRow = (
  { x, strips }: LoftLine,
  levels: readonly Level[],
): readonly (readonly RowBand[])[] =>
  strips.map((nodes) => {
    const bands = Array.from({ length: levels.length + 1 }, () => ({ flatArea: 0, girth: 0 }))
    for (const { j, from, to, band } of stretchesOf(x, nodes, levels)) {
      const into = bands[band]!
      const scale = (to - from) / (nodes.y.length - 1)
      for (let k = 0; k < gauss4.nodes.length; k++) {
        const p = cellPointAt(nodes, j, from + (to - from) * gauss4.nodes[k]!)
        into.flatArea += scale * gauss4.weights[k]! * p.y * p.zV
        into.girth += scale * gauss4.weights[k]! * Math.sqrt(p.yV * p.yV + p.zV * p.zV)
      }
    }
    return bands
  })
