import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { trayFillings } from './tray-fillings.ts'

describe('trayFillings', () => {
  it('pours 200 to 300 ml at a time', () => {
    expect(trayFillings({ ready: 677, usual: 250, most: 300 })).toEqual([226, 226, 225])
    expect(trayFillings({ ready: 180, usual: 250, most: 300 })).toEqual([180])
    expect(trayFillings({ ready: 0, usual: 250, most: 300 })).toEqual([])
  })

  it('adds up to the cup, never over the most, and from 400 ml on never under 200', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 20_000 }), (ready) => {
        const fillings = trayFillings({ ready, usual: 250, most: 300 })
        expect(fillings.reduce((all, one) => all + one, 0)).toBe(ready)
        expect(Math.max(...fillings)).toBeLessThanOrEqual(300)
        if (ready >= 400) expect(Math.min(...fillings)).toBeGreaterThanOrEqual(200)
      }),
    )
  })
})
