/** The notes of a sheet, numbered, worst first. */
import type { ReactNode } from 'react'
import type { Note } from '#core/note'
import { labelOf, type Words } from '#words'
import { NoteList, PartBlock } from '../parts/index.ts'

/** Undefined without notes, so that the sheet leaves no column for them. */
export const sheetNotes = (words: Words, notes: readonly Note[]): ReactNode | undefined =>
  notes.length === 0 ? undefined : (
    <PartBlock title={labelOf('heading.notes')}>
      <NoteList
        notes={notes.map((note, at) => ({
          kind: note.severity === 'missing' ? 'missing' : 'note',
          mark: at + 1,
          text: words.sentence(note.code, note.data),
        }))}
      />
    </PartBlock>
  )
