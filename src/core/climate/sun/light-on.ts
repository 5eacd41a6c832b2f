/** Sun, sky and ground light on a zone of the boat, hour by hour, from which way its surface looks. */
import { normalOf, type Slope } from './incidence.ts'
import type { ShelterLight } from './shelter-light.ts'
import type { SkyLight } from './sky-light.ts'
import { groundView, leastSunUp, skyView } from './transposition.ts'

/** A flat piece of a zone; the shares of a zone's pieces add up to 1. */
export type Face = Slope & { readonly share: number }

/** What a hull ashore throws light back from: gravel, concrete and dry grass are near it. Assumed, as commonly taken. */
export const usualAlbedo = 0.2

/**
 * Light on a zone, mean over each hour and over the zone, W/m².
 * @param on.faces pieces of the zone; each is dark when it looks away from the sun, so flare, tumblehome and camber shade
 * themselves. Shadows that other parts of the boat or its neighbours throw are not known here.
 * @param on.albedo of the ground about, 0..1. @param on.under what is left of sun and sky under a roof or a cloth.
 * @returns W/m², 0 with the sun and sky dark; the sky after Hay and Davies, see `hayDaviesSky`.
 */
export function lightOn(
  light: SkyLight,
  on: { readonly faces: readonly Face[]; readonly albedo: number; readonly under: ShelterLight },
): Float64Array {
  const total = new Float64Array(light.hours)
  for (const face of on.faces) addFace(total, { light, face, albedo: on.albedo, under: on.under })
  return total
}

/** Written out flat: a year of hours for every face of every zone passes here. Same figures as `transposition.ts`. */
function addFace(
  total: Float64Array,
  of: {
    readonly light: SkyLight
    readonly face: Face
    readonly albedo: number
    readonly under: ShelterLight
  },
): void {
  const { sunEast, sunNorth, sunUp, beamWm2, diffuseWm2, globalWm2, aboutSun } = of.light
  const normal = normalOf(of.face)
  const sky = skyView(normal.up)
  const ground = of.albedo * groundView(normal.up)
  const beamShare = of.face.share * of.under.beamShare
  const restShare = of.face.share * of.under.diffuseShare
  for (let hour = 0; hour < total.length; hour++) {
    const globalHour = globalWm2[hour]!
    if (globalHour === 0 && beamWm2[hour] === 0) continue
    const up = sunUp[hour]!
    const cosine = normal.east * sunEast[hour]! + normal.north * sunNorth[hour]! + normal.up * up
    const lit = Math.max(0, cosine)
    const near = aboutSun[hour]!
    const ring = diffuseWm2[hour]! * near * (lit / Math.max(up, leastSunUp))
    const rest = diffuseWm2[hour]! * (1 - near) * sky + globalHour * ground
    // The ring about the sun is cut with the sun.
    total[hour] = total[hour]! + beamShare * (beamWm2[hour]! * lit + ring) + restShare * rest
  }
}
