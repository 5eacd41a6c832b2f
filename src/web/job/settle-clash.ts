/** Settles which of two values stands that two devices wrote into one cell, and how such cells are told. */
import { type Clash, type ClashBox, samePlace } from '../device/clash-box.ts'
import { type CellPlace, cellOf, type JobEdits, type JobView } from './job-view.ts'

/** The mark of a weather belongs to the name of its file: they are told, and settled, as one. */
const weather = { part: 'work', section: 'weather' } as const
const weatherMark = { ...weather, key: 'hash' }
const weatherFile = { ...weather, key: 'file' }

const withFile = (clash: Clash, list: readonly Clash[]): readonly Clash[] =>
  list.filter((one) =>
    clash.part === weather.part && clash.section === weather.section
      ? one.part === weather.part && one.section === weather.section
      : samePlace(one, clash),
  )

export type ClashDesk = {
  readonly clashes: Pick<ClashBox, 'list' | 'leave'>
  readonly edits: Pick<JobEdits, 'together'>
}

export function settleClash({ clashes, edits }: ClashDesk, clash: Clash, whose: 'mine' | 'theirs'): void {
  const cells = withFile(clash, clashes.list())
  if (whose === 'mine') {
    edits.together(({ set }) => {
      for (const { mine, theirs: _, ...place } of cells) set(place satisfies CellPlace, mine)
    })
  }
  for (const cell of cells) clashes.leave(cell)
}

export type ShownClash = Clash & {
  /** What stands in the cell now; empty where it was cleared. */
  readonly stands: string
}

/** Those in which something else stands than this device wrote. */
export function shownClashes(view: Pick<JobView, 'raw' | 'clashes'>): readonly ShownClash[] {
  const named = view.clashes.some((clash) => samePlace(clash, weatherFile))
  return view.clashes
    .filter((clash) => !(named && samePlace(clash, weatherMark)))
    .map((clash) => ({ ...clash, stands: cellOf(view, clash) }))
    .filter(({ mine, stands }) => mine !== stands)
}
