import { describe, expect, it } from 'vitest'
import { changeOrder } from './change-order.ts'

describe('changeOrder', () => {
  it('adds hours and materials', () => {
    const materials = [
      { id: 'filler', quantity: 1.5, unitCoins: 3301 },
      { id: 'mat', quantity: 2, unitCoins: 450 },
    ]
    const got = changeOrder({ hours: 6.5, hourlyCoins: 5500, materials })
    expect(got).toMatchObject({
      labourCoins: 35750,
      materialsCoins: 4952 + 900,
      totalCoins: 41602,
      complete: true,
    })
  })

  it('says which price is missing', () => {
    const got = changeOrder({ hours: 2, materials: [{ id: 'filler', quantity: 1 }] })
    expect(got).toMatchObject({ totalCoins: 0, complete: false })
    expect(got.notes.map((note) => note.data.line)).toEqual(['labour', 'filler'])
  })

  it('refuses a sum of 2^53 coins or more', () => {
    const materials = [{ id: 'a', quantity: 1, unitCoins: Number.MAX_SAFE_INTEGER }]
    const got = changeOrder({ hours: 1, hourlyCoins: 1, materials })
    expect(got.notes.map((note) => note.code)).toEqual(['money.sumOutOfRange'])
    expect(got.complete).toBe(false)
  })
})
