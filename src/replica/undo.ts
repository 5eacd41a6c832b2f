/**
 * Undo over several shared documents as if they were one: own edits only, in the order in which they were made. One
 * manager watches each document; which of them is next is kept here.
 */
import * as Y from 'yjs'

export type Undo = {
  readonly canUndo: () => boolean
  readonly canRedo: () => boolean
  readonly undo: () => void
  readonly redo: () => void
  /** The next edit is a step of its own, however soon it comes. */
  readonly cut: () => void
  readonly destroy: () => void
}

export type UndoOptions = {
  /** Only edits of this origin are undone. */
  readonly origin: unknown
  /** Edits closer together than this are one step, ms. */
  readonly joinMs: number
  /** Called when what can be undone has changed. */
  readonly changed: () => void
}

/** Watches every root map that the documents have now or later. */
export function createUndo(docs: readonly Y.Doc[], { origin, joinMs, changed }: UndoOptions): Undo {
  const managers = docs.map(
    (doc) =>
      new Y.UndoManager(doc, {
        trackedOrigins: new Set([origin]),
        captureTimeout: joinMs,
        // A transaction over both documents that changed only one would leave an empty step in the other.
        captureTransaction: (edit) => edit.changed.size > 0,
      }),
  )
  const done: Y.UndoManager[] = []
  const undone: Y.UndoManager[] = []
  let turning = false
  for (const manager of managers) {
    manager.on('stack-item-added', ({ type }: { readonly type: 'undo' | 'redo' }) => {
      if (!turning && type === 'undo') {
        done.push(manager)
        undone.length = 0
        // A step ends where the other document takes over, or undo would not go back in order.
        for (const other of managers) if (other !== manager) other.stopCapturing()
      }
      changed()
    })
  }
  const turn = (from: Y.UndoManager[], to: Y.UndoManager[], way: 'undo' | 'redo'): void => {
    const manager = from.pop()
    if (!manager) return
    turning = true
    try {
      // Nothing is left of the step when others have overwritten all of it.
      if (manager[way]()) to.push(manager)
    } finally {
      turning = false
    }
    changed()
  }
  return {
    canUndo: () => done.length > 0,
    canRedo: () => undone.length > 0,
    undo: () => turn(done, undone, 'undo'),
    redo: () => turn(undone, done, 'redo'),
    cut: () => {
      for (const manager of managers) manager.stopCapturing()
    },
    destroy: () => {
      for (const manager of managers) manager.destroy()
    },
  }
}
