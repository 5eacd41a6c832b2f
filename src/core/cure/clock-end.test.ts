import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type CureClock, clockEnd, clockShare } from './clock-end.ts'
import { cureTable } from './cure-table.ts'

const table = cureTable([
  { airC: 5, hours: 24 },
  { airC: 15, hours: 10 },
  { airC: 25, hours: 6 },
])

const steady = (airC: number): CureClock => ({
  table,
  sense: 'least',
  startHours: 0,
  temperatureAt: () => airC,
})

const series = (temperatures: readonly number[], rest: Partial<CureClock>): CureClock => ({
  ...steady(0),
  temperatureAt: (index) => temperatures[index],
  ...rest,
})

describe('clock end', () => {
  it('comes after the time of the sheet at a steady temperature, from any start', () => {
    expect(clockEnd(steady(15))?.endHours).toBeCloseTo(10, 9)
    expect(clockEnd({ ...steady(25), startHours: 7.3 })?.endHours).toBeCloseTo(13.3, 9)
  })

  it('adds the shares of each hour and cuts the last one exactly', () => {
    // Five hours at 15 °C are half the wait; the other half takes three at 25 °C, the first of them from 5.0.
    const clock = series([15, 15, 15, 15, 15, 25, 25, 25, 25], {})
    expect(clockEnd(clock)).toEqual({ endHours: expect.closeTo(8, 9), found: ['row'] })
    // Started at 0.5: 4.5 h at 15 °C are 0.45, the remaining 0.55 are 3.3 h at 25 °C.
    expect(clockEnd({ ...clock, startHours: 0.5 })?.endHours).toBeCloseTo(8.3, 9)
  })

  it('stands still through a cold night and goes on after it', () => {
    const clock = series([15, 15, 15, 15, 15, 2, 2, 2, 15, 15, 15, 15, 15, 15], {})
    expect(clockEnd(clock)).toEqual({ endHours: expect.closeTo(13, 9), found: ['row', 'below'] })
  })

  it('is unknown when the series ends first', () => {
    expect(clockEnd(series([15, 15, 15], {}))).toBeUndefined()
    expect(clockEnd(series([], {}))).toBeUndefined()
  })

  it('is given up when it never runs, also without an end to the series', () => {
    expect(clockEnd(steady(0))).toBeUndefined()
  })

  it('ends on the last hour of a series that is just long enough', () => {
    expect(clockEnd(series(Array(10).fill(15), {}))?.endHours).toBeCloseTo(10, 9)
  })

  it('comes no later for a most time than for a least time', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: -5, max: 40, noNaN: true }), { minLength: 60, maxLength: 60 }),
        (t) => {
          const least = clockEnd(series(t, { sense: 'least' }))
          const most = clockEnd(series(t, { sense: 'most' }))
          expect(most).toBeDefined()
          if (least) expect(most!.endHours).toBeLessThanOrEqual(least.endHours + 1e-9)
        },
      ),
    )
  })
})

describe('clock share', () => {
  it('is one where the clock ends and nothing where it starts', () => {
    const clock = series([15, 18, 22, 25, 12, 9, 15, 20, 21, 22, 23, 24, 25, 25], { startHours: 0.4 })
    const end = clockEnd(clock)!
    expect(clockShare({ ...clock, endHours: end.endHours })).toBeCloseTo(1, 9)
    expect(clockShare({ ...clock, endHours: 0.4 })).toBe(0)
  })

  it('is unknown past the end of the series', () => {
    expect(clockShare({ ...series([15], {}), endHours: 3 })).toBeUndefined()
  })
})
