/** Which ways the places of a boat in the open look, from the surface of its hull. */
import { camberFacings, type FacingShare, hullMesh, meshFacings } from '#core/boat'
import type { Work } from '#job'
import { usualBottom } from '../colours.ts'
import type { Stage } from '../remember.ts'
import type { MeasuredHull } from '../surfaces.ts'
import type { OpenPlace } from '../types.ts'

/** A place that looks one way. */
export type FacedPlace = Exclude<OpenPlace, 'sides'>
export type PlaceFaces = Readonly<Record<FacedPlace, readonly FacingShare[]>>

const upright = (normalAzimuth: number): readonly FacingShare[] => [
  { normalAzimuth, tilt: Math.PI / 2, share: 1 },
]

/** Of any boat: upright sides, a level deck, and a bottom that looks down and out at 30° over the ground. Assumed. */
export const usualFaces: PlaceFaces = {
  deck: camberFacings(0),
  port: upright((3 * Math.PI) / 2),
  starboard: upright(Math.PI / 2),
  transom: upright(Math.PI),
  bottom: [Math.PI / 2, (3 * Math.PI) / 2].map((normalAzimuth) => ({
    normalAzimuth,
    tilt: (5 * Math.PI) / 6,
    share: 0.5,
  })),
}

export type PlaceFacesInput = {
  readonly hull: MeasuredHull
  readonly rake: Work['boat']['transomRake']
  /** Rise of the deck's camber over the beam; 0 where nobody said. */
  readonly camber: number
}

/** The highest camber that the job gives for a zone, over the beam; 0 without either. */
export function camberOverBeam(zones: Work['zones'], { beam }: Work['boat']): number {
  const rise = Math.max(0, ...zones.map(({ camber }) => camber?.value ?? 0))
  return beam && beam.value > 0 ? rise / beam.value : 0
}

export const placeFaces: Stage<PlaceFacesInput, PlaceFaces> = {
  name: 'skin faces',
  run: ({ hull: { hull }, rake, camber }) => {
    const deck = camberFacings(camber)
    if (!hull) return { ...usualFaces, deck }
    const mesh = hullMesh(hull, {
      cuts: { bottomTo: usualBottom(hull) },
      rake: rake?.value ?? 0,
      stripes: [],
      decks: [],
    })
    const of = (id: string, otherwise: FacedPlace) => {
      const zone = mesh.zones.find((one) => one.id === id)
      return zone
        ? meshFacings({ positions: mesh.positions, triangles: zone.triangles })
        : usualFaces[otherwise]
    }
    return {
      deck,
      port: of('topsides-port', 'port'),
      starboard: of('topsides-starboard', 'starboard'),
      transom: of('transom', 'transom'),
      bottom: of('bottom', 'bottom'),
    }
  },
}
