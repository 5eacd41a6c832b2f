/** The notes of a sheet, numbered, worst first. */
import type { Note } from '#core/note'
import { labelOf, type Words } from '#words'
import { NoteList, PartBlock } from '../parts/index.ts'

export type SheetNotesProps = { readonly words: Words; readonly notes: readonly Note[] }

export const SheetNotes = ({ words, notes }: SheetNotesProps) =>
  notes.length === 0 ? null : (
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
