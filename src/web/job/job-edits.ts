/** Edits of a job as screens make them, on its two documents. */
import type * as Y from 'yjs'
import { addItem, moveItem, setCell, setGone } from '#replica'
import type { JobEdits } from './job-view.ts'

export type EditOptions = {
  /** Marks the edits as this page's own, for undo. */
  readonly origin: unknown
  readonly newId: () => string
  /** Ends the step of undo at hand. */
  readonly cut: () => void
}

export function jobEdits(
  docs: Readonly<Record<'work' | 'money', Y.Doc>>,
  { origin, newId, cut }: EditOptions,
): JobEdits {
  const alone = (part: 'work' | 'money', change: (doc: Y.Doc) => void): void => {
    docs[part].transact(() => change(docs[part]), origin)
  }
  const edits: JobEdits = {
    set: ({ part, ...cell }, text) => alone(part, (doc) => setCell(doc, cell, text)),
    add: ({ part, section }, cells, after) => {
      const item = newId()
      alone(part, (doc) => addItem(doc, { section, item }, { cells, after }))
      return item
    },
    remove: ({ part, ...place }) => alone(part, (doc) => setGone(doc, place, true)),
    move: ({ part, ...place }, after) => alone(part, (doc) => moveItem(doc, place, after)),
    together: (work) => {
      cut()
      docs.work.transact(() => docs.money.transact(() => work(edits), origin), origin)
      cut()
    },
  }
  return edits
}
