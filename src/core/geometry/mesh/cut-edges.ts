/**
 * Where a plane crosses the edges of a mesh. A point in the plane counts as above it, so that every triangle that is
 * crossed is crossed on two edges, and lines come out whole.
 */

/** The two ends of an edge as one number, the lower first: exact below 2^53. */
const keyOf = (a: number, b: number, points: number): number => (a < b ? a * points + b : b * points + a)

export type CutEdges = {
  /** Number of the crossing on the edge between two points on either side of the plane, from 0. */
  readonly at: (a: number, b: number) => number
  /** x, y and z of the crossings so far. */
  readonly places: number[]
}

/** Gathers crossings, each edge once, whichever end is named first. */
export const cutEdges = (positions: Float64Array, heights: Float64Array): CutEdges => {
  const ids = new Map<number, number>()
  const places: number[] = []
  const at = (a: number, b: number): number => {
    const key = keyOf(a, b, heights.length)
    const known = ids.get(key)
    if (known !== undefined) return known
    const id = ids.size
    ids.set(key, id)
    // From the lower number, so that both triangles beside the edge get the same place to the last bit.
    const [from, to] = a < b ? [a, b] : [b, a]
    const share = heights[from]! / (heights[from]! - heights[to]!)
    for (let k = 0; k < 3; k++) {
      const [start, end] = [positions[3 * from + k]!, positions[3 * to + k]!]
      places.push(share === 1 ? end : start + share * (end - start))
    }
    return id
  }
  return { at, places }
}

/** The corner that lies alone on its side, 0 to 2, by the heights of the three; -1 when all lie on one side. */
export const loneCorner = (a: number, b: number, c: number): number => {
  const isA = a >= 0
  const isC = c >= 0
  if (isA === b >= 0) return isA === isC ? -1 : 2
  return isA === isC ? 1 : 0
}
