/** Triangles of a file that gives each its own three corners. */

/** 0, 1, 2, … : point by point, three a triangle. */
export function eachByItself(points: number): Uint32Array {
  const triangles = new Uint32Array(points)
  for (let i = 0; i < points; i++) triangles[i] = i
  return triangles
}
