/** A rectangle with four equal round corners: area, perimeter, and the same shape set in by an even margin; metres. */

export type RoundedRectangle = {
  readonly length: number
  readonly width: number
  /** Corner radius, from 0 to half the shorter side. */
  readonly radius: number
}

/** Area = length × width − (4 − π) radius². */
export const roundedRectangleArea = ({ length, width, radius }: RoundedRectangle): number =>
  length * width - (4 - Math.PI) * radius * radius

/** Perimeter = 2 (length + width) − (8 − 2π) radius. */
export const roundedRectanglePerimeter = ({ length, width, radius }: RoundedRectangle): number =>
  2 * (length + width) - (8 - 2 * Math.PI) * radius

/**
 * The shape whose edge is `margin` metres inside everywhere: each corner radius shrinks by the margin and turns
 * square at 0. Nothing (`undefined`) once the margin eats half the shorter side.
 */
export const insetRoundedRectangle = (
  { length, width, radius }: RoundedRectangle,
  margin: number,
): RoundedRectangle | undefined => {
  const inside = {
    length: length - 2 * margin,
    width: width - 2 * margin,
    radius: Math.max(radius - margin, 0),
  }
  return inside.length > 0 && inside.width > 0 ? inside : undefined
}
