/** Which parts of a boat are as warm as each other: one place each, whose hours are judged by its own skin. */
import type { Work } from '#job'
import type { SkinPlace, ZoneArea } from '../types.ts'

const uprightKinds = new Set(['topsides', 'boot stripe', 'boot-top', 'cabin side'])

/** Where the skin of a zone is reckoned. What lies in an unknown shade counts as deck, the coldest by night. */
export function skinPlaceOf(
  zone: Pick<ZoneArea, 'kind' | 'side' | 'indoors'> | undefined,
  shelter: Work['place']['shelter'],
): SkinPlace {
  if (zone?.indoors) return 'indoors'
  if (zone === undefined || shelter !== 'open') return 'boat'
  if (zone.kind === 'transom' || zone.kind === 'bottom') return zone.kind
  if (!uprightKinds.has(zone.kind)) return 'deck'
  return zone.side === 'both' ? 'sides' : zone.side
}
