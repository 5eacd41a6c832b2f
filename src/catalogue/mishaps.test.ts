import { describe, expect, it } from 'vitest'
import { abrasives } from './abrasives.ts'
import { mishapActs } from './mishap-acts.ts'
import { type MishapId, mishaps } from './mishaps.ts'

const ids = Object.keys(mishaps) as MishapId[]

describe('every mishap', () => {
  it('says what to do now, after and never, each once', () => {
    for (const id of ids) {
      const { see, now, after, never } = mishapActs[id]
      expect(now.length, id).toBeGreaterThan(1)
      expect(after.length, id).toBeGreaterThan(0)
      expect(never.length, id).toBeGreaterThan(0)
      const codes = [see, ...now, ...after, ...never]
      expect(new Set(codes).size, id).toBe(codes.length)
    }
  })

  it('names grits that are in the table of abrasives, for every way the coat may be sanded', () => {
    for (const id of ids) {
      const { films = '', sandGrit, spotGrit, spotShare } = mishaps[id].cells
      for (const grit of [sandGrit, spotGrit])
        if (grit !== undefined) expect(abrasives, id).toHaveProperty(grit)
      if (films.includes('sanded off')) expect(sandGrit, id).toBeDefined()
      if (films.includes('stands')) expect([spotGrit, spotShare], id).not.toContain(undefined)
      if (films.includes('wiped off')) expect(mishaps[id].cells.wipedWait, id).toBeDefined()
    }
  })

  it('puts people before everything, with a signal word', () => {
    const groups = ids.map((id) => mishaps[id].cells.group)
    expect(groups.slice(0, 3)).toEqual(['people', 'people', 'people'])
    for (const id of ids.filter((one) => ['people', 'fire'].includes(String(mishaps[one].cells.group))))
      expect(mishaps[id].cells.signal, id).toBeDefined()
  })
})
