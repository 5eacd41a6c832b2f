/** How much of a mesh file is taken: what a phone scan needs several times over, and no more. */

/** Largest file that is looked at, bytes: five million triangles in the wordiest form are cut to fit before. */
export const mostMeshBytes = 1_000_000_000

export const mostTriangles = 5_000_000

/** Three corners a triangle, none shared. */
export const mostPoints = 3 * mostTriangles

/** No coordinate is larger: a boat in micrometres, or on a map of the world in millimetres, is not. */
export const farthest = 1e12

/** A header in text, of PLY or of GLB, bytes. */
export const mostHeaderBytes = 8_000_000

/** The longest number that is read, characters. */
export const mostNumberLength = 64
