/** A suggested build-up taken in the place of the layers of its zones, in one step of undo. */
import type { RawCells } from '#job'
import { sandingName } from '#papers'
import type { ZoneSuggestions } from '#plan'
import { itemsOf } from '../fields/items.ts'
import type { JobView } from './job-view.ts'

const layers = { part: 'work', section: 'layers' } as const

export type TakenBuildUp = {
  readonly steps: ZoneSuggestions['suggestions'][number]['steps']
  /** Ids of the zones that stand alike. */
  readonly zones: readonly string[]
  /** Roles of the sheets of the job by id: filling and fairing stay. */
  readonly roleOf: (sheet: string) => string | undefined
  readonly nameOf: (sheet: string) => string
}

/** What fills and fairs is no part of what was suggested. */
const stays: ReadonlySet<string | undefined> = new Set(['filler', 'fairing', 'laminating resin', 'thinner'])

export function takeBuildUp(view: Pick<JobView, 'edits' | 'raw'>, taken: TakenBuildUp): void {
  const { zones, steps, roleOf, nameOf } = taken
  view.edits.together((edits) => {
    for (const { id, cells } of itemsOf(view, layers)) {
      if (stays.has(roleOf(cells.sheet ?? ''))) continue
      const own = (cells.zones ?? '').split(',').map((zone) => zone.trim())
      const others = own.filter((zone) => !zones.includes(zone))
      if (others.length === own.length) continue
      if (others.length === 0) edits.remove({ ...layers, item: id })
      else edits.set({ ...layers, item: id, key: 'zones' }, others.join(', '))
    }
    for (const { offer, layer } of steps)
      edits.add(layers, {
        name: nameOf(offer.id),
        zones: zones.join(', '),
        sheet: offer.id,
        coats: String(layer.coats),
        method: methodOf(roleOf(offer.id)),
        ...sanding('sandBefore', layer.before),
        ...sanding('sandBetween', layer.between),
      })
  })
}

const methodOf = (role: string | undefined): string => (role === 'finish' ? 'roll and tip' : 'roller')

type Sanding = TakenBuildUp['steps'][number]['layer']['before']

const sanding = (key: string, grit: Sanding): RawCells =>
  grit === undefined ? {} : { [key]: sandingName(grit) }
