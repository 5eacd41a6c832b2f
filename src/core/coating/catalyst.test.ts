import { describe, expect, it } from 'vitest'
import { catalyst } from './catalyst.ts'

describe('catalyst', () => {
  it('is a share of the resin by mass, and less by volume the denser it is', () => {
    expect(catalyst({ resinMass: 0.5, share: 0.015, density: 1100 })).toEqual({
      mass: expect.closeTo(0.0075, 12),
      volume: expect.closeTo(0.0075 / 1100, 15),
    })
  })
})
