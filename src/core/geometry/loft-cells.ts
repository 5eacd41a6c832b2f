/**
 * A loft as flat pieces, cut exactly where levels cross it: corners lie on the surface, and neighbours share them. Axes
 * as the loft's, metres. The arrays belong to the answer.
 */

import { bracketedRoot } from './bracketed-root.ts'
import type { Loft } from './loft.ts'
import { changesSide, type Level, onLevel, refined } from './loft-level.ts'
import { type LoftLine, loftLineAt, rowPointAt } from './loft-row.ts'
import { distance3, type Point3 } from './points.ts'

export type LoftCorner = Point3 & { readonly u: number; readonly strip: number; readonly v: number }

/** A flat, convex piece of one strip. */
export type LoftCell = {
  readonly strip: number
  /** Numbers of its corners, anticlockwise as seen from the side to which y grows. */
  readonly corners: readonly number[]
  /** By level: whether the piece lies over it. */
  readonly over: readonly boolean[]
}

export type LoftCells = {
  readonly corners: readonly LoftCorner[]
  /** By level: the corners that lie on it. */
  readonly on: readonly ReadonlySet<number>[]
  readonly cells: readonly LoftCell[]
}

export type LoftSteps = {
  /** Pieces a section interval. */
  readonly along: number
  /** Pieces a cell of a curved strip; a straight one is a single piece. */
  readonly across: number
}

/** Triangles of a loft, each cut along the levels; together they cover it once. */
export const loftCells = (loft: Loft, levels: readonly Level[], steps: LoftSteps): LoftCells => {
  const grid = gridOf(loft, steps)
  const found = { corners: [...grid.corners], on: levels.map(() => new Set<number>()) }
  let cells: readonly LoftCell[] = grid.cells
  levels.forEach((level, n) => {
    cells = cutAll({ loft, corners: found.corners, on: found.on[n]! }, cells, level)
  })
  return { ...found, cells }
}

type Grid = { readonly corners: readonly LoftCorner[]; readonly cells: readonly LoftCell[] }

/** Two triangles a place of the grid, along the shorter diagonal. */
const gridOf = (loft: Loft, { along, across }: LoftSteps): Grid => {
  const lines = refined(loft.knots, along).map((u) => loftLineAt(loft, u))
  const parts = loft.strips.map(({ cells }) => (cells === 1 ? 1 : cells * across))
  const first = parts.map((_, strip) => parts.slice(0, strip).reduce((sum, n) => sum + n, 0))
  const row = first.at(-1)! + parts.at(-1)! + 1
  const corners = lines.flatMap((line) => rowCorners(line, parts))
  const cells: LoftCell[] = []
  for (let i = 1; i < lines.length; i++)
    parts.forEach((count, strip) => {
      for (let j = first[strip]!; j < first[strip]! + count; j++) {
        const [a, d] = [(i - 1) * row + j, i * row + j]
        for (const triangle of split(corners, [a, a + 1, d + 1, d]))
          cells.push({ strip, corners: triangle, over: [] })
      }
    })
  return { corners, cells }
}

/** The corners of one row, shared edges once. */
const rowCorners = (line: LoftLine, parts: readonly number[]): readonly LoftCorner[] =>
  parts.flatMap((count, strip) =>
    Array.from({ length: strip === 0 ? count + 1 : count }, (_, k) => {
      const v = (strip === 0 ? k : k + 1) / count
      return { u: line.u, strip, v, ...rowPointAt(line, { strip, v }) }
    }),
  )

type Four = readonly [number, number, number, number]

const split = (points: readonly Point3[], [a, b, c, d]: Four): readonly (readonly number[])[] =>
  distance3(points[a]!, points[c]!) <= distance3(points[b]!, points[d]!)
    ? [
        [a, b, c],
        [a, c, d],
      ]
    : [
        [a, b, d],
        [b, c, d],
      ]

type Found = { readonly loft: Loft; readonly corners: LoftCorner[]; readonly on: Set<number> }

const cutAll = (found: Found, cells: readonly LoftCell[], level: Level): readonly LoftCell[] => {
  const { corners, on } = found
  const heights = corners.map(({ x, y, z }) => onLevel(level(x, y, z)))
  heights.forEach((height, id) => {
    if (height === 0) on.add(id)
  })
  const made = new Map<string, number>()
  const cut = (strip: number, a: number, b: number): number => {
    const key = a < b ? `${a} ${b}` : `${b} ${a}`
    const known = made.get(key)
    if (known !== undefined) return known
    corners.push(crossing(found, level, { strip, a: corners[a]!, b: corners[b]! }))
    heights.push(0)
    on.add(corners.length - 1)
    made.set(key, corners.length - 1)
    return corners.length - 1
  }
  return cells.flatMap((cell) => cutCell(cell, heights, cut))
}

/** A corner on a shared edge is named by the strip below it. */
const vIn = ({ strip: of, v }: LoftCorner, strip: number): number => (of === strip ? v : of < strip ? 0 : 1)

const crossing = (
  { loft }: Found,
  level: Level,
  { strip, a, b }: { readonly strip: number; readonly a: LoftCorner; readonly b: LoftCorner },
): LoftCorner => {
  const [va, vb] = [vIn(a, strip), vIn(b, strip)]
  const line = a.u === b.u ? loftLineAt(loft, a.u) : undefined
  const at = (t: number): LoftCorner => {
    const u = a.u + t * (b.u - a.u)
    const v = va + t * (vb - va)
    return { u, strip, v, ...rowPointAt(line ?? loftLineAt(loft, u), { strip, v }) }
  }
  const height = (t: number) => {
    const { x, y, z } = at(t)
    return level(x, y, z)
  }
  return at(bracketedRoot(height, { from: 0, to: 1, atFrom: height(0), atTo: height(1) }))
}

/** A cell that lies on one side whole stays whole; one that only touches the level belongs to the side it lies on. */
const cutCell = (
  cell: LoftCell,
  heights: readonly number[],
  cut: (strip: number, a: number, b: number) => number,
): readonly LoftCell[] => {
  const { strip, corners, over } = cell
  const sides = corners.map((id) => heights[id]!)
  if (sides.every((height) => height <= 0)) return [{ ...cell, over: [...over, false] }]
  if (sides.every((height) => height >= 0)) return [{ ...cell, over: [...over, true] }]
  const [under, above]: [number[], number[]] = [[], []]
  corners.forEach((id, k) => {
    const next = (k + 1) % corners.length
    const [here, there] = [sides[k]!, sides[next]!]
    if (here <= 0) under.push(id)
    if (here >= 0) above.push(id)
    if (here === 0 || there === 0 || !changesSide(here, there)) return
    const between = cut(strip, id, corners[next]!)
    under.push(between)
    above.push(between)
  })
  return [
    { strip, corners: under, over: [...over, false] },
    { strip, corners: above, over: [...over, true] },
  ]
}
