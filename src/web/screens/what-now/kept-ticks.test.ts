import { describe, expect, it } from 'vitest'
import { readTicks, type TickShelf, writeTicks } from './kept-ticks.ts'

const place = { job: 'teal', mishap: 'spill' }

function shelf(): TickShelf & { readonly texts: Map<string, string> } {
  const texts = new Map<string, string>()
  return {
    texts,
    getItem: (key) => texts.get(key) ?? null,
    setItem: (key, text) => void texts.set(key, text),
  }
}

describe('the ticks of a mishap', () => {
  it('are there after a reload, for this mishap of this job, and not the next day', () => {
    const kept = shelf()
    writeTicks(kept, place, { done: ['a', 'b'], nowMs: 1000 })
    expect(readTicks(kept, place, 2000)).toEqual(['a', 'b'])
    expect(readTicks(kept, { ...place, mishap: 'rain' }, 2000)).toEqual([])
    expect(readTicks(kept, { ...place, job: 'grey' }, 2000)).toEqual([])
    expect(readTicks(kept, place, 24 * 3_600_000)).toEqual([])
  })

  it('are none where the browser keeps nothing or something else', () => {
    const kept = shelf()
    kept.texts.set('hardstand.ticks.teal.spill', '{"atMs":1,"done":{"a":1}}')
    expect(readTicks(kept, place, 2)).toEqual([])
    kept.texts.set('hardstand.ticks.teal.spill', 'null')
    expect(readTicks(kept, place, 2)).toEqual([])
    expect(readTicks(undefined, place, 2)).toEqual([])
    writeTicks(undefined, place, { done: [], nowMs: 0 })
  })
})
