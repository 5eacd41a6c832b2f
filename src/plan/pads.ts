/** Stand pads and keel blocks: what they hide of the hull is left out of what is painted, and listed. */
import type { Note } from '#core/note'
import type { Work } from '#job'
import { weakest } from './certainty.ts'
import type { Pad, ZoneArea } from './types.ts'

type ZoneItem = Work['zones'][number]

/** COMMON PRACTICE: a pad hides about this much of the hull, m². */
const usualPadM2 = 0.1

export const isPad = ({ kind }: ZoneItem): boolean => kind === 'pad'

export function padsOf(zones: readonly ZoneItem[]): readonly Pad[] {
  return zones.filter(isPad).map((zone) => {
    const { area, length, width } = zone
    const each = area?.value ?? (length && width ? length.value * width.value : usualPadM2)
    const given = area ? [area] : length && width ? [length, width] : []
    const count = zone.count ?? 1
    return {
      id: zone.id,
      name: zone.name ?? zone.kind,
      hides: zone.hides ?? 'bottom',
      side: zone.side ?? 'both',
      count,
      eachM2: each,
      areaM2: count * each,
      certainty: given.length > 0 ? weakest(...given.map(({ certainty }) => certainty)) : 'assumed',
    }
  })
}

export type WithoutPads = { readonly zones: readonly ZoneArea[]; readonly notes: readonly Note[] }

/** Each pad is taken off the zones it can stand on, in the proportion of their areas; an edge stays as long as it is. */
export function withoutPads(zones: readonly ZoneArea[], pads: readonly Pad[]): WithoutPads {
  const hidden = new Map<string, number>()
  const notes: Note[] = []
  const gone: Pad[] = []
  for (const pad of pads) {
    const under = zones.filter((zone) => standsOn(pad, zone))
    const areaM2 = under.reduce((sum, zone) => sum + zone.areaM2 - (hidden.get(zone.id) ?? 0), 0)
    const about = { zone: pad.id, name: pad.name }
    if (pad.certainty === 'assumed')
      notes.push({ code: 'surfaces.padAssumed', severity: 'assumed', data: { ...about, areaM2: pad.eachM2 } })
    if (under.length === 0) notes.push({ code: 'surfaces.padsHideNothing', severity: 'info', data: about })
    else if (pad.areaM2 >= areaM2)
      notes.push({
        code: 'surfaces.padsCover',
        severity: 'fault',
        data: { ...about, padsM2: pad.areaM2, areaM2 },
      })
    else {
      const share = pad.areaM2 / areaM2
      for (const zone of under) {
        const before = hidden.get(zone.id) ?? 0
        hidden.set(zone.id, before + share * (zone.areaM2 - before))
      }
      gone.push(pad)
    }
  }
  return {
    zones: zones.map((zone) => less(zone, hidden.get(zone.id) ?? 0)),
    notes: [...leftOut(gone), ...notes],
  }
}

const standsOn = ({ hides, side }: Pad, zone: ZoneArea): boolean =>
  zone.kind === hides && (side === 'both' || zone.side === 'both' || zone.side === side)

const less = (zone: ZoneArea, padsM2: number): ZoneArea =>
  padsM2 === 0 ? zone : { ...zone, areaM2: zone.areaM2 - padsM2, padsM2 }

function leftOut(gone: readonly Pad[]): readonly Note[] {
  if (gone.length === 0) return []
  const data = {
    count: gone.reduce((sum, { count }) => sum + count, 0),
    areaM2: gone.reduce((sum, { areaM2 }) => sum + areaM2, 0),
  }
  return [{ code: 'surfaces.padsLeftOut', severity: 'info', data }]
}
