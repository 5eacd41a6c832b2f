/** At what angle the sun meets a surface. */
import type { SunPosition } from './sun-position.ts'

/** Which way a flat piece of surface looks. */
export type Slope = {
  /** Bearing of its outward normal in plan, from true north clockwise, rad; of no account where it lies level. */
  readonly bearing: number
  /** Angle of its outward normal to straight up, rad: 0 faces the sky, π/2 stands upright, π faces the ground. */
  readonly tilt: number
}

/** East, north and up of a direction; a unit vector. */
export type Direction = { readonly east: number; readonly north: number; readonly up: number }

/** Where the outward normal of a surface points. */
export function normalOf({ bearing, tilt }: Slope): Direction {
  const level = Math.sin(tilt)
  return { east: level * Math.sin(bearing), north: level * Math.cos(bearing), up: Math.cos(tilt) }
}

/** Where the sun stands. */
export function towardsSun({ altitude, azimuth }: SunPosition): Direction {
  const level = Math.cos(altitude)
  return { east: level * Math.sin(azimuth), north: level * Math.cos(azimuth), up: Math.sin(altitude) }
}

/**
 * Cosine of the angle between a surface's outward normal and the sun.
 * @returns -1..1; under 0 the surface looks away from the sun and shades itself.
 * Equation: cos θ = cos z cos β + sin z sin β cos(azimuth of the sun - bearing of the surface), as a dot product.
 */
export function cosIncidence(a: Direction, b: Direction): number {
  return a.east * b.east + a.north * b.north + a.up * b.up
}
