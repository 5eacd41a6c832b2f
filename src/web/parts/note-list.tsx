/** Notes, each headed by the flag that stands on the drawing: what, why, what to do. */
import type { ReactNode } from 'react'
import './note-list.css'
import { NoteFlag, type NoteKind } from './note-flag.tsx'

export type NoteLine = {
  readonly kind: NoteKind
  readonly mark: number | string
  readonly text: ReactNode
  /** A link or button to where it is put right. */
  readonly action?: ReactNode
  /** Where a flag on the drawing leads. */
  readonly id?: string | undefined
}

export const NoteList = ({ notes }: { readonly notes: readonly NoteLine[] }) => (
  <ul className="note-list">
    {notes.map(({ kind, mark, text, action, id }) => (
      <li className="note-list-line" key={`${kind} ${mark}`} id={id}>
        <NoteFlag kind={kind} mark={mark} />
        <div className="note-list-body">
          <p>{text}</p>
          {action}
        </div>
      </li>
    ))}
  </ul>
)
