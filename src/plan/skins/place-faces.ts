/** Which ways the places of a boat in the open look, from the surface of its hull. */
import { type FacingShare, hullMesh, meshFacings } from '#core/boat'
import type { Work } from '#job'
import { usualBottom } from '../colours.ts'
import type { Stage } from '../remember.ts'
import type { MeasuredHull } from '../surfaces.ts'
import type { OpenPlace } from '../types.ts'

type FacedPlace = Exclude<OpenPlace, 'sides'>
export type PlaceFaces = Readonly<Record<FacedPlace, readonly FacingShare[]>>

const upright = (normalAzimuth: number): readonly FacingShare[] => [
  { normalAzimuth, tilt: Math.PI / 2, share: 1 },
]

/** Of any boat: upright sides, a level deck, and a bottom that looks down and out at 30° over the ground. Assumed. */
export const usualFaces: PlaceFaces = {
  deck: [{ normalAzimuth: 0, tilt: 0, share: 1 }],
  port: upright((3 * Math.PI) / 2),
  starboard: upright(Math.PI / 2),
  transom: upright(Math.PI),
  bottom: [Math.PI / 2, (3 * Math.PI) / 2].map((normalAzimuth) => ({
    normalAzimuth,
    tilt: (5 * Math.PI) / 6,
    share: 0.5,
  })),
}

export type PlaceFacesInput = { readonly hull: MeasuredHull; readonly rake: Work['boat']['transomRake'] }

/** A deck counts as level: its camber turns it by three or four degrees. */
export const placeFaces: Stage<PlaceFacesInput, PlaceFaces> = {
  name: 'skin faces',
  run: ({ hull: { hull }, rake }) => {
    if (!hull) return usualFaces
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
      deck: usualFaces.deck,
      port: of('topsides-port', 'port'),
      starboard: of('topsides-starboard', 'starboard'),
      transom: of('transom', 'transom'),
      bottom: of('bottom', 'bottom'),
    }
  },
}
