/** Settles which of two values stands that two devices wrote into one cell, and how such cells are told. */
import { type Clash, type ClashBox, samePlace } from '../device/clash-box.ts'
import { type CellPlace, cellOf, type JobEdits, type JobView } from './job-view.ts'

/** The mark of a weather belongs to the name of its file: they are told, and settled, as one. */
const weather = { part: 'work', section: 'weather' } as const
const marksAndFiles = [
  ['hash', 'file'],
  ['typicalHash', 'typicalFile'],
  ['loggerHash', 'logger'],
] as const

const ofWeather = ({ part, section }: CellPlace): boolean =>
  part === weather.part && section === weather.section
/** Which of the pairs it is of; when the weather was read goes with the weather itself. */
const pairOf = ({ key }: CellPlace): number =>
  Math.max(
    0,
    marksAndFiles.findIndex((pair) => pair.some((one) => one === key)),
  )

const withFile = (clash: Clash, list: readonly Clash[]): readonly Clash[] =>
  list.filter((one) =>
    ofWeather(clash) ? ofWeather(one) && pairOf(one) === pairOf(clash) : samePlace(one, clash),
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
  const told = marksAndFiles.flatMap(([mark, file]) =>
    view.clashes.some((clash) => samePlace(clash, { ...weather, key: file }))
      ? [{ ...weather, key: mark }]
      : [],
  )
  return view.clashes
    .filter((clash) => !told.some((mark) => samePlace(clash, mark)))
    .map((clash) => ({ ...clash, stands: cellOf(view, clash) }))
    .filter(({ mine, stands }) => mine !== stands)
}
