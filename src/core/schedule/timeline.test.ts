import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { openThroughout, runsOf, shut } from './timeline.ts'

/** The slow, obvious way to count. */
const counted = (open: readonly number[]): number[] => {
  const runs = open.map((isOpen, slot) => {
    const rest = open.slice(slot)
    const change = rest.findIndex((other) => other !== isOpen)
    const length = change < 0 ? rest.length : change
    return isOpen ? length : -length
  })
  return [...runs, 0]
}

describe('runs', () => {
  const row = fc.array(fc.constantFrom(0, 1), { minLength: 1, maxLength: 60 })

  it('count open slots ahead, and closed ones with a minus', () => {
    expect([...runsOf(Uint8Array.from([0, 0, 1, 1, 0]))]).toEqual([-2, -1, 2, 1, -1, 0])
    expect([...openThroughout(3)]).toEqual([3, 2, 1, 0])
  })

  it('are those of the slow count', () => {
    fc.assert(
      fc.property(row, (open) => {
        expect([...runsOf(Uint8Array.from(open))]).toEqual(counted(open))
      }),
    )
  })

  it('stay right through any number of stretches that are shut', () => {
    const stretch = fc.tuple(fc.nat(60), fc.nat(12))
    fc.assert(
      fc.property(row, fc.array(stretch, { maxLength: 12 }), (open, stretches) => {
        const runs = runsOf(Uint8Array.from(open))
        const plain = [...open]
        for (const [from, length] of stretches) {
          const fromSlot = Math.min(from, open.length)
          const toSlot = Math.min(open.length, fromSlot + length)
          shut(runs, { fromSlot, toSlot })
          plain.fill(0, fromSlot, toSlot)
        }
        expect([...runs]).toEqual(counted(plain))
      }),
      { numRuns: 500 },
    )
  })
})
