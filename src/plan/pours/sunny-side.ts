/** Which side of the boat stands in the sun when a coat is laid: that side is laid last, or early. */
import { litSides, sunPosition } from '#core/climate'
import type { Work } from '#job'

export type SunnySide = 'port' | 'starboard' | 'neither' | 'unknown'

/** Of a boat under open sky; unknown without latitude, longitude and the bearing of the bow. */
export function sunnySide(
  { latitude, longitude, bowBearing, shelter }: Work['place'],
  minute: number,
): SunnySide {
  if (shelter === 'shed' || shelter === 'heated shed') return 'neither'
  if (!latitude || !longitude || !bowBearing) return 'unknown'
  const sun = sunPosition({
    atMs: minute * 60_000,
    latitude: latitude.value,
    longitude: longitude.value,
  })
  const lit = litSides({ ...sun, bowBearing: bowBearing.value })
  const [port, starboard] = (['port', 'starboard'] as const).map(
    (side) => lit.find((one) => one.side === side)?.incidence ?? 0,
  )
  if (Math.max(port!, starboard!) <= 0) return 'neither'
  return port! > starboard! ? 'port' : 'starboard'
}
