import { describe, expect, it } from 'vitest'
import { reserve } from './reserve.ts'

describe('reserve', () => {
  it('adds the share and the fixed amount', () => {
    const got = reserve({ needM3: 0.002, share: 0.15, extraM3: 0.00025 })
    expect(got.reserveM3).toBeCloseTo(0.00055, 12)
    expect(got.withReserveM3).toBeCloseTo(0.00255, 12)
  })

  it('keeps nothing in reserve of what is not needed', () => {
    expect(reserve({ needM3: 0, share: 0.15, extraM3: 0.00025 })).toEqual({ withReserveM3: 0, reserveM3: 0 })
  })

  it('never takes away from the need', () => {
    expect(reserve({ needM3: 1, share: -0.5, extraM3: Number.NaN }).withReserveM3).toBe(1)
  })
})
