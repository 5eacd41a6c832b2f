/** Zones of the deck as they are drawn: from the plan, and the one in hand from its corners as they are now. */
import { hasDeckShape } from '#plan'
import { itemsOf, nameOf } from '../../../fields/items.ts'
import type { JobView } from '../../../job/job-view.ts'
import type { ShownPlan } from '../../../worker/messages.ts'
import type { DrawnZone } from './deck-drawing.tsx'
import type { Place } from './deck-view.ts'
import { type Corner, ringOf, zonesPlace } from './zone-corners.ts'

export type DeckItem = {
  readonly id: string
  readonly name: string
  readonly kind: string
  readonly mirrored: boolean
}

/** Those whose kind can be drawn. */
export const deckZones = (view: JobView): readonly DeckItem[] =>
  itemsOf(view, zonesPlace).flatMap((item) => {
    const kind = String(item.cells.kind ?? '')
    const mirrored = item.cells.mirror === 'yes' || item.cells.mirror === 'true'
    return hasDeckShape(kind) ? [{ id: item.id, name: nameOf(item), kind, mirrored }] : []
  })

/** As the plan has them; the zone in hand as its corners are now, before any plan is made. */
export function drawnZones(
  { surfaces, marks, notes }: ShownPlan,
  chosen: DeckItem | undefined,
  corners: readonly Corner[],
): readonly DrawnZone[] {
  const all = [...surfaces.zones, ...marks.zones]
  const planned = all.flatMap((zone): DrawnZone[] => {
    const shape = surfaces.shapes.find((one) => one.zone === zone.id)
    if (!shape || shape.edges.length === 0 || (zone.id === chosen?.id && corners.length > 0)) return []
    const { edges, openings } = shape
    return [{ ...zone, edges, openings, wrong: false }]
  })
  if (!chosen || corners.length === 0) return planned
  const both = (ring: readonly Place[]): readonly (readonly Place[])[] =>
    chosen.mirrored ? [ring, ring.map(([x, y]): Place => [x, -y])] : [ring]
  const openings = [...new Set(corners.map(({ opening }) => opening))].filter((opening) => opening > 0)
  const area = all.find(({ id }) => id === chosen.id)
  const inHand: DrawnZone = {
    id: chosen.id,
    name: chosen.name,
    certainty: area?.certainty ?? 'assumed',
    ...(area ? { areaM2: area.areaM2 } : {}),
    edges: both(ringOf(corners, 0)),
    openings: openings.flatMap((opening) => both(ringOf(corners, opening))),
    wrong: notes.some(({ code, data }) => data.zone === chosen.id && unusable.has(code)),
  }
  return [...planned, inHand]
}

/** Notes on a shape that encloses nothing. */
const unusable = new Set(['boat.deckCrosses', 'boat.deckNoArea', 'boat.deckTooFewCorners'])
