/**
 * A deck zone measured from the centreline as trades people do: every so far along the boat the offset of its outer edge,
 * and of its inner edge where it does not reach the centreline. Boat frame from above: x forward, y to port; metres.
 */

import { cubicSpline, type Point2, type Polygon, splineAt } from '#core/geometry'
import type { Note } from '#core/note'
import { fault } from '../fault.ts'

export type DeckOffset = {
  readonly x: number
  /** Both to port and not negative; `inner` is 0 on the centreline. */
  readonly outer: number
  readonly inner: number
}

export type OffsetEdge = { readonly edge: Polygon; readonly notes: readonly Note[] }

/** Rows nearer to each other than this stand at one place, m. */
const apart = 1e-4
/** Pieces between two rows of a fair edge: its polygon is then within a four-hundredth of what chords would miss. */
const mostPieces = 20
/** Where there are very many rows they lie so near that fewer pieces do, corners. */
const enough = 2000

/**
 * The edge through the offsets, aft to forward along the outside and back along the inside. Straight from row to row,
 * which makes the area that of the trapezoidal rule; or `fair`, a cubic spline through the rows. Rows in any order.
 * Fewer than two rows, two at one place or an inner edge outside the outer one give no edge and say why.
 */
export const edgeOfOffsets = (offsets: readonly DeckOffset[], fair: boolean): OffsetEdge => {
  const rows = [...offsets].sort((a, b) => a.x - b.x)
  const notes = faultsOf(rows)
  if (notes.length > 0) return { edge: [], notes }
  const line = (of: 'outer' | 'inner'): Polygon => {
    const points = rows.map((row): Point2 => [row.x, row[of]])
    return fair && points.some(([, y]) => y !== 0) ? fairLine(points) : points
  }
  const inside = line('inner')
  // The centreline is straight: its two ends will do.
  const back = inside.every(([, y]) => y === 0) ? [inside[0]!, inside.at(-1)!] : inside
  return { edge: [...line('outer'), ...[...back].reverse()], notes: [] }
}

const faultsOf = (rows: readonly DeckOffset[]): readonly Note[] => {
  if (rows.length < 2)
    return [{ code: 'boat.deckTooFewOffsets', severity: 'missing', data: { count: rows.length, needed: 2 } }]
  const twin = rows.find((row, i) => i > 0 && row.x - rows[i - 1]!.x < apart)
  if (twin) return [fault('boat.deckOffsetTwice', { xM: twin.x })]
  const inside = rows.find(({ outer, inner }) => inner > outer + apart)
  if (!inside) return []
  const { x, outer, inner } = inside
  return [fault('boat.deckOffsetInside', { xM: x, outerM: outer, innerM: inner })]
}

/** Never across the centreline, whatever the spline would do between two rows near it. */
const fairLine = (points: readonly Point2[]): Polygon => {
  const pieces = Math.max(1, Math.min(mostPieces, Math.floor(enough / points.length)))
  const spline = cubicSpline({ knots: points.map(([x]) => x), values: points.map(([, y]) => y) })
  return points.flatMap(([x, y], i): Point2[] => {
    const next = points[i + 1]
    if (!next) return [[x, y]]
    return Array.from({ length: pieces }, (_, k): Point2 => {
      const at = x + ((next[0] - x) * k) / pieces
      return [at, k === 0 ? y : Math.max(0, splineAt(spline, at).value)]
    })
  })
}
