/** What stands behind the skin of each place: a coat on it is judged by the coldest part, and by the warmest. */
import type { Behind } from '#core/climate'
import type { Work } from '#job'
import type { Runner, Stage } from '../remember.ts'
import type { SkinPlace, Surfaces } from '../types.ts'
import { skinPlaceOf } from './skin-places.ts'

/** Places of which nothing is said are bare. */
export type BehindOf = Partial<Readonly<Record<SkinPlace, readonly Behind[]>>>

const bare: readonly Behind[] = ['bare']

export const behindAt = (behind: BehindOf, place: SkinPlace): readonly Behind[] => behind[place] ?? bare

/** Where nothing is said of any zone. */
const bareAll: BehindOf = {}

export type BehindInput = {
  readonly zones: Work['zones']
  readonly surfaces: Surfaces
  readonly shelter: Work['place']['shelter']
}

/**
 * By the zones of each place; what stands behind both sides stands behind each. A tank or an engine is never behind all of a
 * zone, so its bare part stays; foam is a lining.
 */
const toldBehind: Stage<BehindInput, BehindOf> = {
  name: 'skin behind',
  run: ({ zones, surfaces, shelter }) => {
    const told = new Map(zones.map(({ id, behind }) => [id, behind ?? 'bare']))
    const found = surfaces.zones.flatMap((zone) => {
      const behind = told.get(zone.id) ?? 'bare'
      const kinds: readonly Behind[] = behind === 'foam' ? ['foam'] : ['bare', behind]
      return partsOf(skinPlaceOf(zone, shelter)).map((place) => ({ place, kinds }))
    })
    const places = new Set(found.map(({ place }) => place))
    const kindsAt = (at: SkinPlace) =>
      new Set(found.flatMap(({ place, kinds }) => (place === at ? kinds : [])))
    return Object.fromEntries([...places].map((place) => [place, [...kindsAt(place)].sort()]))
  },
}

/** Most boats tell nothing, and then no edit of a zone asks again. */
export const behindSkins = (run: Runner, input: BehindInput): BehindOf =>
  input.zones.some(({ behind }) => behind !== undefined) ? run(toldBehind, input) : bareAll

const partsOf = (place: SkinPlace): readonly SkinPlace[] =>
  place === 'sides' ? ['port', 'starboard'] : [place]
