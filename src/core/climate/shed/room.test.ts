import { describe, expect, it } from 'vitest'
import { heatToHold, volumeOf } from './room.ts'

const tent = { lengthM: 10, widthM: 4, heightM: 3, lossWm2K: 6, airChanges: 2 }

describe('heat that a room takes', () => {
  it('is what goes through its skin and out with its air, worked by hand', () => {
    // 40 m² of roof and 84 m² of wall at 6 W/(m² K): 744 W/K. 120 m³ twice an hour: 80.4 W/K. For 10 K: 8.24 kW.
    expect(volumeOf(tent)).toBe(120)
    expect(heatToHold(tent, 10)).toBeCloseTo(8244, 0)
  })

  it('is none for no rise, and goes with it', () => {
    expect(heatToHold(tent, 0)).toBe(0)
    expect(heatToHold(tent, 7)).toBeCloseTo(0.7 * heatToHold(tent, 10), 9)
  })
})
