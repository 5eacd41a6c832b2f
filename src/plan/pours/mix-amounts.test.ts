import { describe, expect, it } from 'vitest'
import { mixAmounts } from '#plan'
import { paperPlan } from '../../../test/support/paper-plan.ts'

const pour = paperPlan.pours.pours[0]!

describe('mixAmounts', () => {
  it('has the level of the cup after each part, and the last is the whole', () => {
    const { parts, readyMl } = mixAmounts(pour)
    expect(parts.map((part) => [part.part, part.ml, part.toMl])).toEqual([
      ['A', 410, 410],
      ['B', 205, 615],
      ['thinner', 62, 677],
    ])
    expect(readyMl).toBe(677)
  })

  it('gives grams where the weights are known', () => {
    expect(mixAmounts(pour).parts.map((part) => part.g)).toEqual([574, 226, 50])
  })

  it('goes to tenths of a millilitre when a part is a few drops', () => {
    const { parts, decimals } = mixAmounts({
      ...pour,
      partsM3: [0.000324, 0.0000065],
      thinnerM3: 0,
      thinnerKg: 0,
    })
    expect(decimals).toBe(1)
    expect(parts.map((part) => part.ml)).toEqual([324, 6.5])
  })

  it('stirs bead in on top: it is no level of the cup', () => {
    const bead = mixAmounts({ ...pour, additiveM3: 0.0001 }).parts.at(-1)
    expect(bead).toEqual({ part: 'bead', ml: 100 })
  })

  it('fills the tray with all of it', () => {
    expect(mixAmounts(pour).trayMl).toEqual([226, 226, 225])
  })
})
