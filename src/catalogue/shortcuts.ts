/**
 * Shortcuts between layers that fail: what over what, how it looks when it has failed, and who says so. Kept beside
 * the catalogue, not in it: no plan depends on it. A product's own sheet outranks this table.
 */
import type { Origin } from './row.ts'
import { applicationGuides, epoxyGuides, retailHelp } from './sources.ts'

/** Family and role as data sheets have them. */
export type ShortcutLayer = { readonly family: string; readonly role: string }

/** How it looks: the film lifts in waves, curls off, stays wet, draws back in craters, is eaten, or shows what is below. */
export type Failure = 'lifts' | 'peels' | 'stays wet' | 'craters' | 'softens' | 'shows through'

export type Shortcut = Origin & {
  readonly id: ShortcutId
  readonly under: ShortcutLayer
  /** Nothing where the surface itself is spoilt. */
  readonly over?: ShortcutLayer
  readonly fails: Failure
  /** Families in a build-up, or coatings already on the boat, that make it likely. */
  readonly tempts: readonly string[]
}

export type ShortcutId =
  | 'twoPartOverOnePart'
  | 'polyesterOverEpoxy'
  | 'missedWindow'
  | 'solventOnLaminate'
  | 'noDewax'
  | 'finishOverPutty'
  | 'unwashedEpoxy'

const gloss = { family: 'two-part polyurethane', role: 'finish' }
const epoxy = { family: 'epoxy', role: 'primer' }
const published = (...sources: readonly string[]): Origin => ({
  source: sources.join('; '),
  certainty: 'typical',
})

export const shortcuts: readonly Shortcut[] = [
  {
    id: 'twoPartOverOnePart',
    under: { family: 'one-part', role: 'finish' },
    over: gloss,
    fails: 'lifts',
    tempts: ['one-part', 'unknown', 'two-part polyurethane'],
    ...published(applicationGuides, retailHelp),
  },
  {
    id: 'polyesterOverEpoxy',
    under: epoxy,
    over: { family: 'polyester', role: 'filler' },
    fails: 'stays wet',
    tempts: ['polyester', 'vinylester', 'gelcoat'],
    ...published(retailHelp, epoxyGuides),
  },
  {
    id: 'missedWindow',
    under: gloss,
    over: gloss,
    fails: 'peels',
    tempts: ['two-part polyurethane', 'epoxy'],
    ...published(applicationGuides),
  },
  {
    id: 'solventOnLaminate',
    under: { family: 'polyester', role: 'primer' },
    fails: 'softens',
    tempts: ['bare laminate', 'vinylester', 'polyester'],
    ...published(applicationGuides),
  },
  {
    id: 'noDewax',
    under: { family: 'gelcoat', role: 'primer' },
    over: epoxy,
    fails: 'craters',
    tempts: ['gelcoat'],
    ...published(applicationGuides),
  },
  {
    id: 'finishOverPutty',
    under: { family: 'polyester', role: 'filler' },
    over: gloss,
    fails: 'shows through',
    tempts: ['polyester'],
    source: `assumed, in part ${retailHelp}`,
    certainty: 'assumed',
  },
  {
    id: 'unwashedEpoxy',
    under: epoxy,
    over: gloss,
    fails: 'peels',
    tempts: ['epoxy'],
    ...published(retailHelp, epoxyGuides),
  },
]

/** Those that a build-up of these families over this old coating tempts to, the nearest first. */
export const temptingShortcuts = (families: readonly string[], existing: string): readonly Shortcut[] => {
  const weight = ({ tempts }: Shortcut): number =>
    (tempts.includes(existing) ? 2 : 0) + tempts.filter((family) => families.includes(family)).length
  return shortcuts.filter((one) => weight(one) > 0).sort((a, b) => weight(b) - weight(a))
}
