import { describe, expect, it } from 'vitest'
import { type MishapId, mishapActs, mishaps } from '#catalogue'
import { mishapLabels, mishapWords } from './mishap-words.ts'

const ids = Object.keys(mishaps) as MishapId[]

describe('the words of mishaps', () => {
  it('are all spoken by one, and every code of one has its sentence', () => {
    const spoken = ids.flatMap((id) => {
      const { see, now, after, never } = mishapActs[id]
      return [see, ...now, ...after, ...never]
    })
    expect([...new Set(spoken)].sort()).toEqual(Object.keys(mishapWords).sort())
  })

  it('name every mishap, and no other', () => {
    const named = Object.keys(mishapLabels).filter((key) => key.startsWith('mishapName.'))
    expect(named.sort()).toEqual(ids.map((id) => `mishapName.${id}`).sort())
  })

  it('send for help where somebody is hurt, and take nobody back to what burns', () => {
    const now = (id: MishapId) => mishapActs[id].now.map((code) => mishapWords[code]).join(' ')
    for (const id of ['eyeSplash', 'unwell', 'smoke'] as const) expect(now(id)).toMatch(/Call|call the/)
    expect(now('potKicks')).toMatch(/outside/)
    expect(mishapActs.potKicks.never).toContain('mishap.neverWaterInPot')
  })
})
