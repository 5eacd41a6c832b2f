/** The sun alone on a zone of the boat, hour by hour: whether somebody who paints there stands in it. */
import { normalOf } from './incidence.ts'
import type { Face } from './light-on.ts'
import type { SkyLight } from './sky-light.ts'

/**
 * Sunbeam on a zone, mean over each hour and over the zone, W/m²; 0 where it looks away. Shadows that other parts of the
 * boat or its neighbours throw are not known here.
 * Equation: sum of share × beam × max(0, cos i) over the faces.
 */
export function beamOnFaces(light: SkyLight, faces: readonly Face[]): Float64Array {
  const total = new Float64Array(light.hours)
  const { sunEast, sunNorth, sunUp, beamWm2 } = light
  for (const face of faces) {
    const normal = normalOf(face)
    for (let hour = 0; hour < total.length; hour++) {
      if (beamWm2[hour] === 0) continue
      const cosine = normal.east * sunEast[hour]! + normal.north * sunNorth[hour]! + normal.up * sunUp[hour]!
      if (cosine > 0) total[hour] = total[hour]! + face.share * beamWm2[hour]! * cosine
    }
  }
  return total
}
