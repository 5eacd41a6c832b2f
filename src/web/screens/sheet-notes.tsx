/** The notes of a sheet, numbered, worst first. */
import type { ReactNode } from 'react'
import type { Note } from '#core/note'
import { noteText } from '#papers'
import { labelOf } from '#words'
import type { JobView } from '../job/job-view.ts'
import { NoteList, PartBlock } from '../parts/index.ts'

/** Undefined without notes, so that the sheet leaves no column for them. */
export const sheetNotes = (
  { plan, words }: Pick<JobView, 'plan' | 'words'>,
  notes: readonly Note[],
): ReactNode | undefined =>
  !plan || notes.length === 0 ? undefined : (
    <PartBlock title={labelOf('heading.notes')}>
      <NoteList
        notes={notes.map((note, at) => ({
          kind: note.severity === 'missing' ? 'missing' : 'note',
          mark: at + 1,
          text: noteText(plan, note, words),
        }))}
      />
    </PartBlock>
  )
