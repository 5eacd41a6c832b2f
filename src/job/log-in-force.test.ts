import { describe, expect, it } from 'vitest'
import { correctedIds, inForce } from './log-in-force.ts'

describe('entries that others take the place of', () => {
  const log = [{ id: 'a' }, { id: 'b' }, { id: 'c', corrects: 'a, b' }, { id: 'd', corrects: 'd' }]
  it('count no more, and the rest does, also one that names itself', () => {
    expect(inForce(log).map(({ id }) => id)).toEqual(['c', 'd'])
    expect([...correctedIds(log)]).toEqual(['a', 'b'])
  })
  it('are none where nothing was corrected', () => {
    const plain = [{ id: 'a' }, { id: 'b', corrects: 7 }]
    expect(inForce(plain)).toBe(plain)
  })
})
