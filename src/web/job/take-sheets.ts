/** Product sheets of a file taken into the job, in one step of undo: each under an id of its own. */
import type { SheetFile } from '#intake'
import type { RawItems } from '#job'
import { itemsOf } from '../fields/items.ts'
import type { JobView } from './job-view.ts'

const placeOf = (section: keyof SheetFile) => ({ part: 'work', section }) as const

/** What belongs to a sheet goes along under its new id; what belongs to none stays out. */
export function takeSheets({ edits }: Pick<JobView, 'edits'>, file: SheetFile): void {
  edits.together((together) => {
    const ids = new Map(
      Object.entries(file.sheets).map(([id, cells]) => [id, together.add(placeOf('sheets'), cells)]),
    )
    for (const section of ['windows', 'thinners'] as const)
      for (const cells of Object.values(file[section])) {
        const sheet = ids.get(cells.sheet ?? '')
        if (sheet !== undefined) together.add(placeOf(section), { ...cells, sheet })
      }
  })
}

/** The sheets of the job, to be written as a file. */
export const sheetsOf = (view: Pick<JobView, 'raw'>): SheetFile => {
  const items = (section: keyof SheetFile): RawItems =>
    Object.fromEntries(
      itemsOf(view, placeOf(section)).map(({ id, cells: { order: _, ...cells } }) => [id, cells]),
    )
  return { sheets: items('sheets'), windows: items('windows'), thinners: items('thinners') }
}
