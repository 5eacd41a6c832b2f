/** Which way a piece of hull looks, for sun and wind. Boat frame; radians. */

import type { BandIntegral, Point3 } from '#core/geometry'

export type Facing = {
  /**
   * Direction of the mean outward normal in plan, clockwise from the bow as a relative bearing: starboard π/2, right
   * aft π, port 3π/2. 0 when the normal stands upright.
   */
  readonly normalAzimuth: number
  /** Angle of the mean normal to straight up: 0 faces the sky, π/2 stands upright, π faces the ground. */
  readonly tilt: number
}

const turn = 2 * Math.PI

/** Facing of a summed normal vector; of nothing, upright and forward. */
export const facingOf = ({ x, y, z }: Point3): Facing => {
  const level = Math.hypot(x, y)
  if (level === 0 && z === 0) return { normalAzimuth: 0, tilt: Math.PI / 2 }
  const isUpright = level < 1e-9 * Math.abs(z)
  const azimuth = isUpright ? 0 : Math.atan2(-y, x)
  return { normalAzimuth: azimuth < 0 ? azimuth + turn : azimuth, tilt: Math.atan2(level, z) }
}

/** The same band on the other side of the hull. */
export const mirrored = (band: BandIntegral): BandIntegral => ({
  ...band,
  vector: { x: band.vector.x, y: -band.vector.y, z: band.vector.z },
})

/** Mean angle of the surface to the vertical, positive when it leans out; 0 of nothing. */
export const meanFlareOf = ({ area, leanArea }: Pick<BandIntegral, 'area' | 'leanArea'>): number =>
  area > 0 ? leanArea / area : 0
