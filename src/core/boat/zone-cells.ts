/** Which zone a piece of a cut hull belongs to: by its strip, and by how many of the plan's heights lie below it. */

import type { HullZoneKind } from './hull-zones.ts'
import type { ZonePatch, ZonePlan } from './zone-plan.ts'

export type CellPlace = { readonly strip: number; readonly band: number }
export type CellSide = 'port' | 'starboard' | 'aft' | 'fore'

export type CellZone = { readonly id: string; readonly kind: HullZoneKind }

const covers = (patches: readonly ZonePatch[], { strip, band }: CellPlace): boolean =>
  patches.some(({ strips, bands }) => strip >= strips.from && strip <= strips.to && bands.includes(band))

const same = (kind: HullZoneKind): CellZone => ({ id: kind, kind })

/** Every place of a hull belongs to one zone; a flat bow is a transom by its kind and `bow` by its id. */
export const zoneAt = (plan: ZonePlan, place: CellPlace, side: CellSide): CellZone => {
  const isEnd = side === 'aft' || side === 'fore'
  if (covers(isEnd ? plan.ends.bottom : plan.bottom, place)) return same('bottom')
  if (covers(isEnd ? plan.ends.bootTop : plan.bootTop, place)) return same('boot-top')
  if (isEnd) return { id: side === 'aft' ? 'transom' : 'bow', kind: 'transom' }
  return same(`topsides-${side}`)
}
