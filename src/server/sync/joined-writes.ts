/**
 * Updates that come while the disk is busy with their document are joined into one, so that a page which edits faster
 * than the disk writes waits for two writes at most and not for a queue of them.
 */
import * as Y from 'yjs'

export type Write = (name: string, update: Uint8Array) => Promise<void>

type Batch = { readonly updates: Uint8Array[]; bytes: number; readonly written: Promise<void> }

/** Each call resolves when its update is written, and fails with the write that it was joined into. */
export function joinedWrites(write: Write, { mostBytes }: { readonly mostBytes: number }): Write {
  const waiting = new Map<string, Batch>()
  const last = new Map<string, Promise<void>>()
  return (name, update) => {
    const open = waiting.get(name)
    if (open && open.bytes + update.length <= mostBytes) {
      open.updates.push(update)
      open.bytes += update.length
      return open.written
    }
    const updates = [update]
    const written = (last.get(name) ?? Promise.resolve()).then(() => {
      if (waiting.get(name)?.updates === updates) waiting.delete(name)
      return write(name, updates.length === 1 ? update : Y.mergeUpdates(updates))
    })
    waiting.set(name, { updates, bytes: update.length, written })
    const settled = written.then(
      () => {},
      () => {},
    )
    last.set(name, settled)
    void settled.then(() => {
      if (last.get(name) === settled) last.delete(name)
    })
    return written
  }
}
