import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { patched, patchOf } from './patch.ts'

const { plain, records } = fc.letrec<{ plain: unknown; records: unknown[] }>((tie) => ({
  plain: fc.oneof(
    { maxDepth: 4 },
    fc.constantFrom(undefined, null, 0, -0, 'a', true),
    fc.array(fc.integer({ max: 3, min: 0 }), { maxLength: 4 }),
    tie('records'),
    fc.dictionary(fc.constantFrom('a', 'b', 'c', 'items', 'put'), tie('plain'), { noNullPrototype: true }),
  ),
  records: fc.array(fc.dictionary(fc.constantFrom('a', 'b'), tie('plain'), { noNullPrototype: true }), {
    maxLength: 4,
  }),
})) as { plain: fc.Arbitrary<unknown>; records: fc.Arbitrary<unknown[]> }

describe('a patch', () => {
  it('makes what was into what is, copied between threads', () => {
    fc.assert(
      fc.property(plain, plain, (before, next) => {
        const patch = patchOf(before, next)
        expect(patch ? patched(before, structuredClone(patch)) : before).toEqual(next)
      }),
      { numRuns: 2000 },
    )
  })

  it('finds records again that moved, were taken out, doubled or put in', () => {
    const edited = records.chain((before) =>
      fc.tuple(
        fc.constant(before),
        fc
          .array(fc.oneof(fc.nat({ max: 4 }), fc.record({ a: fc.integer() })))
          .map((picks) =>
            picks.map((pick) => (typeof pick === 'number' ? (before[pick] ?? { b: pick }) : pick)),
          ),
      ),
    )
    fc.assert(
      fc.property(edited, ([before, next]) => {
        const made = patched(before, patchOf(before, next)!) as unknown[]
        expect(made).toEqual(next)
        next.forEach((item, index) => {
          if (before.includes(item)) expect(before).toContain(made[index])
        })
      }),
    )
  })

  it('says nothing of what stayed the same object', () => {
    const kept = { long: [{ x: 1 }] }
    const before = { kept, list: [{ id: 'a' }, { id: 'b' }], was: 1 }
    const next = { kept, list: [{ id: 'new' }, ...before.list], is: 2 }
    expect(patchOf(before, next)).toEqual({
      keys: { list: { items: [[0, { keys: { id: { put: 'new' } }, gone: [] }], 0, 1] }, is: { put: 2 } },
      gone: ['was'],
    })
    expect(patchOf(before, before)).toBeUndefined()
    expect((patched(before, patchOf(before, next)!) as typeof next).kept).toBe(kept)
  })
})
