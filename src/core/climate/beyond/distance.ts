/** How far two places on the earth lie apart. */
import type { Place } from '../sun/sun-position.ts'

/** Mean radius, m. */
const earthM = 6_371_000

/**
 * @param a, b latitude and longitude, rad. @returns m over a round earth; within 0.6 % of the true one.
 * Equation: 2 R asin √(sin²(Δφ/2) + cos φ₁ cos φ₂ sin²(Δλ/2)). Source: haversine formula, R. W. Sinnott, Virtues of the
 * Haversine, Sky and Telescope 68 (1984), from memory.
 */
export function distanceM(a: Place, b: Place): number {
  const half = (angle: number) => Math.sin(angle / 2) ** 2
  const share =
    half(b.latitude - a.latitude) +
    Math.cos(a.latitude) * Math.cos(b.latitude) * half(b.longitude - a.longitude)
  return 2 * earthM * Math.asin(Math.min(1, Math.sqrt(share)))
}
