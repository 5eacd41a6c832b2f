/** How sharply a section turns at a spot, and where its corner was before smoothing made it round. */

import { gapOf, type Spot } from './half-section.ts'

/** Angle between the runs to either side over so many spots, rad; 0 where they do not fit. */
export const turnAt = (spots: readonly Spot[], at: number, reach: number): number => {
  const [a, b, c] = [spots[at - reach], spots[at], spots[at + reach]]
  if (!a || !b || !c) return 0
  const turn = Math.atan2(c.z - b.z, c.y - b.y) - Math.atan2(b.z - a.z, b.y - a.y)
  return Math.abs(Math.atan2(Math.sin(turn), Math.cos(turn)))
}

/** Where the straight runs to either side would meet, if that is near; smoothing has made the corner round. */
export const sharpened = (spots: readonly Spot[], at: number, reach: number): Spot => {
  const spot = spots[at]!
  const [gap, far] = [Math.max(1, Math.round(0.5 * reach)), Math.round(1.8 * reach)]
  const below = through(spots.slice(Math.max(at - far, 0), Math.max(at - gap + 1, 0)))
  const above = through(spots.slice(at + gap, at + far + 1))
  if (!below || !above) return spot
  const det = below.dy * above.dz - below.dz * above.dy
  if (Math.abs(det) < 0.1) return spot
  const t = ((above.y - below.y) * above.dz - (above.z - below.z) * above.dy) / det
  const met = { y: Math.max(below.y + t * below.dy, 0), z: below.z + t * below.dz }
  const step = gapOf(spots[at - 1] ?? spot, spot)
  return gapOf(met, spot) <= reach * step ? met : spot
}

/** The line through spots by total least squares: a point on it and its direction. */
const through = (spots: readonly Spot[]) => {
  if (spots.length < 2) return undefined
  const y = spots.reduce((sum, spot) => sum + spot.y, 0) / spots.length
  const z = spots.reduce((sum, spot) => sum + spot.z, 0) / spots.length
  let [yy, yz, zz] = [0, 0, 0]
  for (const spot of spots) {
    yy += (spot.y - y) ** 2
    yz += (spot.y - y) * (spot.z - z)
    zz += (spot.z - z) ** 2
  }
  const angle = Math.atan2(2 * yz, yy - zz) / 2
  return { y, z, dy: Math.cos(angle), dz: Math.sin(angle) }
}
