import { describe, expect, it } from 'vitest'
import { departures } from './fading.ts'

const usual = new Float64Array(200).fill(10)

describe('what a forecast departs by', () => {
  it('fades to a third in a day where the whole day departs alike', () => {
    const { by, plainHour } = departures({ told: new Float64Array(24).fill(14), usual, fromHour: 24 })
    // 4 exp(-1/24) and 4 exp(-1).
    expect(by[24]).toBeCloseTo(3.8368, 4)
    expect(by[47]).toBeCloseTo(1.4715, 4)
    expect(plainHour).toBe(144)
    expect([by[143]! > 0, by[144]]).toEqual([true, 0])
  })

  it('lets what only the last hour departs by go sooner', () => {
    const told = new Float64Array(24).fill(10)
    told[23] = 16
    const { by } = departures({ told, usual, fromHour: 24 })
    // Mean 0.25: 0.25 exp(-6/24) + 5.75 exp(-1) six hours on.
    expect(by[29]).toBeCloseTo(0.1947 + 2.1153, 4)
  })

  it('is nothing where nothing is told', () => {
    expect(departures({ told: undefined, usual, fromHour: 5 }).by[5]).toBe(0)
    expect(departures({ told: [Number.NaN], usual, fromHour: 1 })).toMatchObject({ plainHour: 1 })
  })
})
