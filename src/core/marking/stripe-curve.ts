/** A height along the boat through three points: smooth, level at the low point, rising to both ends. */

export type ThreeHeights = {
  /** At the aft end, the low point and the stem, m. */
  readonly stern: number
  readonly low: number
  readonly stem: number
}

export type CurvePlaces = {
  /** x of the aft end, the low point and the stem, m, rising. */
  readonly sternX: number
  readonly lowX: number
  readonly stemX: number
}

/**
 * Two parabolas with their common vertex at the low point: h(x) = low + (end − low) ((x − x_low)/(x_end − x_low))².
 * It passes the three heights, has no corner, and between its points never leaves the range of their heights;
 * level when they are equal. Beyond the ends the parabolas run on.
 */
export function stripeCurve(heights: ThreeHeights, places: CurvePlaces): (x: number) => number {
  const { stern, low, stem } = heights
  const { sternX, lowX, stemX } = places
  return (x) => {
    const [end, endX] = x < lowX ? [stern, sternX] : [stem, stemX]
    return low + (end - low) * ((x - lowX) / (endX - lowX)) ** 2
  }
}

/** The sum of two heights along the boat. */
export const sumOf =
  (a: (x: number) => number, b: (x: number) => number) =>
  (x: number): number =>
    a(x) + b(x)
