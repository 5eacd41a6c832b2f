/**
 * Finds the nearest of many points (J. L. Bentley's k-d tree, 1975). Axes and unit of the points; the tree keeps the
 * array that it is given and does not change it.
 */

export type PointTree = {
  readonly positions: Float64Array
  /** Numbers of points; each part of the list is split at its middle along its longest side. */
  readonly order: Uint32Array
  /** The axis along which the part with this middle is split. */
  readonly axes: Uint8Array
}

/** Parts this small are looked through. */
const leafSize = 8

/** A tree of the points with these numbers. */
export const pointTree = (positions: Float64Array, among: Uint32Array): PointTree => {
  const order = among.slice()
  const axes = new Uint8Array(order.length)
  const split = (from: number, to: number): void => {
    if (to - from <= leafSize) return
    const axis = longestAxis(positions, order, from, to)
    const middle = (from + to) >> 1
    partition(positions, order, { axis, from, to, middle })
    axes[middle] = axis
    split(from, middle)
    split(middle + 1, to)
  }
  split(0, order.length)
  return { positions, order, axes }
}

const longestAxis = (positions: Float64Array, order: Uint32Array, from: number, to: number): number => {
  let [longest, most] = [0, -1]
  for (let axis = 0; axis < 3; axis++) {
    let [low, high] = [Infinity, -Infinity]
    for (let i = from; i < to; i++) {
      const value = positions[3 * order[i]! + axis]!
      low = Math.min(low, value)
      high = Math.max(high, value)
    }
    if (high - low > most) {
      most = high - low
      longest = axis
    }
  }
  return longest
}

type Part = { readonly axis: number; readonly from: number; readonly to: number; readonly middle: number }

/** Brings the point that belongs in the middle there, smaller ones before and larger ones behind it (Hoare, 1961). */
const partition = (positions: Float64Array, order: Uint32Array, { axis, from, to, middle }: Part): void => {
  let [low, high] = [from, to - 1]
  const at = (i: number): number => positions[3 * order[i]! + axis]!
  while (low < high) {
    const pivot = at((low + high) >> 1)
    let [i, j] = [low, high]
    while (i <= j) {
      while (at(i) < pivot) i++
      while (at(j) > pivot) j--
      if (i > j) break
      const kept = order[i]!
      order[i++] = order[j]!
      order[j--] = kept
    }
    if (middle <= j) high = j
    else if (middle >= i) low = i
    else return
  }
}

/** The number of the point nearest to a place; undefined in an empty tree. */
export const nearestPoint = (
  { positions, order, axes }: PointTree,
  place: readonly [number, number, number],
): number | undefined => {
  let [nearest, least] = [-1, Infinity]
  const look = (i: number): void => {
    const p = 3 * order[i]!
    const x = positions[p]! - place[0]
    const y = positions[p + 1]! - place[1]
    const z = positions[p + 2]! - place[2]
    const squared = x * x + y * y + z * z
    if (squared >= least) return
    least = squared
    nearest = order[i]!
  }
  const search = (from: number, to: number): void => {
    if (to - from <= leafSize) {
      for (let i = from; i < to; i++) look(i)
      return
    }
    const middle = (from + to) >> 1
    const axis = axes[middle]!
    const ahead = place[axis]! - positions[3 * order[middle]! + axis]!
    look(middle)
    if (ahead < 0) search(from, middle)
    else search(middle + 1, to)
    if (ahead * ahead >= least) return
    if (ahead < 0) search(middle + 1, to)
    else search(from, middle)
  }
  search(0, order.length)
  return nearest === -1 ? undefined : nearest
}
