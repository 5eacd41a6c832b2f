/** Sun and sky light on level ground, from the height of the sun and the cloud. */

/**
 * Light on level ground under a clear sky.
 * @param altitude height of the sun, rad. @returns W/m², 0 with the sun down.
 * Equation: 1098 sin(h) exp(-0.057 / sin(h)). Source: B. Haurwitz, Insolation in relation to cloudiness and cloud density,
 * J. Meteorology 2 (1945) 154, from memory. Later users put 0.059, which is up to 2.1 W/m² less.
 */
export function clearSkySun(altitude: number): number {
  const height = Math.sin(altitude)
  return height > 0.001 ? 1098 * height * Math.exp(-0.057 / height) : 0
}

/**
 * Share of the clear sky's light that cloud lets through.
 * @param cloudShare 0..1. Equation: 1 - 0.75 N^3.4.
 * Source: F. Kasten and G. Czeplak, Solar Energy 24 (1980) 177, from memory.
 */
export function throughCloud(cloudShare: number): number {
  return 1 - 0.75 * cloudShare ** 3.4
}
