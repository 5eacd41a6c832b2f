/** Corners of deck zones that lie outside the sheer of the hull they stand on. From above: x forward, y to port; metres. */

import type { Point2, Polygon } from '#core/geometry'
import type { Note } from '#core/note'
import type { Line2 } from '../outline.ts'

export type BeyondSheer = {
  /** Half breadths of the sheer by their place along the boat. */
  readonly sheer: Line2
  /** A corner that is not farther out than this is a matter of how the boat was measured, m. */
  readonly slack: number
}

/** How far a place lies outside the sheer, m; not positive inside it. */
export const outsideSheer = (sheer: Line2, place: Point2): number => outside(fromAft(sheer), place)

const fromAft = (sheer: Line2): Line2 => [...sheer].sort((a, b) => a[0] - b[0])

const outside = (line: Line2, [x, y]: Point2): number => {
  const [aft] = line
  const fore = line.at(-1)
  if (!aft || !fore) return 0
  if (x < aft[0]) return aft[0] - x
  if (x > fore[0]) return x - fore[0]
  return Math.abs(y) - breadthAt(line, x)
}

const breadthAt = (line: Line2, x: number): number => {
  const at = Math.max(
    1,
    line.findIndex((point) => point[0] >= x),
  )
  const [[x0, y0], [x1, y1]] = [line[at - 1]!, line[at]!]
  return x1 === x0 ? Math.max(y0, y1) : y0 + ((y1 - y0) * (x - x0)) / (x1 - x0)
}

/** One note, on the corner that lies farthest out; corners are counted from 1. */
export const beyondSheer = (edge: Polygon, { sheer, slack }: BeyondSheer): readonly Note[] => {
  const line = fromAft(sheer)
  const out = edge.map((corner) => outside(line, corner))
  const worst = out.reduce((most, each) => Math.max(most, each), Number.NEGATIVE_INFINITY)
  if (edge.length === 0 || worst <= slack) return []
  const corner = out.indexOf(worst)
  const data = {
    corner: corner + 1,
    xM: edge[corner]![0],
    byM: worst,
    count: out.filter((by) => by > slack).length,
  }
  return [{ code: 'boat.deckOutsideSheer', severity: 'info', data }]
}
