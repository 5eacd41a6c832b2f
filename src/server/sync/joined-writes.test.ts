import { describe, expect, it } from 'vitest'
import * as Y from 'yjs'
import { joinedWrites } from './joined-writes.ts'

/** Edits of one document, one update each. */
function edits(count: number): readonly Uint8Array[] {
  const doc = new Y.Doc()
  const updates: Uint8Array[] = []
  doc.on('update', (update: Uint8Array) => void updates.push(update))
  for (let i = 0; i < count; i += 1) doc.getMap('boat').set(`cell${i}`, String(i))
  return updates
}

function slowDisk(fails: (write: number) => boolean = () => false) {
  const doc = new Y.Doc()
  const state = { writes: 0, atOnce: 0, doc }
  const write = async (_name: string, update: Uint8Array): Promise<void> => {
    state.writes += 1
    state.atOnce += 1
    expect(state.atOnce).toBe(1)
    const number = state.writes
    await new Promise((resolve) => setTimeout(resolve, 5))
    state.atOnce -= 1
    if (fails(number)) throw new Error(`write ${number}`)
    Y.applyUpdate(doc, update)
  }
  return { state, write }
}

describe('writes of one document', () => {
  it('that come while one is under way are one', async () => {
    const { state, write } = slowDisk()
    const append = joinedWrites(write, { mostBytes: 100_000 })
    const updates = edits(100)
    const first = append('work:a', updates[0]!)
    await new Promise((resolve) => setTimeout(resolve, 1))
    await Promise.all([first, ...updates.slice(1).map((update) => append('work:a', update))])
    expect(state.writes).toBe(2)
    expect(state.doc.getMap('boat').size).toBe(100)
  })

  it('grow no larger than they may', async () => {
    const { state, write } = slowDisk()
    const updates = edits(100)
    const append = joinedWrites(write, { mostBytes: updates[0]!.length * 10 })
    await Promise.all(updates.map((update) => append('work:a', update)))
    expect(state.writes).toBeGreaterThanOrEqual(10)
    expect(state.doc.getMap('boat').size).toBe(100)
  })

  it('are on the disk when they resolve, and each that was joined to a failed one fails', async () => {
    const { state, write } = slowDisk((number) => number === 2)
    const append = joinedWrites(write, { mostBytes: 100_000 })
    const updates = edits(4)
    const first = append('work:a', updates[0]!).then(() => state.doc.getMap('boat').size)
    await new Promise((resolve) => setTimeout(resolve, 1))
    const second = [append('work:a', updates[1]!), append('work:a', updates[2]!)]
    expect((await Promise.allSettled(second)).map(({ status }) => status)).toEqual(['rejected', 'rejected'])
    expect(await first).toBe(1)
    await append('work:a', Y.mergeUpdates([...updates]))
    expect(state.doc.getMap('boat').size).toBe(4)
  })
})
