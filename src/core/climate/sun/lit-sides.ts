/** Which sides of a boat the sun lights, each taken as flat. */
import type { SunPosition } from './sun-position.ts'

/** Under this cosine the sun only grazes a side: rounding, not light. */
const grazing = 1e-9

export type BoatSide = 'port' | 'starboard' | 'bow' | 'transom' | 'deck'

export type SideLight = {
  readonly side: BoatSide
  readonly lit: boolean
  /** Cosine of the angle between the sun and the side's outward normal, 0 in shade. */
  readonly incidence: number
}

/** Bearing of each upright side's outward normal from the bow, clockwise, rad. */
const outward: readonly { readonly side: BoatSide; readonly turn: number }[] = [
  { side: 'port', turn: -Math.PI / 2 },
  { side: 'starboard', turn: Math.PI / 2 },
  { side: 'bow', turn: 0 },
  { side: 'transom', turn: Math.PI },
]

/**
 * Which sides of a boat stand in the sun, each taken as upright and flat and the deck as level.
 * @param sun.altitude rad. @param sun.azimuth rad from true north, clockwise. @param sun.bowBearing where the
 * bow points, rad from true north, clockwise.
 * @returns port, starboard, bow, transom, deck in that order; all dark with the sun at or under the horizon.
 * Flare, sheds and the shadow of neighbours are not known here.
 * Equation: cos i = cos(altitude) cos(azimuth - bearing of the normal); deck sin(altitude).
 */
export function litSides(sun: SunPosition & { readonly bowBearing: number }): readonly SideLight[] {
  const { altitude, azimuth, bowBearing } = sun
  const level = altitude > 0 ? Math.cos(altitude) : 0
  const upright = outward.map(({ side, turn }) =>
    sideLight(side, level * Math.cos(azimuth - bowBearing - turn)),
  )
  return [...upright, sideLight('deck', Math.sin(altitude))]
}

function sideLight(side: BoatSide, cosine: number): SideLight {
  const lit = cosine > grazing
  return { side, lit, incidence: lit ? cosine : 0 }
}
