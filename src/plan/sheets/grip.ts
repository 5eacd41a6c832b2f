/** Decks that people walk on and that would end smooth: gloss without bead is slippery when it is wet. */
import type { Note } from '#core/note'
import type { Grounds } from '../grounds.ts'
import type { ZoneArea, ZoneLayer } from '../types.ts'
import { COVERS_FROM } from './covers-from.ts'
import { fills } from './fillers.ts'

const walkedOn: ReadonlySet<string> = new Set([
  'side deck',
  'foredeck',
  'cabin top',
  'cockpit sole',
  'swim platform',
])

export type Decks = {
  readonly zones: readonly ZoneArea[]
  readonly layers: readonly ZoneLayer[]
  readonly grounds: Grounds
}

/** One note for all of them; none where non-skid fields are laid out, since nobody says on which zone each lies. */
export function gripNotes({ zones, layers, grounds }: Decks): readonly Note[] {
  if (zones.some(({ kind }) => kind === 'non-skid')) return []
  const smooth = zones.filter((zone) => {
    const own = layers.filter((layer) => layer.zone === zone.id)
    return walkedOn.has(zone.kind) && own.at(-1)?.role === 'finish' && !keepsGrip(zone, own, grounds)
  })
  if (smooth.length === 0) return []
  return [
    {
      code: 'buildup.gripLost',
      severity: 'caution',
      data: { zones: smooth.map(({ name }) => name).join(', '), count: smooth.length },
      source: 'common practice',
    },
  ]
}

/** Bead in a coat, or the old pattern where nothing takes it off or fills it. */
function keepsGrip(zone: ZoneArea, own: readonly ZoneLayer[], grounds: Grounds): boolean {
  if (own.some(({ additiveShare, broadcastKgPerM2 }) => additiveShare > 0 || broadcastKgPerM2 > 0))
    return true
  const isOff = (grounds[zone.id]?.patternOff ?? 'none') !== 'none'
  const isFaired = own.some(({ role, areaM2 }) => fills(role) && areaM2 >= COVERS_FROM * zone.areaM2)
  return zone.texture !== 'smooth' && !isOff && !isFaired
}
