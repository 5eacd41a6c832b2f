import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { reuse } from './reuse.ts'

describe('reuse', () => {
  it('gives back the old value when the new one equals it', () => {
    const old = { a: [1, { b: 'x' }], c: null }
    expect(reuse(old, { a: [1, { b: 'x' }], c: null })).toBe(old)
  })

  it('keeps the identity of the parts that did not change', () => {
    const old = { a: { deep: [1, 2] }, b: { deep: [3] } }
    const now = reuse(old, { a: { deep: [1, 2] }, b: { deep: [4] } })
    expect(now).not.toBe(old)
    expect(now.a).toBe(old.a)
    expect(now.b).not.toBe(old.b)
  })

  it('takes a missing key, a key more, a shorter list and NaN for what they are', () => {
    expect(reuse({ a: 1, b: 2 }, { a: 1 })).toEqual({ a: 1 })
    expect(reuse({ a: 1 }, { a: 1, b: undefined })).toHaveProperty('b')
    expect(reuse([1, 2, 3], [1, 2])).toEqual([1, 2])
    const old = [Number.NaN]
    expect(reuse(old, [Number.NaN])).toBe(old)
    expect(Object.is(reuse({ a: 0 }, { a: -0 }).a, -0)).toBe(true)
  })

  it('never changes what the new value says, and changes neither value', () => {
    const value = fc.jsonValue({ maxDepth: 4 })
    fc.assert(
      fc.property(value, value, (old, next) => {
        const [before, wanted] = [JSON.stringify(old), JSON.stringify(next)]
        expect(JSON.stringify(reuse(old, next))).toBe(wanted)
        expect(JSON.stringify(old)).toBe(before)
        expect(JSON.stringify(next)).toBe(wanted)
      }),
      { numRuns: 500 },
    )
  })
})
